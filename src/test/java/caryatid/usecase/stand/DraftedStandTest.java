package caryatid.usecase.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.entry.EntryKind;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.usecase.Assignments;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedLimits;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.StartRecord;
import caryatid.usecase.SuggestedRows;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.stand.DraftedStand.SoFar;
import caryatid.wording.Wording;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn and found again while a stand is typed, with the samples. */
class DraftedStandTest {
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final String CODE = "K7-right";
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final LocalFiles FILES = new LocalFiles();
  private static final Instant NOW = Instant.parse("2026-12-01T08:00:00Z");

  private final FoundBefore before = new FoundBefore();
  @TempDir Path folder;
  private Records records;
  private StandDraft draft;

  @BeforeEach
  void aStandArrived() throws Exception {
    records = at(NOW);
    StartRecord.run(records, CODE, opening());
    RememberedPlates.remember(
        records,
        FILES.read(K7.resolve("barefoot-1.csv")),
        FILES.read(K7.resolve("plate.yaml")),
        false);
    draft = StandDraft.of(records, CODE, before);
    draft.type(sheet());
    take("barefoot-1.csv");
    draft.count(1, true);
  }

  private Records at(Instant now) throws BadInput {
    return Records.in(folder.resolve("clinic"), Clock.fixed(now, ZoneOffset.UTC));
  }

  private static EntryDraft opening() throws BadInput {
    List<String> says = List.of("wearer=K7", "side=right", "level=transtibial");
    return new EntryDraft(
        EntryKind.OPENING,
        Assignments.read(Optional.empty(), says, Place.of("test")),
        SuggestedRows.none(ENGLISH),
        List.of(),
        "AB",
        Optional.empty(),
        Optional.empty(),
        false);
  }

  private void take(String sample) throws Exception {
    try (InputStream bytes = Files.newInputStream(K7.resolve(sample))) {
      draft.take("stand.csv", bytes);
    }
  }

  private static Map<String, String> sheet() {
    Map<String, String> sheet = new LinkedHashMap<>();
    sheet.put("at", "2026-12-01T08:00Z");
    sheet.put("body-mass", "82");
    sheet.put("worn", "barefoot");
    sheet.put("heel", "0");
    sheet.put("stance", "prosthetic foot on plate");
    sheet.put("plate", "plate 1");
    sheet.put("other-foot", "block");
    sheet.put("other-foot-by", "0");
    sheet.put("landmark[1].name", "knee centre");
    sheet.put("landmark[1].forward-sense", "front");
    sheet.put("landmark[1].forward-from", "rear edge");
    sheet.put("landmark[1].forward", "268");
    sheet.put("landmark[1].rightward-sense", "right");
    sheet.put("landmark[1].rightward-from", "midline");
    sheet.put("landmark[1].rightward", "23");
    sheet.put("landmark[1].up", "492");
    return sheet;
  }

  private DraftedStand work() throws Exception {
    return DraftedStand.of(records, CODE, draft, "AB").orElseThrow();
  }

  private List<DrawnOverTime> drawn() throws Exception {
    return work().overTime(draft.arrived().get(0), ENGLISH);
  }

  private SoFar shown() throws Exception {
    return work().shown(false);
  }

  private void type(String name, String text) throws Exception {
    Map<String, String> fields = new LinkedHashMap<>(draft.fields());
    fields.put(name, text);
    draft.type(fields);
  }

  @ParameterizedTest
  @CsvSource({
    "landmark[1].up, 491",
    "landmark[1].forward, 26x",
    "worn, house shoe",
    "heel, 1o",
    "last-change, foot moved 4 mm to the rear",
    "minutes-walked, ten",
    "at, 2026-11-30T08:00Z",
    "target[1].recommended, 20",
    "from-s[2], 3"
  })
  void aDrawingStaysWhileWhatItShowsDoes(String name, String text) throws Exception {
    List<DrawnOverTime> first = drawn();
    type(name, text);
    assertThat(drawn()).isSameAs(first).singleElement().asString().contains("Over time");
  }

  @ParameterizedTest
  @CsvSource({"from-s[1], 3", "to-s[1], 15", "body-mass, 80", "other-foot, floor"})
  void aDrawingIsMadeAgainWhereWhatItShowsMayBeOther(String name, String text) throws Exception {
    List<DrawnOverTime> first = drawn();
    type(name, text);
    assertThat(drawn()).isNotSameAs(first);
  }

  @Test
  void anotherRecordingUnderTheSameNumberIsDrawn() throws Exception {
    List<DrawnOverTime> first = drawn();
    draft.remove(1);
    take("barefoot-2.csv");
    assertThat(drawn()).isNotEqualTo(first);
  }

  @Test
  void anotherPlateAnotherLimitAndAnotherLanguageAreDrawn() throws Exception {
    List<DrawnOverTime> first = drawn();
    List<DrawnOverTime> german = work().overTime(draft.arrived().get(0), Wording.in(Locale.GERMAN));
    assertThat(german).isNotEqualTo(first);
    RememberedLimits.remember(
        records,
        NamedBytes.of(
            "limits.yaml",
            "clinic-limits: 1\nlimits:\n  sagittal-own-knee-mm: {ask-above: 50}\n"
                .getBytes(StandardCharsets.UTF_8)));
    List<DrawnOverTime> limited = drawn();
    assertThat(limited).isEqualTo(first).isNotSameAs(first);
    byte[] plate =
        (Files.readString(K7.resolve("plate.yaml")) + "# another\n")
            .getBytes(StandardCharsets.UTF_8);
    RememberedPlates.remember(
        records,
        FILES.read(K7.resolve("barefoot-1.csv")),
        NamedBytes.of("plate.yaml", plate),
        true);
    assertThat(drawn()).isEqualTo(first).isNotSameAs(limited);
  }

