package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What was erased is nowhere any more. */
@DisabledOnOs(OS.WINDOWS)
class EraseTest {
  @TempDir private Path folder;
  private Clinic clinic;
  private Path object;

  @BeforeEach
  void start() {
    clinic = new Clinic(folder.resolve("clinic"));
    clinic.start();
    object = folder.resolve("clinic/records/K7-right");
  }

  private Run erase() {
    return clinic.record("erase", "K7-right", "--by", "AB", "--because", "on request");
  }

  @Test
  void aLinkedRecordIsNotCalledErased() throws IOException {
    Path elsewhere = Files.move(object, folder.resolve("elsewhere"));
    Files.createSymbolicLink(object, elsewhere);
    refused("K7-right");
    assertThat(elsewhere.resolve("v1")).exists();
  }

  @Test
  void norIsOneWithALinkedVersion() throws IOException {
    Path elsewhere = Files.move(object.resolve("v1"), folder.resolve("elsewhere"));
    Files.createSymbolicLink(object.resolve("v1"), elsewhere);
    refused("K7-right/v1");
    assertThat(object.resolve("inventory.json")).exists();
  }

  private void refused(String link) {
    assertThat(erase())
        .isEqualTo(
            new Run(
                1,
                "",
                "K7-right: "
                    + link
                    + " is a link, and its target would not be erased. Replace the link with its"
                    + " target, or remove it, and erase again. Nothing was erased.\n"));
  }

  /** No process has the first number; the second is this one's, which runs. */
  @Test
  void whatAKilledWindowWasSentGoesWithIt() throws IOException {
    Path windows = folder.resolve("windows");
    Path left = marked(windows.resolve("files-999999999-7/sent"));
    long running = ProcessHandle.current().pid();
    Path sent = marked(windows.resolve("files-" + running + "-7/sent"));
    Path other = marked(windows.resolve("0b5e2f9a6f6e4a57.html"));
    System.setProperty("caryatid.windows", windows.toString());
    try {
      assertThat(erase().code()).isZero();
    } finally {
      System.clearProperty("caryatid.windows");
    }
    assertThat(left.getParent()).doesNotExist();
    assertThat(sent).exists();
    assertThat(other).exists();
  }

  @Test
  void whatAKillLeftInTheMakingGoesWithIt() throws IOException {
    Path work = folder.resolve("clinic/work");
    Path part = marked(work.resolve("replacing/K7-right~0b5e"));
    Path older = marked(work.resolve("replacing/0b5e2f9a-6f6e-4a57-9d0c-2f1f0a7f8a11"));
    Path others = marked(work.resolve("replacing/M4-left~77aa"));
    Path adding = marked(work.resolve("adding/K7-right/v2/entry.json"));
    Path importing = marked(work.resolve("importing/bag/entry.json"));
    Path tried =
        marked(Path.of(System.getProperty("java.io.tmpdir"), "caryatid-999999999-7/entry"));
    assertThat(erase().code()).isZero();
    assertThat(part).doesNotExist();
    assertThat(older).doesNotExist();
    assertThat(adding).doesNotExist();
    assertThat(importing).doesNotExist();
    assertThat(tried).doesNotExist();
    assertThat(others).exists();
  }

  private static Path marked(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, "marker");
  }
}
