package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long paths get. Many programs on Windows open none of 260 characters or more, the drive
 * included (MAX_PATH, from memory).
 */
class LongPathsTest {
  /** What docs/fitting-record.md leaves for the folder of the records. */
  private static final int FOR_THE_FOLDER = 70;

  private static final int MAX_PATH = 260;

  /**
   * In the making: {@code work/adding/CODE/}, 32 and 10 digits, in place of {@code
   * records/CODE/v1}.
   */
  private static final int LONGER_IN_THE_MAKING = 44;

  @TempDir private Path folder;

  @Test
  void theLongestPathOfARecordLeavesRoomForItsFolder() throws Exception {
    RecordCode code = new RecordCode("k".repeat(39) + "7");
    Store store = Invented.store(folder);
    store.start(code, Invented.opening());
    Addition named =
        new Addition(
            Invented.AT,
            "AB",
            Optional.empty(),
            AnswersToContent.content(EntryKind.NOTE, Invented.answers("text", "more")),
            List.of(Invented.attached(KeptFile.Role.OTHER, "a".repeat(300) + ".csv", "1")));
    store.add(code, named);
    int longest;
    try (Stream<Path> all = Files.walk(folder)) {
      longest = all.mapToInt(f -> folder.relativize(f).toString().length()).max().orElseThrow();
    }
    int longestKind =
        Stream.of(EntryKind.values()).mapToInt(kind -> kind.key().length()).max().orElseThrow();
    longest += longestKind - EntryKind.NOTE.key().length();
    assertThat(longest).isGreaterThan(130);
    assertThat(FOR_THE_FOLDER + longest + LONGER_IN_THE_MAKING).isLessThan(MAX_PATH);
  }
}
