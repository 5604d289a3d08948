package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Who may read what the program makes. */
@DisabledOnOs(OS.WINDOWS)
class AccessTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir private Path folder;

  private Path records() {
    return folder.resolve("clinic");
  }

  @Test
  void recordsAndReportsAreTheirOwnersOnly() throws IOException {
    new Clinic(records()).start();
    keep();
    packNextAndReport();
    assertThat(modes(folder)).allMatch(mode -> mode.matches("(rwx|rw-)------ .*"));
  }

  @Test
  void aSharedFolderIsForItsGroupAndNobodyElse() throws IOException {
    Run run =
        new Clinic(records())
            .record(
                "start",
                "K7-right",
                "--shared",
                "--by",
                "AB",
                "wearer=K7",
                "side=right",
                "level=transtibial");
    assertThat(run.err()).isEmpty();
    keep();
    assertThat(modes(records())).allMatch(mode -> mode.matches("(rwxrwx|rw-rw-)--- .*"));
  }

  @Test
  void anExistingFolderIsNotSharedLater() {
    new Clinic(records()).start();
    Run run =
        new Clinic(records())
            .record(
                "start",
                "M4-left",
                "--shared",
                "--by",
                "AB",
                "wearer=M4",
                "side=left",
                "level=transfemoral");
    assertThat(run)
        .isEqualTo(
            new Run(
                1,
                "",
                records()
                    + ": already exists, and --shared is for a new folder. Leave it out; the rights"
                    + " of the folder's group are kept.\n"));
  }

  @Test
  void theRightsOfAnExistingGroupAreKeptAndThoseOfOthersAreNot() throws IOException {
    new Clinic(records()).start();
    try (Stream<Path> all = Files.walk(records())) {
      for (Path path : all.toList()) {
        Files.setPosixFilePermissions(
            path,
            PosixFilePermissions.fromString(Files.isDirectory(path) ? "rwxr-xr-x" : "rw-r--r--"));
      }
    }
    keep();
    assertThat(modes(records().resolve("records/K7-right/v2")))
        .isNotEmpty()
        .allMatch(mode -> mode.matches("(rwxr-x|rw-r--)--- .*"));
  }

  @Test
  void anOpenFolderIsReported() throws IOException {
    new Clinic(records()).start();
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.setPosixFilePermissions(records(), PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(new Clinic(records()).record("list"))
        .isEqualTo(
            new Run(
                0,
                "K7-right\n",
                "Note: everybody on this computer can read "
                    + records()
                    + ". Remove that permission, for example with: chmod -R o-rwx FOLDER\n"));
  }

  private void packNextAndReport() {
    Clinic clinic = new Clinic(records());
    for (String[] made :
        new String[][] {
          {"pack", "packed.zip"}, {"next", "next/sheet.yaml"}, {"report", "record.pdf"}
        }) {
      Run run =
          made[0].equals("report")
              ? clinic.record("report", "K7-right", "--out", folder.resolve("out").toString())
              : clinic.record(made[0], "K7-right", folder.resolve(made[1]).toString());
      assertThat(run.err()).isEmpty();
      assertThat(run.code()).isZero();
    }
  }

  private void keep() {
    Run run =
        Run.caryatid(
            "check",
            K7.resolve("barefoot-1.csv").toString(),
            "--trial",
            K7.resolve("barefoot.yaml").toString(),
            "--plate",
            K7.resolve("plate.yaml").toString(),
            "--out",
            folder.resolve("reports").toString(),
            "--record",
            "K7-right",
            "--records",
            records().toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
  }

  private static Stream<String> modes(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.map(AccessTest::mode).toList().stream();
    }
  }

  private static String mode(Path path) {
    try {
      return PosixFilePermissions.toString(Files.getPosixFilePermissions(path)) + " " + path;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
