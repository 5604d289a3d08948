package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The story in the docs, from the bench to walking, tells what its page says it tells. */
class StoryTest {
  private static final Path SHOWN = Path.of("src/test/resources/caryatid/blackbox/story.txt");
  private static final String REPORT = "K7-right-record.pdf";

  @TempDir private Path folder;

  /**
   * Regression; {@code -Dapprove=true} writes the text anew. The head digest hangs on reports'
   * bytes.
   */
  @Test
  void theWholeStoryIsShown() throws IOException {
    String shown = "";
    for (String command : Story.commands()) {
      Run run = Run.caryatid(Story.words(command, folder));
      assertThat(run.err()).as(command).isEmpty();
      assertThat(run.code()).as(command).isZero();
      if (command.startsWith("record show K7-right --records records")) {
        shown =
            run.out()
                .replaceAll("Head digest [0-9a-f]{128}", "Head digest ...")
                .replace('\u00a0', ' ');
      }
    }
    if (Boolean.getBoolean("approve")) {
      Files.writeString(SHOWN, shown);
    }
    compareReport();
    assertThat(shown).isEqualTo(Files.readString(SHOWN));
    for (String line :
        Files.readString(Story.PAGE).lines().filter(l -> l.startsWith("    entry")).toList()) {
      assertThat(shown).contains(line);
    }
  }

  /** The story's report, like the sample reports; {@code -Dreports.write} writes it anew. */
  private void compareReport() throws IOException {
    byte[] made = Files.readAllBytes(folder.resolve(REPORT));
    Path kept = Path.of("reports").resolve(REPORT);
    if (System.getProperty("reports.write") != null) {
      Files.write(kept, made);
    }
    assertThat(Files.readAllBytes(kept)).as(kept.toString()).isEqualTo(made);
  }
}
