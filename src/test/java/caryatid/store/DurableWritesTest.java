package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the clinic remembers and the files a user names reach the disk as the records do. */
class DurableWritesTest {
  private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

  @TempDir private Path folder;
  private final Faults faults = new Faults();

  private void assertForced() {
    assertThat(faults.unforced().early()).isEmpty();
    assertThat(faults.unforced().in(folder)).isEmpty();
  }

  private Output output(boolean replace) {
    return new Output(FaultyFiles.of(folder, faults).resolve("report.pdf"), replace);
  }

  @Test
  void whatTheClinicRemembersIsForced() throws Exception {
    ClinicFile file = new ClinicFile(FaultyFiles.of(folder, faults));
    file.write(Clinic.NEW);
    assertForced();
    assertThat(new ClinicFile(folder).read()).isEqualTo(Clinic.NEW);
  }

  @Test
  void aNewFileOfTheUsersIsForced() throws Exception {
    new LocalFiles().write(output(false), NEW);
    assertForced();
    assertThat(folder.resolve("report.pdf")).hasContent("new");
  }

  @Test
  void aFileThatTakesAnothersPlaceIsForced() throws Exception {
    Files.writeString(folder.resolve("report.pdf"), "old");
    new LocalFiles().write(output(true), NEW);
    assertForced();
    assertThat(folder.resolve("report.pdf")).hasContent("new");
  }

  /** Opening, writing, forcing, moving; the folder is forced when the new file is in its place. */
  @Test
  void aFailureAtAnyStepLeavesTheOldFileAndNothingElse() throws Exception {
    Files.writeString(folder.resolve("report.pdf"), "old");
    int step = 1;
    for (; step <= 4; step++) {
      faults.arm(step, step);
      assertThatThrownBy(() -> new LocalFiles().write(output(true), NEW))
          .as("step %d", step)
          .isInstanceOf(StoreFailure.class)
          .hasMessage("Cli.CANNOT_WRITE");
      assertThat(folder.resolve("report.pdf")).hasContent("old");
      try (Stream<Path> left = Files.list(folder)) {
        assertThat(left).containsExactly(folder.resolve("report.pdf"));
      }
    }
  }
}
