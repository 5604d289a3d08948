package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateRemark;
import caryatid.demo.DemoRecord;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.Numbered;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.geometry.Side;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.views.LastGood;
import caryatid.views.RecordView;
import caryatid.views.SinceVisit;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of a record beside its offsets: which entry, when, what is unsafe, what is new. */
class RecordWordsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Remark BENDS =
      Remark.of(
          LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(9, Unit.MM));
  private static final String BENDS_SAYS =
      "The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct it, then"
          + " stand again. The load line runs 9.0 mm behind the right prosthetic knee's axis.";

  private static List<String> plain(List<String> lines) {
    return lines.stream().map(line -> line.replace('\u00a0', ' ').stripTrailing()).toList();
  }

  private static Answers worn(String footwear, double heelMm) {
    return DemoRecord.answers("footwear", footwear, "heel-height-mm", heelMm);
  }

  private static AlignmentState bends() {
    AlignmentState was = Numbered.state();
    return new AlignmentState(
        was.stands(), was.offsets(), was.findings(), was.withheld(), List.of(BENDS));
  }

  /** Entries: 1 opening, 2 and 3 stands, 4 accepts what 3 warns of. */
  private static RecordView warned() {
    return Entries.opened()
        .add(EntryKind.STAND, worn("barefoot", 0))
        .add(EntryKind.STAND, worn("walking shoe", 14.5))
        .add(
            EntryKind.ACCEPTED,
            DemoRecord.answers("what", "the line", "why", "stable in gait", "stand", 3))
        .view()
        .withResults(Map.of(3, bends()));
  }

  @Test
  void theHeadNamesLegFootwearAndWhatIsUnsafe() {
    RecordHead head = RecordHead.of(warned(), ENGLISH);
    assertThat(head.wearer()).isEqualTo("DEMO-7");
    assertThat(head.code()).isEqualTo("K7-right");
    assertThat(head.left()).isFalse();
    assertThat(head.right()).isTrue();
    assertThat(head.side()).isEqualTo("right");
    assertThat(head.level()).isEqualTo("transtibial");
    assertThat(head.footwear()).contains("walking shoe, heel 14.5 mm");
    assertThat(head.newest()).isEqualTo(4);
    assertThat(head.kinds())
        .containsExactlyInAnyOrder(EntryKind.OPENING, EntryKind.STAND, EntryKind.ACCEPTED);
    RecordHead.Unsafe unsafe = head.unsafe().get(0);
    assertThat(unsafe.words().replace('\u00a0', ' '))
        .isEqualTo(
            BENDS_SAYS
                + " (entry 3, walking shoe, typed, no recording) Accepted by AB (entry 4): the"
                + " line: stable in gait. The warning stays.");
    assertThat(unsafe.stand()).hasValue(3);
    assertThat(unsafe.answered()).isTrue();
  }

  @Test
  void theHeadListsRemarksThatAreUnsafeAndNoOthers() {
    RecordView view =
        Entries.opened().view().withRemarks(List.of(Remark.of(StateRemark.ONE_STAND), BENDS));
    assertThat(RecordHead.of(view, ENGLISH).unsafe())
        .extracting(unsafe -> unsafe.words().replace('\u00a0', ' '))
        .containsExactly(BENDS_SAYS);
    assertThat(RecordHead.of(view, ENGLISH).unsafe().get(0).answered()).isFalse();
    assertThat(RecordHead.of(view, ENGLISH).footwear()).isEmpty();
  }

  @Test
  void theLinesLeadWithWhatIsUnsafe() {
    List<String> lines = plain(RecordText.lines(warned(), ENGLISH));
    assertThat(lines.get(0)).startsWith("Record K7-right: 4 entries. Head digest 0000");
    assertThat(lines.get(1)).startsWith("Take care: The knee may bend.").contains("(entry 3,");
    assertThat(lines).contains("   1  2026-03-04 08:00 +01:00  AB  opening");
    RecordView remarked =
        Entries.opened().view().withRemarks(List.of(Remark.of(StateRemark.ONE_STAND), BENDS));
    List<String> said = plain(RecordText.lines(remarked, ENGLISH));
    assertThat(said.get(1)).isEqualTo("Take care: " + BENDS_SAYS);
    assertThat(said.get(said.size() - 1)).startsWith("Note: Only one stand: ");
    assertThat(said).filteredOn(line -> line.contains("The knee may bend")).hasSize(1);
  }

  /** Entries: 1 opening, 2 a note, 3 a stand with a file, 4 in place of 2. */
  @Test
  void anEntrySaysWhatItCorrectsAndKeeps() {
    RecordView view =
        Entries.opened()
            .add(EntryKind.NOTE, DemoRecord.answers("text", "left"))
            .keep(
                EntryKind.STAND,
                Invented.found(21),
                new KeptFile("recording-a.csv", KeptFile.Role.RECORDING, "a.csv"))
            .correct(2, "wrong leg", EntryKind.NOTE, DemoRecord.answers("text", "right"))
            .view();
    List<String> lines = plain(RecordText.lines(view, ENGLISH));
    assertThat(lines)
        .contains("   2  2026-03-04 09:00 +01:00  AB  note, corrected by entry 4")
        .anyMatch(line -> line.strip().equals("corrects entry 2: wrong leg"))
        .anyMatch(line -> line.strip().equals("kept: recording-a.csv (recording)"))
        .contains("  Undecided: the stand’s result says whether measuring again can decide it.");
  }

  @Test
  void theReadMeOfAPackedRecordLeadsWithWhatIsUnsafe() {
    List<String> lines = plain(RecordText.readMe(warned(), ENGLISH));
    assertThat(lines.get(0)).contains("K7-right");
    assertThat(lines.get(2)).startsWith("Take care: The knee may bend.");
    assertThat(lines).noneMatch(line -> line.equals(ENGLISH.word("ReadMe.none")));
    RecordView remarked = Entries.opened().view().withRemarks(List.of(BENDS));
    assertThat(plain(RecordText.readMe(remarked, ENGLISH)).get(2))
        .isEqualTo("Take care: " + BENDS_SAYS);
    List<String> nothing = plain(RecordText.readMe(Entries.opened().view(), ENGLISH));
    assertThat(nothing).hasSize(5).contains(ENGLISH.word("ReadMe.none"));
    assertThat(nothing.get(4)).isEqualTo(ENGLISH.word("ResultText.caution"));
  }

  @Test
  void countsAreInWords() {
    assertThat(RecordText.records(1, ENGLISH)).isEqualTo("1 record");
    assertThat(RecordText.records(2, ENGLISH)).isEqualTo("2 records");
    assertThat(RecordText.entries(1, ENGLISH)).isEqualTo("1 entry");
    assertThat(RecordText.entries(0, ENGLISH)).isEqualTo("0 entries");
  }

  @Test
  void anErasedRecordSaysWhenByWhomAndWhy() {
    Entries erased =
        Entries.opened()
            .add(EntryKind.ERASURE, DemoRecord.answers("why", "asked for", "entries", 1));
    assertThat(RecordText.erased("K7-right", erased.all().get(1), ENGLISH))
        .isEqualTo("K7-right: erased 2026-03-04 09:00 +01:00 by AB: asked for");
  }

  private static OffsetDateTime at(String when) {
    return OffsetDateTime.parse(when + ":00+01:00");
  }

  /** Entries: 1 opening, 2 a stand on that day; 3 to 6 of the next visit. */
  private static Entries visits() {
    return Entries.opened()
        .add(EntryKind.STAND, worn("walking shoe", 14.5))
        .at(at("2026-03-11T10:00"), EntryKind.STAND, worn("walking shoe", 13))
        .at(at("2026-03-11T10:20"), EntryKind.STAND, worn("barefoot", 0))
        .at(at("2026-03-11T10:40"), EntryKind.NOTE, DemoRecord.answers("text", "at ease"))
        .correct(2, "other heel", EntryKind.STAND, worn("walking shoe", 15));
  }

  private static List<String> since(Entries entries, Optional<LocalDate> day) throws Exception {
    SinceVisit since = SinceVisit.of(entries.record(), day).orElseThrow();
    return plain(VisitText.lines(since, entries.view(), ENGLISH));
  }

  @Test
  void whatIsNewSinceAVisitIsToldEntryByEntry() throws Exception {
    List<String> lines = since(visits(), Optional.of(LocalDate.parse("2026-03-04")));
    assertThat(lines.get(0)).startsWith("Since 2026-03-04 (entry 2): 4 entries");
    assertThat(lines)
        .contains(
            "  3  2026-03-11 10:00 +01:00  AB  static alignment",
            "  5  2026-03-11 10:40 +01:00  AB  note",
            "static alignment, barefoot: entry 4 is the first",
            "What is open")
        .anyMatch(line -> line.strip().equals("text: at ease"))
        .anyMatch(line -> line.endsWith("static alignment, corrects entry 2: other heel"))
        .anyMatch(line -> line.matches("static alignment, walking shoe: from entry 2 to entry 3"))
        .noneMatch(line -> line.startsWith("There was no visit"));
  }

  @Test
  void aDayWithoutAVisitIsSaidToHaveNone() throws Exception {
    assertThat(since(visits(), Optional.of(LocalDate.parse("2026-03-08"))).get(0))
        .isEqualTo("There was no visit on 2026-03-08; the last one before it was on 2026-03-04.");
  }

  @Test
  void withoutAGoodStandThereIsNoWayBack() {
    LastGood any = LastGood.of(visits().record(), Optional.empty());
    assertThat(VisitText.lines(any, "K7-right", ENGLISH))
        .contains("K7-right: no stand in this footwear met every tolerance: barefoot.");
    LastGood none = LastGood.of(Entries.opened().record(), Optional.empty());
    assertThat(VisitText.lines(none, "K7-right", ENGLISH))
        .containsExactly("K7-right: no stand of this record met every tolerance.");
  }

  /** The record as it is, with other open issues. */
  private static RecordView open(RecordView of, Remark... open) {
    return new RecordView(
        of.code(),
        of.headDigest(),
        of.newest(),
        of.timeline(),
        of.valid(),
        of.offsets(),
        of.changes(),
        List.of(open),
        of.remarks(),
        of.warnings(),
        of.damage(),
        of.unread());
  }

  private static final Remark NOTED = Remark.of(StateRemark.ONE_STAND);
  private static final String NOTED_SAYS =
      "  Only one stand: how much the next would differ is not known. Make three; between them step"
          + " off, take two steps, turn, and put the feet back.";

  private static List<String> afterOpen(RecordView view) {
    List<String> lines = plain(RecordText.lines(view, ENGLISH));
    return lines.stream()
        .dropWhile(line -> !line.equals("What is open"))
        .skip(1)
        .takeWhile(line -> !line.isEmpty())
        .toList();
  }

  /** What is unsafe leads, is not repeated, and is never called nothing. */
  @Test
  void anOpenIssueThatIsUnsafeLeads() {
    RecordView plain = Entries.opened().view();
    RecordView unsafe = open(plain, BENDS);
    assertThat(plain(RecordText.lines(unsafe, ENGLISH)).get(1))
        .isEqualTo("Take care: " + BENDS_SAYS);
    assertThat(afterOpen(unsafe)).containsExactly("  Nothing else.");
    assertThat(afterOpen(open(plain, BENDS, NOTED))).containsExactly(NOTED_SAYS);
    assertThat(afterOpen(open(plain))).containsExactly("  No open items.");
    assertThat(plain(RecordText.readMe(unsafe, ENGLISH))).contains("Take care: " + BENDS_SAYS);
    assertThat(plain(RecordText.readMe(open(plain, NOTED), ENGLISH)))
        .noneMatch(line -> line.contains("One stand"));
  }

  @Test
  void whatIsOpenSinceAVisitIsListed() throws Exception {
    SinceVisit since =
        SinceVisit.of(visits().record(), Optional.of(LocalDate.parse("2026-03-04"))).orElseThrow();
    assertThat(plain(VisitText.lines(since, open(visits().view(), NOTED), ENGLISH)))
        .endsWith("What is open", NOTED_SAYS);
    assertThat(plain(VisitText.lines(since, open(visits().view()), ENGLISH)))
        .endsWith("What is open", "  No open items.");
  }

  @Test
  void remarksAreLedByTheirWeight() {
    assertThat(plain(RecordText.remarks(List.of(NOTED, BENDS), ENGLISH)))
        .containsExactly("Note: " + NOTED_SAYS.strip(), "Take care: " + BENDS_SAYS);
  }

  /** What rounds to zero has no sign; a hundred has one, although it has zeros. */
  @Test
  void onlyZeroHasNoSign() {
    assertThat(ENGLISH.signed(0.04, Unit.MM)).isEqualTo("0.0");
    assertThat(ENGLISH.signed(-0.04, Unit.MM)).isEqualTo("0.0");
    assertThat(ENGLISH.signed(0.05, Unit.MM)).isEqualTo("+0.1");
    assertThat(ENGLISH.signed(-0.06, Unit.MM)).isEqualTo("\u22120.1");
    assertThat(ENGLISH.signed(100, Unit.COUNT)).isEqualTo("+100");
    assertThat(ENGLISH.signed(0, Unit.COUNT)).isEqualTo("0");
  }

  private static LandmarkWords words(String level, Object... foot) {
    Entries entries = new Entries();
    entries.add(
        EntryKind.OPENING, DemoRecord.answers("wearer", "DEMO-7", "side", "right", "level", level));
    if (foot.length > 0) {
      entries.add(EntryKind.COMPONENTS, Invented.answers("components", Invented.answers(foot)));
    }
    assertThat(LandmarkWords.of(entries.view(), ENGLISH).name("knee centre"))
        .isEqualTo(LandmarkWords.of(entries.view(), Side.RIGHT, ENGLISH).name("knee centre"));
    return LandmarkWords.of(entries.view(), Side.RIGHT, ENGLISH);
  }

  @Test
  void aRecordsLandmarksAreNamedByLevelAndAnkle() {
    assertThat(words("transtibial").name("knee centre", Side.RIGHT)).isEqualTo("knee centre");
    assertThat(words("transfemoral").name("knee centre", Side.RIGHT))
        .isEqualTo("prosthetic knee axis");
    assertThat(words("transtibial").name("ankle axis", Side.RIGHT))
        .isEqualTo("foot reference point");
    assertThat(words("partial foot").name("ankle axis", Side.RIGHT)).isEqualTo("ankle axis");
    assertThat(
            words("transtibial", "what", "ankle unit", "name", "demo", "ankle-axis", true)
                .name("ankle axis", Side.RIGHT))
        .isEqualTo("ankle axis");
  }
}