  @Test
  void whatWasRefusedIsTriedAgain() throws Exception {
    type("from-s[1]", "9");
    type("to-s[1]", "8");
    for (int i = 0; i < 2; i++) {
      assertThatThrownBy(this::drawn).isInstanceOf(BadInput.class);
    }
    type("to-s[1]", "18");
    assertThat(drawn()).isNotEmpty();
  }

  @Test
  void whatWasFoundStaysWhileNothingChanges() throws Exception {
    SoFar first = shown();
    assertThat(first.checked().isPresent()).as(first.problems().toString()).isTrue();
    assertThat(shown()).isSameAs(first);
    assertThat(work().shown(true)).isNotSameAs(first);
    SoFar again = shown();
    type("comfort", "good");
    SoFar other = shown();
    assertThat(other).isNotSameAs(again);
    assertThat(other.inputs()).isNotEqualTo(again.inputs());
    draft.count(1, false);
    assertThat(shown().inputs()).isEmpty();
  }

  /** A time to come is refused, and time goes on. */
  @Test
  void whatWasFoundIsFoundAgainInTheNextMinute() throws Exception {
    type("at", "2026-12-03T08:00Z");
    assertThat(shown().checked().isPresent()).isFalse();
    records = at(NOW.plus(Duration.ofDays(2)));
    SoFar later = shown();
    assertThat(later.checked().isPresent()).isTrue();
    records = at(NOW.plus(Duration.ofDays(2)).plusSeconds(59));
    assertThat(shown()).isSameAs(later);
    records = at(NOW.plus(Duration.ofDays(2)).plusSeconds(60));
    assertThat(shown()).isNotSameAs(later);
  }

  @Test
  void nothingOfADraftThatIsGoneIsKept() throws Exception {
    List<DrawnOverTime> first = drawn();
    SoFar found = shown();
    draft.clear();
    draft.type(sheet());
    take("barefoot-1.csv");
    draft.count(1, true);
    assertThat(drawn()).isEqualTo(first).isNotSameAs(first);
    assertThat(shown()).isNotSameAs(found);
  }

  @Test
  void asManyDrawingsAsArriveInAMorningAreKept() throws Exception {
    FoundBefore.DrawnStand first = drawing("0");
    List<DrawnOverTime> kept = before.drawn(first, () -> List.of(named("first")));
    for (int i = 1; i < 120; i++) {
      before.drawn(drawing(Integer.toString(i)), () -> List.of(named("another")));
    }
    assertThat(before.drawn(first, () -> List.of(named("again")))).isSameAs(kept);
    for (int i = 0; i < 120; i++) {
      before.drawn(drawing("later " + i), () -> List.of(named("another")));
    }
    assertThat(before.drawn(first, () -> List.of(named("again")))).containsExactly(named("again"));
  }

  private static DrawnOverTime named(String svg) {
    return new DrawnOverTime(svg, 0, 1, 20, 0, 20);
  }

  private static FoundBefore.DrawnStand drawing(String recording) {
    return new FoundBefore.DrawnStand("K8", recording, "", "", "", "en");
  }

  /** What is typed for walking lies in the same folder. */
  @Test
  void aDraftThatIsClearedLeavesThoseOfOtherForms() throws Exception {
    FormDraft.of(records, CODE, EntryKind.WALKING).type(Map.of("comfort", "7"));
    draft.clear();
    assertThat(FormDraft.of(records, CODE, EntryKind.WALKING).fields())
        .containsEntry("comfort", "7");
    StandDraft again = StandDraft.of(records, CODE, before);
    assertThat(again.fields()).isEmpty();
    assertThat(again.arrived()).isEmpty();
  }

  /** The next number is that of a recording that was removed with the draft. */
  @Test
  void aRecordingAfterAClearedDraftIsTheNewOne() throws Exception {
    draft.clear();
    take("barefoot-2.csv");
    assertThat(draft.arrived().get(0).number()).isEqualTo(1);
    assertThat(draft.arrived().get(0).file().readAll())
        .isEqualTo(Files.readAllBytes(K7.resolve("barefoot-2.csv")));
  }

  @Test
  void aPlateThatIsNoLongerKnownIsAskedForAndNoneGuessed() throws Exception {
    Map<String, String> fields = new LinkedHashMap<>(draft.fields());
    fields.put(StandFields.KNOWN_PLATE, "old.yaml");
    draft.type(fields);
    SoFar found = DraftedStand.of(records, CODE, draft, "AB").orElseThrow().shown(false);
    assertThat(found.checked()).isEmpty();
    assertThat(found.problems())
        .extracting(problem -> ENGLISH.say(problem))
        .containsExactly(
            "known-plate: The plate old.yaml is no longer known here. Choose the plate that the"
                + " wearer stood on.");
  }
}
