package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Filled;
import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is latest follows the time of what an entry says, not the order in which it was added. */
class LatestTest {
  @TempDir private Path folder;
  private Store store;

  @BeforeEach
  void start() throws BadInput, StoreFailure {
    store = Invented.store(folder);
    store.start(CODE, Invented.opening());
  }

  @Test
  void aStandThatIsAddedLateDoesNotBecomeTheNewest() throws BadInput, StoreFailure {
    stand("11:00", 20);
    Entry late = stand("10:30", 2);
    RecordView view = RecordView.of(store.read(CODE));
    assertThat(now(view)).containsExactly(20.0);
    assertThat(view.offsets().get(0).measured())
        .extracting(OffsetSeries.Measured::entry)
        .containsExactly(3, 2);
    assertThat(said(late))
        .containsExactly(
            "Entry 3 (2026-03-04 10:30 +01:00) is dated before entry 2 (2026-03-04 11:00 +01:00),"
                + " so it is inserted there; the later entry still applies.");
  }

  @Test
  void ofTwoAtOneTimeTheOneAddedLaterIsTheLatest() throws BadInput, StoreFailure {
    stand("11:00", 20);
    Entry second = stand("11:00", 2);
    assertThat(now(RecordView.of(store.read(CODE)))).containsExactly(2.0);
    assertThat(said(second)).isEmpty();
  }

  @Test
  void aCorrectionTakesTheTimeOfWhatItCorrectsUnlessItStatesAnother()
      throws BadInput, StoreFailure {
    stand("11:00", 20);
    stand("11:30", 30);
    Entry correction = correct(2, "12:00", new Entry.Correction(2, "misread", Optional.empty()));
    assertThat(now(RecordView.of(store.read(CODE)))).containsExactly(30.0);
    assertThat(said(correction))
        .containsExactly(
            "Entry 4 takes effect at 2026-03-04 11:00 +01:00, the time of entry 2, which it"
                + " corrects; --as-of states another.",
            "Entry 4 (2026-03-04 11:00 +01:00) is dated before entry 3 (2026-03-04 11:30 +01:00),"
                + " so it is inserted there; the later entry still applies.");
    Entry again = correct(5, "12:10", new Entry.Correction(4, "day", Optional.of(at("11:40"))));
    assertThat(now(RecordView.of(store.read(CODE)))).containsExactly(5.0);
    assertThat(said(again)).isEmpty();
    correct(6, "12:20", new Entry.Correction(5, "misread", Optional.empty()));
    assertThat(now(RecordView.of(store.read(CODE)))).containsExactly(6.0);
  }

  @Test
  void eachFootwearHasALatestResultOfItsOwn() throws BadInput, StoreFailure {
    shod("11:00", "boot", 1);
    shod("11:10", "sandal", 2);
    shod("11:20", " Boot", 3);
    assertThat(now(RecordView.of(store.read(CODE)))).containsExactly(2.0, 3.0);
    assertThat(open())
        .containsExactly(
            "sagittal, right, knee centre (entry 3, sandal, typed, no recording): undecided,"
                + " measured within the tolerance",
            "sagittal, right, knee centre (entry 4, Boot, typed, no recording): undecided,"
                + " measured within the tolerance");
    bench("11:15", 4);
    assertThat(open())
        .contains(
            "sagittal, right, knee centre (entry 3, sandal, typed, no recording): undecided,"
                + " measured within the tolerance; the alignment was changed since (entry 5)",
            "sagittal, right, knee centre (entry 4, Boot, typed, no recording): undecided,"
                + " measured within the tolerance");
  }

  private void shod(String time, String shoe, double mm) throws BadInput, StoreFailure {
    Map<String, Answers.Value> said = new LinkedHashMap<>(Invented.found(mm).values());
    said.put("footwear", new Answers.Value.Words(shoe));
    add(EntryKind.STAND, time, new Answers(said));
  }

  @Test
  void anAlignmentThatIsAddedAfterTheStandItPrecededIsNoChangeSince()
      throws BadInput, StoreFailure {
    stand("11:00", 20);
    bench("10:30", 4);
    assertThat(open()).noneMatch(s -> s.contains("after the last stand"));
    assertThat(said(store.read(CODE).entry(3)))
        .singleElement()
        .asString()
        .contains("dated before entry 2");
    bench("11:10", 5);
    assertThat(open()).anyMatch(s -> s.contains("(entry 4) after the last stand (entry 2)"));
  }

