package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class FailuresTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  @TempDir private Path folder;

  @BeforeEach
  void keepItHere() {
    System.setProperty(Failures.FOLDER, folder.resolve("kept").toString());
  }

  @AfterEach
  void keepItWhereItBelongs() {
    System.clearProperty(Failures.FOLDER);
  }

  @Test
  void isOneSentenceAndAPrivateFileWithoutAWordThatWasReadOrTyped() throws Exception {
    StringWriter err = new StringWriter();
    CommandLine command =
        CaryatidCommand.readyFor(Clock.systemUTC()).setErr(new PrintWriter(err, true));
    Exception failure =
        new IllegalStateException("wearer K7", new IllegalArgumentException("wearer K8"));
    assertThat(new Failures(ENGLISH).handleExecutionException(failure, command, null)).isEqualTo(1);
    Path kept;
    try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
      kept = files.findFirst().orElseThrow();
    }
    assertThat(err.toString())
        .isEqualTo(
            "The program stopped at an unexpected error. "
                + kept
                + " says where it happened, without anything about the wearer; please send that"
                + " file to those who maintain the program."
                + System.lineSeparator());
    assertThat(Files.readString(kept))
        .contains("java.lang.IllegalStateException\n  caryatid.cli.FailuresTest.")
        .contains("java.lang.IllegalArgumentException\n")
        .doesNotContain("K7", "K8");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept.getParent())))
        .isEqualTo("rwx------");
  }

  @Test
  void isToldAlsoWhereItCannotBeKept() throws Exception {
    Files.writeString(folder.resolve("kept"), "a file");
    assertThat(Failures.keep(new IllegalStateException("K7"), ENGLISH))
        .isEqualTo(
            "The program stopped at an unexpected error (java.lang.IllegalStateException). Please"
                + " tell those who maintain the program.");
  }
}
