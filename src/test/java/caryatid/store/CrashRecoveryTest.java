package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.disk.DurableFiles;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a kill leaves at each of its possible moments: an addition whose version is in its place is
 * finished by the next who opens the record, one whose version is not is gone.
 */
class CrashRecoveryTest {
  private static final String INVENTORY = "inventory.json";
  private static final String SUM = "inventory.json.sha512";

  @TempDir private Path folder;
  private Store store;
  private Path object;

  @BeforeEach
  void start() throws BadInput, StoreFailure {
    store = Invented.store(folder);
    object = folder.resolve("records").resolve(CODE.text());
    store.start(CODE, Invented.opening());
  }

  @Test
  void aVersionThatIsInItsPlaceButNotListedIsListed() throws Exception {
    store.add(CODE, Invented.stand(1, 20));
    backToVersion(1, INVENTORY);
    backToVersion(1, SUM);
    assertWholeWith(2);
  }

  @Test
  void soIsOneWhoseInventoryWasReplacedButNotItsSum() throws Exception {
    store.add(CODE, Invented.stand(1, 20));
    backToVersion(1, SUM);
    assertWholeWith(2);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void soIsTheFirstVersion(boolean inventoryCameToo) throws Exception {
    Files.delete(object.resolve(SUM));
    if (!inventoryCameToo) {
      Files.delete(object.resolve(INVENTORY));
    }
    assertWholeWith(1);
  }

  @Test
  void aStartThatGotNoFurtherThanTheDeclarationIsTakenBackByTheNextStart() throws Exception {
    Files.delete(object.resolve(SUM));
    Files.delete(object.resolve(INVENTORY));
    DurableFiles.delete(object.resolve("v1"));
    assertThat(store.codes()).isEmpty();
    store.start(CODE, Invented.opening());
    assertWholeWith(1);
  }

  @Test
  void anOlderInventoryThatNoAdditionLeavesIsDamageAndStays() throws Exception {
    store.add(CODE, Invented.stand(1, 20));
    store.add(CODE, Invented.stand(2, 20));
    backToVersion(1, INVENTORY);
    backToVersion(1, SUM);
    byte[] before = Files.readAllBytes(object.resolve(INVENTORY));
    assertThat(store.verify(CODE)).isNotEmpty();
    assertThat(Files.readAllBytes(object.resolve(INVENTORY))).isEqualTo(before);
  }

  private void backToVersion(int version, String file) throws IOException {
    Files.copy(
        object.resolve("v" + version).resolve(file),
        object.resolve(file),
        StandardCopyOption.REPLACE_EXISTING);
  }

  private void assertWholeWith(int entries) throws BadInput, StoreFailure {
    assertThat(store.read(CODE).damage()).isEmpty();
    assertThat(store.read(CODE).entries()).hasSize(entries);
    assertThat(store.verify(CODE)).isEmpty();
    store.add(CODE, Invented.note("goes on"));
    assertThat(store.read(CODE).entries()).hasSize(entries + 1);
  }

  /**
   * A program of its own is ended (Runtime.halt, no clean-up) at the first step that changes
   * something on the disk, another at the second, and so on, until one gets through. The version's
   * own move decides: before it the addition is gone, after it the addition is there, and in
   * between, where inventory and sum file are still the older ones, the next reader finishes it.
   */
  @Test
  @Tag("proof")
  void aProgramKilledAtAnyStepLeavesTheAdditionWholeOrNothingOfIt() throws Exception {
    int killed = 0;
    int finished = 0;
    while (addIsKilled(++killed)) {
      int unlisted = Files.isDirectory(object.resolve("v" + (confirmed() + 1))) ? 1 : 0;
      finished += unlisted;
      int entries = confirmed() + unlisted;
      assertThat(store.read(CODE).entries()).as("step " + killed).hasSize(entries);
      assertThat(store.verify(CODE)).as("step " + killed).isEmpty();
    }
    System.out.println((killed - 1) + " steps killed at; " + finished + " additions finished");
    assertThat(killed).isGreaterThan(20);
    assertThat(finished).isGreaterThanOrEqualTo(4);
  }

  /** Each in a clinic of its own: the larger a record, the more steps an addition takes. */
  private boolean addIsKilled(int step) throws Exception {
    Path clinic = folder.resolve("clinic-" + step);
    store = Invented.store(clinic);
    object = clinic.resolve("records").resolve(CODE.text());
    store.start(CODE, Invented.opening());
    int end =
        OtherJvm.start(folder.resolve("said"), Adder.class, "killed", clinic.toString(), "" + step)
            .waitFor();
    assertThat(end).isIn(0, Faults.KILLED);
    return end == Faults.KILLED;
  }

  /** How many versions the sum file and inventory, as the kill left them, vouch for. */
  private int confirmed() throws IOException {
    String sum = Files.readString(object.resolve(SUM));
    int version = 1;
    while (!Files.readString(object.resolve("v" + version).resolve(SUM)).equals(sum)) {
      version++;
    }
    return version;
  }
}
