package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.answers;
import static caryatid.demo.Invented.note;
import static caryatid.demo.Invented.opening;
import static caryatid.demo.Invented.stand;
import static caryatid.demo.Invented.store;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.Erasure;
import caryatid.entry.KeptFile;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
  @TempDir private Path folder;
  private Store store;

  @BeforeEach
  void open() {
    store = store(folder.resolve("clinic"));
  }

  @Test
  void whatIsAddedIsReadBackByteForByte() throws BadInput, StoreFailure {
    store.start(CODE, opening());
    Addition given = stand(1, 100);
    Entry added = store.add(CODE, given);
    FittingRecord record = store.read(CODE);
    assertThat(record.entries()).hasSize(2).last().isEqualTo(added);
    assertThat(record.damage()).isEmpty();
    byte[] result = store.open(CODE).bytes(added, added.file(KeptFile.Role.RESULT).orElseThrow());
    assertThat(result).isEqualTo("{\"seed\": 1}\n".getBytes(StandardCharsets.UTF_8));
    assertThat(store.verify(CODE)).isEmpty();
  }

  @Test
  void aRecordIsPlainFilesWithSpeakingNames() throws BadInput, StoreFailure, IOException {
    store.start(CODE, opening());
    store.add(CODE, stand(1, 10));
    Path version = folder.resolve("clinic/records/K7-right/v2/content/0002-stand");
    try (var files = Files.list(version)) {
      assertThat(files.map(f -> f.getFileName().toString()).sorted())
          .containsExactly(
              "description-plate.yaml",
              "entry.json",
              "recording-walk.csv",
              "report.pdf",
              "result.json",
              "sheet.yaml");
    }
    assertThat(folder.resolve("clinic/records/README.txt")).exists();
  }

  @Test
  void codesAreListedInOrderAndAnEmptyFolderHasNone() throws BadInput, StoreFailure {
    assertThat(store.codes()).isEmpty();
    store.start(new RecordCode("M2"), opening());
    store.start(new RecordCode("K7"), opening());
    assertThat(store.codes()).containsExactly("K7", "M2");
  }

  @Test
  void aCodeIsTakenInWhateverCase() throws BadInput, StoreFailure {
    store.start(new RecordCode("k7-RIGHT"), opening());
    assertSays(
        () -> store.start(CODE, opening()),
        "k7-RIGHT: there is already a record with that code. Add to it, or choose another code.");
    assertThat(store.codes()).containsExactly("k7-RIGHT");
  }

  @Test
  void addingToARecordThatIsNotThereSaysSo() {
    assertSays(
        () -> store.add(CODE, note("x")),
        "K7-right: there is no record with that code in "
            + folder.resolve("clinic")
            + ". Check the code, or start the record first.");
  }

  @Test
  void aCorrectionTakesThePlaceOfAnEntryThatStays() throws BadInput, StoreFailure {
    store.start(CODE, opening());
    Entry wrong = store.add(CODE, note("left foot"));
    Entry right = store.add(CODE, correcting(2, note("right foot")));
    FittingRecord record = store.read(CODE);
    assertThat(record.entries()).contains(wrong);
    assertThat(record.valid()).doesNotContain(wrong).contains(right);
    assertSays(
        () -> store.add(CODE, correcting(2, note("again"))),
        "K7-right: entry 2 was already corrected by entry 3. Correct that one.");
    assertSays(
        () -> store.add(CODE, correcting(1, note("again"))),
        "K7-right: entry 1 is of the kind opening. A correction must be of the same kind.");
    assertSays(
        () -> store.add(CODE, correcting(9, note("again"))),
        "K7-right: there is no complete entry 9. Show the record to see its entries.");
  }

  @Test
  void whatCouldNotBeReadAgainIsNotAdded() throws BadInput, StoreFailure {
    store.start(CODE, opening());
    assertSays(
        () -> store.add(CODE, Invented.addition(EntryKind.STAND, answers("changed", " "))),
        "stand: changed: expected words. Write some, or leave the key out.");
    store.add(CODE, Invented.addition(EntryKind.STAND, answers("body-mass-kg", 500)));
    assertThat(store.verify(CODE)).isEmpty();
  }

  @Test
  void erasingLeavesAnEntryThatSaysWhenByWhomAndWhy() throws BadInput, StoreFailure, IOException {
    store.start(CODE, opening());
    store.add(CODE, stand(1, 10));
    store.erase(CODE, Invented.AT, "CD", "on the wearer's request");
    FittingRecord record = store.read(CODE);
    assertThat(record.isErased()).isTrue();
    assertThat(record.entries()).hasSize(1);
    assertThat(record.entries().get(0).content())
        .isEqualTo(new Erasure("on the wearer's request", 2));
    assertThat(store.verify(CODE)).isEmpty();
    try (var files = Files.walk(folder)) {
      assertThat(files.map(Path::toString)).noneMatch(f -> f.contains("recording-"));
    }
    assertSays(
        () -> store.add(CODE, note("x")),
        "K7-right: this record was erased. Start one under another code.");
  }

  @Test
  void whileSomebodyElseWritesTheSecondWaitsAndThenSaysWho() throws Exception {
    store.start(CODE, opening());
    Store hasty = new Store(folder.resolve("clinic"), java.time.Duration.ofMillis(30));
    StoreFolder places = new StoreFolder(folder.resolve("clinic"));
    String said =
        RecordLock.holding(
            places.lock(CODE),
            "XY",
            java.time.Duration.ZERO,
            () -> saysOfTheStore(() -> hasty.add(CODE, note("x"))));
    assertThat(said)
        .matches(
            ".*k7-right\\.lock: somebody else is writing to it: XY, \\S+, PID \\d+\\."
                + " Try again when they have finished\\.");
    assertThat(store.read(CODE).size()).isEqualTo(1);
  }

  private static Addition correcting(int number, Addition addition) {
    return new Addition(
        addition.at(),
        addition.by(),
        Optional.of(new Entry.Correction(number, "wrong side", Optional.empty())),
        addition.content(),
        List.of());
  }

  private static void assertSays(ThrowingCallable call, String sentence) {
    assertThatThrownBy(call)
        .isInstanceOfSatisfying(BadInput.class, e -> assertThat(says(e)).isEqualTo(sentence));
  }

  /** What is said where nothing is wrong with what was given. */
  private static String saysOfTheStore(ThrowingCallable call) {
    try {
      call.call();
      return "";
    } catch (StoreFailure e) {
      return Wording.in(Locale.ENGLISH).say(e.problems().get(0));
    } catch (Throwable e) {
      throw new AssertionError(e);
    }
  }

  private static String says(BadInput e) {
    return Wording.in(Locale.ENGLISH).say(e.problems().get(0));
  }
}
