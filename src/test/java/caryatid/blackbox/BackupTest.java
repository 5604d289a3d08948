package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All records of a clinic are backed up, checked and restored by commands. */
class BackupTest {
  @TempDir private Path folder;
  private Clinic clinic;
  private Path backup;

  @BeforeEach
  void startRecords() {
    clinic = new Clinic(folder.resolve("records"));
    backup = folder.resolve("backup");
    clinic.start();
    String[] rest = {"--by", "AB", "wearer=M4", "side=left", "level=transfemoral"};
    assertThat(clinic.record("start", "M4-left", rest).code()).isZero();
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady");
  }

  private Clinic restored() {
    return new Clinic(folder.resolve("restored"));
  }

  private Run make() {
    return clinic.record("backup", backup.toString());
  }

  private Run restore() {
    return restored().record("restore", backup.toString(), "--by", "GH");
  }

  @Test
  void aStoreIsBackedUpAndRestoredComplete() throws IOException {
    assertThat(make())
        .isEqualTo(new Run(0, "Backed up and checked: 2 records, in " + backup + "\n", ""));
    assertThat(names(backup)).containsExactly("K7-right.zip", "M4-left.zip", "backup.sha512");
    assertThat(restore())
        .isEqualTo(
            new Run(
                0, "Restored and checked: 2 records, in " + folder.resolve("restored") + "\n", ""));
    for (String code : List.of("K7-right", "M4-left")) {
      assertThat(restored().record("show", code).out())
          .isEqualTo(clinic.record("show", code).out());
    }
    assertThat(restored().record("verify").out())
        .isEqualTo(clinic.record("verify").out())
        .contains("K7-right", "M4-left");
  }

  @Test
  void anErasedRecordIsBackedUpAsWhatIsLeftOfIt() {
    clinic.record("erase", "M4-left", "--by", "AB", "--because", "asked for it");
    make();
    restore();
    assertThat(restored().record("list").out()).isEqualTo(clinic.record("list").out());
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Files.createDirectory(backup);
    assertThat(make().err())
        .isEqualTo(
            backup
                + ": already exists, and nothing is overwritten. Choose another folder, for example"
                + " one with the date in its name.\n");
    assertThat(names(backup)).isEmpty();
    Files.delete(backup);
    make();
    assertThat(clinic.record("restore", backup.toString()).err())
        .endsWith("Choose another with --records. Nothing was written.\n");
  }

  @Test
  void aBackupOfWhichAByteChangedIsRefused() throws IOException {
    make();
    Path zip = backup.resolve("M4-left.zip");
    byte[] bytes = Files.readAllBytes(zip);
    bytes[bytes.length / 2] ^= 1;
    Files.write(zip, bytes);
    assertThat(restore().err())
        .isEqualTo(
            zip
                + ": is not what was backed up: its bytes have changed. Use another copy of the"
                + " backup. Nothing was written.\n");
    Files.delete(zip);
    assertThat(restore().err())
        .isEqualTo(
            zip
                + ": is in the backup's list but missing. Use another copy of the backup. Nothing"
                + " was written.\n");
    assertThat(folder.resolve("restored")).doesNotExist();
  }

  @Test
  void aZipThatIsNotListedIsNotTakenIn() throws IOException {
    make();
    Files.copy(backup.resolve("M4-left.zip"), backup.resolve("M5.zip"));
    assertThat(restore().err()).contains("M5.zip: is not in the backup's list.");
    assertThat(folder.resolve("restored")).doesNotExist();
  }

  @Test
  void whatIsNoBackupIsSaid() {
    assertThat(restore().err()).startsWith(backup + ": is no backup of records");
    Clinic empty = new Clinic(folder.resolve("empty"));
    assertThat(empty.record("backup", backup.toString()).err())
        .isEqualTo(backup + ": there is no record to back up.\n");
  }

  @Test
  void aDamagedRecordIsNamedAndTheOthersAreBackedUp() throws IOException {
    Path entry = folder.resolve("records/records/K7-right/v1/content/0001-opening/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("K7", "K8"));
    Run run = make();
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEqualTo("Backed up and checked: 1 record, in " + backup + "\n");
    assertThat(run.err()).contains("0001-opening/entry.json").contains("is not what was added");
    assertThat(names(backup)).containsExactly("M4-left.zip", "backup.sha512");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