  @Test
  void settingsNowAreThoseOfTheLatestTimeAndOfAWearersOwnSettingAfterThem()
      throws BadInput, StoreFailure {
    bench("11:00", 5);
    bench("10:30", 4);
    assertThat(settings()).containsExactly("socket flexion 5 (2)");
    add(EntryKind.OWN_SETTING, "11:30", answers("what", "ankle", "attempts", 3, "succeeded", 1));
    assertThat(settings()).hasSize(1);
    own("11:40", 10);
    own("11:35", 15);
    assertThat(settings()).containsExactly("socket flexion 5 (2)", "heel height 10 (5)");
    add(
        EntryKind.BENCH_ALIGNMENT,
        "12:00",
        answers("items", answers("item", "heel height", "set", 0, "unit", "mm")));
    assertThat(settings()).containsExactly("socket flexion 5 (2)", "heel height 0 (7)");
  }

  @Test
  void anItemUnderThreeSpellingsIsOneItemAndItsChangeIsOne() throws BadInput, StoreFailure {
    stand("10:00", 2);
    item("10:10", "Schaftflexion", 5);
    stand("10:20", 3);
    item("10:30", "socket flexion", 6);
    item("10:40", "Socket  flexion", 7);
    stand("10:50", 4);
    assertThat(settings()).containsExactly("socket flexion 7 (6)");
    assertThat(StandChange.of(store.read(CODE)))
        .extracting(
            change ->
                change.settings().stream()
                    .map(setting -> setting.was() + " -> " + setting.row().set())
                    .toList()
                    .toString())
        .hasSize(2)
        .last()
        .asString()
        .isEqualTo("[Optional[5] -> 7]");
  }

  private void item(String time, String item, int degrees) throws BadInput, StoreFailure {
    add(
        EntryKind.BENCH_ALIGNMENT,
        time,
        answers("items", answers("item", item, "set", degrees, "unit", "deg")));
  }

  private void own(String time, int mm) throws BadInput, StoreFailure {
    Answers said =
        answers("what", "ankle", "attempts", 3, "succeeded", 3, "heel-height-set-mm", mm);
    add(EntryKind.OWN_SETTING, time, said);
  }

  private List<String> settings() throws BadInput, StoreFailure {
    return CurrentSetting.of(store.read(CODE).valid()).stream()
        .map(
            s ->
                new EntryWords(Wording.in(Locale.ENGLISH)).name("item", s.item())
                    + " "
                    + s.row().set().toPlainString()
                    + " ("
                    + s.entry()
                    + ")")
        .toList();
  }

  private List<String> open() throws BadInput, StoreFailure {
    return RecordView.of(store.read(CODE)).open().stream()
        .map(Wording.in(Locale.ENGLISH)::say)
        .toList();
  }

  private static List<Double> now(RecordView view) {
    return view.offsets().stream()
        .flatMap(s -> s.current().stream())
        .map(OffsetSeries.Measured::offsetMm)
        .toList();
  }

  private List<String> said(Entry added) throws BadInput, StoreFailure {
    return AdditionRemarks.of(store.read(CODE), added).stream()
        .map(Wording.in(Locale.ENGLISH)::say)
        .toList();
  }

  private Entry stand(String time, double mm) throws BadInput, StoreFailure {
    return add(EntryKind.STAND, time, Invented.found(mm));
  }

  private Entry correct(double mm, String time, Entry.Correction correction)
      throws BadInput, StoreFailure {
    return store.add(
        CODE,
        new Addition(
            at(time),
            "AB",
            Optional.of(correction),
            AnswersToContent.content(
                EntryKind.STAND, Filled.of(EntryKind.STAND, Invented.found(mm))),
            List.of()));
  }

  private void bench(String time, int degrees) throws BadInput, StoreFailure {
    Answers item = answers("item", "socket flexion", "set", degrees, "unit", "deg");
    add(EntryKind.BENCH_ALIGNMENT, time, answers("items", item));
  }

  private Entry add(EntryKind kind, String time, Answers content) throws BadInput, StoreFailure {
    return store.add(
        CODE,
        new Addition(
            at(time),
            "AB",
            Optional.empty(),
            AnswersToContent.content(kind, Filled.of(kind, content)),
            List.of()));
  }

  private static OffsetDateTime at(String time) {
    return OffsetDateTime.parse("2026-03-04T" + time + ":00+01:00");
  }
}
