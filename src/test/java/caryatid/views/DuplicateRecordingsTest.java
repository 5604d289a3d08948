package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.attached;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One recording under two stands. */
class DuplicateRecordingsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  @TempDir private Path folder;
  private Store store;

  @BeforeEach
  void start() throws BadInput, StoreFailure {
    store = Invented.store(folder);
    store.start(CODE, Invented.opening());
  }

  @Test
  void oneRecordingUnderTwoStandsIsRemarkedWhenAddedAndStaysOpen() throws BadInput, StoreFailure {
    store.add(CODE, stand("sheet 1", "a.csv", "b.csv"));
    Entry second = store.add(CODE, stand("sheet 2", "b.csv", "c.csv"));
    Entry third = store.add(CODE, stand("sheet 3", "d.csv"));
    FittingRecord record = store.read(CODE);
    String said =
        "Entry 3 holds the same recording as entry 2, byte for byte (b.csv). Two stands never agree"
            + " to the last digit: correct the entry it does not belong to, unless both are of one"
            + " state.";
    assertThat(words(AdditionRemarks.of(record, second))).containsExactly(said);
    assertThat(words(AdditionRemarks.of(record, third))).isEmpty();
    assertThat(words(RecordView.of(record).open())).containsExactly(said);
  }

  @Test
  void theSameRecordingsWithTheSameSheetAreRefused() throws BadInput, StoreFailure {
    Addition stand = stand("sheet 1", "a.csv", "b.csv");
    store.add(CODE, stand);
    assertThatThrownBy(() -> store.add(CODE, stand))
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(ENGLISH.say(e.problems().get(0)))
                    .isEqualTo(
                        "K7-right: this stand is already in the record, as entry 2: the same"
                            + " recordings and the same sheet. Nothing was written."));
    assertThat(store.read(CODE).size()).isEqualTo(2);
    Addition correction =
        new Addition(
            stand.at(),
            "AB",
            Optional.of(new Entry.Correction(2, "the wrong plate description", Optional.empty())),
            AnswersToContent.content(EntryKind.STAND, Answers.NONE),
            stand.files());
    Entry corrected = store.add(CODE, correction);
    assertThat(words(DuplicateRecordings.of(store.read(CODE)))).isEmpty();
    assertThat(corrected.number()).isEqualTo(3);
  }

  @Test
  void standsWithoutARecordingAreNoDoubles() throws BadInput, StoreFailure {
    store.add(CODE, stand("sheet 1"));
    store.add(CODE, stand("sheet 1"));
    assertThat(words(DuplicateRecordings.of(store.read(CODE)))).isEmpty();
  }

  private static List<String> words(List<Remark> remarks) {
    return remarks.stream().map(ENGLISH::say).toList();
  }

  private static Addition stand(String sheet, String... recordings) {
    List<Addition.Attached> files = new ArrayList<>();
    files.add(attached(KeptFile.Role.SHEET, "sheet.yaml", sheet));
    for (String name : recordings) {
      files.add(attached(KeptFile.Role.RECORDING, name, "Time,Fz\n0,700 " + name + "\n"));
    }
    return new Addition(
        Invented.AT,
        "AB",
        Optional.empty(),
        AnswersToContent.content(EntryKind.STAND, Answers.NONE),
        files);
  }
}
