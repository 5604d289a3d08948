package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenCommandTest {
  @TempDir private Path folder;
  private String before;

  @BeforeEach
  void keepThePlaceOfStartFiles() {
    before = System.getProperty(OpenCommand.FOLDER);
  }

  @AfterEach
  void putItBack() {
    if (before == null) {
      System.clearProperty(OpenCommand.FOLDER);
    } else {
      System.setProperty(OpenCommand.FOLDER, before);
    }
  }

  /** The port is not to blame where the folder is. */
  @Test
  void aStartFileThatCannotBeWrittenIsToldFromAPortInUse() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    System.setProperty(OpenCommand.FOLDER, file.resolve("windows").toString());
    StringWriter err = new StringWriter();

    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            "open",
            "--no-browser",
            "--records",
            folder.resolve("records").toString());

    assertThat(code).isEqualTo(1);
    assertThat(err.toString())
        .startsWith("The window could not be opened: its start file could not be written to ")
        .doesNotContain("--port");
  }
}
