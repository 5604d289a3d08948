package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateRemark;
import caryatid.demo.Demo;
import caryatid.demo.DemoRecord;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.Numbered;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.fitting.RecordProblem;
import caryatid.geometry.Side;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a record's report says beside its tables of numbers, from records that no store keeps. */
class RecordPagesTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Remark BENDS =
      Remark.of(
          LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(9, Unit.MM));
  private static final Problem PROBLEM =
      Problem.at(Place.of("entry 3"), RecordProblem.NO_SUCH_ENTRY, Argument.count(3));
  private static final String PROBLEM_SAYS =
      "entry 3: there is no complete entry 3. Show the record to see its entries.";

  private static <B extends Block> Stream<B> only(Class<B> kind, List<Block> blocks) {
    return blocks.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static List<String> headings(List<Block> blocks) {
    return only(Heading.class, blocks).map(Heading::words).toList();
  }

  private static List<String> prose(List<Block> blocks, boolean strong) {
    return only(Prose.class, blocks)
        .filter(p -> p.strong() == strong)
        .map(p -> p.words().replace('\u00a0', ' '))
        .toList();
  }

  private static List<String> points(List<Block> blocks) {
    return only(Points.class, blocks)
        .flatMap(p -> p.points().stream())
        .map(point -> point.lead() + "|" + point.words().replace('\u00a0', ' '))
        .toList();
  }

  private static List<Block> first(RecordView view) {
    return new RecordFirstPage(view, ENGLISH).blocks("title");
  }

  @Test
  void whatIsUnsafeOpenOrNotedStandsInItsPlace() {
    RecordView plain = Entries.opened().view();
    RecordView view =
        plain.withRemarks(
            List.of(Remark.of(StateRemark.ONE_STAND), Remark.of(StateRemark.SIMPLE_RULE), BENDS));
    List<Block> blocks = first(view);
    assertThat(points(blocks).get(0))
        .isEqualTo(
            "Take care|The knee may bend. Seat the wearer, or hands on the rails and a helper."
                + " Correct it, then stand again. The load line runs 9.0 mm behind the right"
                + " prosthetic knee's axis.");
    assertThat(points(blocks))
        .contains(
            "|The sheet asks for the simple rule: a line inside the tolerance meets it, any other"
                + " does not, and the uncertainty does not count (no guard band).");
    assertThat(prose(blocks, false))
        .contains(
            "Only one stand: how much the next would differ is not known. Make three; between them"
                + " step off, take two steps, turn, and put the feet back.");
    assertThat(points(blocks)).hasSize(points(first(plain)).size() + 2);
    String nothingOpen = "No open items.";
    assertThat(prose(first(plain), false)).contains(nothingOpen);
    assertThat(prose(blocks, false)).doesNotContain(nothingOpen);
  }

  @Test
  void everyPartHasItsHeadingAlsoWhereThereIsNothingInIt() {
    List<Block> blocks = first(Entries.opened().view());
    assertThat(headings(blocks))
        .containsExactly(
            "Where the load line runs now, against every target",
            "Settings now",
            "Components now",
            "What is open",
            "Accepted as it is",
            "What a signature vouches for");
    assertThat(prose(blocks, false))
        .contains(
            "No stand in this record has been compared with a target yet.",
            "No setting is in this record yet.",
            "No component is in this record yet.",
            "Nothing was noted as accepted.");
  }

  /** The warning of a stand whose result can be read. */
  @Test
  void theKneesWarningLeadsInStrongLetters() {
    AlignmentState was = Numbered.state();
    AlignmentState bends =
        new AlignmentState(
            was.stands(), was.offsets(), was.findings(), was.withheld(), List.of(BENDS));
    RecordView view =
        Entries.opened()
            .add(EntryKind.STAND, Invented.found(21))
            .view()
            .withResults(Map.of(2, bends));
    assertThat(prose(first(view), true))
        .singleElement()
        .asString()
        .startsWith("Take care: The knee may bend. Seat the wearer");
    assertThat(prose(first(Entries.opened().view()), true)).isEmpty();
  }

  @Test
  void aDamagedRecordSaysWhatIsDamagedAndIsNotSigned() {
    List<Block> blocks = first(Entries.opened().damaged(PROBLEM).view());
    assertThat(prose(blocks, true))
        .containsExactly(
            "This record is damaged. Only the undamaged parts are shown. Do not sign this report."
                + " Restore the record from a backup first.");
    assertThat(points(blocks)).contains("Take care|" + PROBLEM_SAYS);
    assertThat(headings(blocks)).doesNotContain("What a signature vouches for");
  }

  @Test
  void aRecordWithAnEntryThatCannotBeReadIsNotSigned() {
    List<Block> blocks = first(Entries.opened().unread(PROBLEM).view());
    assertThat(prose(blocks, true))
        .containsExactly(
            "This record holds entries that this version of the program cannot read. Only the"
                + " others are shown. Do not sign this report.");
    assertThat(points(blocks)).contains("Remark|" + PROBLEM_SAYS);
    assertThat(headings(blocks)).doesNotContain("What a signature vouches for");
  }

  /** Entry 2 tells of the day before; the facts are those of the opening all the same. */
  @Test
  void theFactsAreOfTheOpeningWhateverCameBefore() {
    RecordView view =
        Entries.opened()
            .at(
                OffsetDateTime.parse("2026-03-03T11:00:00+01:00"),
                EntryKind.NOTE,
                DemoRecord.answers("text", "earlier"))
            .view();
    assertThat(only(Facts.class, first(view)).flatMap(facts -> facts.facts().stream()))
        .extracting(fact -> fact.label() + ": " + fact.value())
        .contains(
            "Wearer's code: DEMO-7",
            "Started: 2026-03-04 08:00 +01:00, AB",
            "Newest entry: 2026-03-04 08:00 +01:00, AB",
            "Entries: 2",
            "Stands: 0");
  }

  private static List<String> below(RecordView view, boolean kneeMayBend) {
    return prose(new CurrentOffsetsTable(view, kneeMayBend, ENGLISH).blocks(), false);
  }

  /** The offset is 1 mm from the recommendation and known to within 18 mm; tolerance 15 mm. */
  @Test
  void anUndecidedOffsetIsSaidToBeSoUnlessTheKneeMayBend() {
    RecordView undecided = Entries.opened().add(EntryKind.STAND, Invented.found(21)).view();
    assertThat(below(undecided, false))
        .contains("Undecided: the stand’s result says whether measuring again can decide it.");
    assertThat(below(undecided, true)).noneMatch(line -> line.startsWith("Undecided"));
    RecordView met = Entries.opened().add(EntryKind.STAND, decided()).view();
    assertThat(below(met, false)).noneMatch(line -> line.startsWith("Undecided"));
  }

  private static Answers decided() {
    return Invented.answers(
        "footwear",
        "barefoot",
        "findings",
        Invented.answers(
            "plane",
            "sagittal",
            "side",
            "right",
            "landmark",
            "knee centre",
            "offset-mm",
            21,
            "expanded-mm",
            3,
            "recommended-mm",
            20,
            "below-mm",
            15,
            "above-mm",
            15,
            "result",
            "within",
            "source",
            "instructions (invented)"));
  }

  /** Entries: 1 opening, 2 the wearer's own setting. */
  @Test
  void whatTheWearerSetIsNamed() {
    List<Block> blocks =
        new CurrentSettingsTable(
                Entries.opened()
                    .add(
                        EntryKind.OWN_SETTING,
                        DemoRecord.answers(
                            "what",
                            "ankle dial",
                            "attempts",
                            3,
                            "succeeded",
                            2,
                            "heel-height-set-mm",
                            35))
                    .all(),
                ENGLISH)
            .blocks();
    assertThat(only(Table.class, blocks).findFirst().orElseThrow().rows().get(0))
        .containsExactly("heel height", "35 mm", "–", "", "–", "–", "2");
    assertThat(prose(blocks, false))
        .containsExactly(
            "heel height: set by the wearer (entry 2: ankle dial). Angles of that part noted"
                + " earlier are from before this.");
  }

  @Test
  void withoutOffsetsNothingIsSaidOfThem() {
    assertThat(history(Entries.opened().view())).isEmpty();
    RecordView view = Entries.opened().add(EntryKind.STAND, Invented.found(21)).view();
    assertThat(headings(history(view))).containsExactly("Offsets from stand to stand");
  }

  private static List<Block> history(RecordView view) {
    return new OffsetHistory(new RecordReportData(view, Map.of(), List.of(), List.of()), ENGLISH)
        .blocks();
  }

  private static List<Block> timeline(RecordView view, Map<Integer, AlignmentState> states) {
    return new RecordTimeline(
            new RecordReportData(view, states, List.of(), List.of()), ENGLISH, 186)
        .blocks();
  }

  private static List<List<String>> rows(List<Block> blocks) {
    return only(Table.class, blocks).flatMap(table -> table.rows().stream()).toList();
  }

  private static Answers bench(int forward) {
    return DemoRecord.rows(
        "items",
        DemoRecord.answers("item", "foot forward", "set", forward, "unit", "mm", "why", "x"));
  }

  /** Entries: 1 opening, 2 bench, 3 the same, 4 in its place, 5 a stand with files, 6 as 4. */
  @Test
  void theTimelineSaysWhatTakesWhosePlaceAndWhatIsKept() {
    RecordView view =
        Entries.opened()
            .add(EntryKind.BENCH_ALIGNMENT, bench(4))
            .add(EntryKind.BENCH_ALIGNMENT, bench(4))
            .correct(3, "read wrongly", EntryKind.BENCH_ALIGNMENT, bench(6))
            .keep(
                EntryKind.STAND,
                Invented.found(21),
                new KeptFile("recording-a.csv", KeptFile.Role.RECORDING, "a.csv"),
                new KeptFile("report-b.pdf", KeptFile.Role.REPORT, "b.pdf"))
            .add(EntryKind.BENCH_ALIGNMENT, bench(6))
            .view();
    List<Block> blocks = timeline(view, Map.of());
    assertThat(headings(blocks)).containsExactly("Timeline", "2026-03-04");
    List<List<String>> rows = rows(blocks);
    assertThat(rows).hasSize(6);
    assertThat(rows.get(5).get(3)).isEqualTo("unchanged settings: 1");
    assertThat(rows.get(2).subList(0, 3))
        .containsExactly("3", "10:00 AB", "bench alignment; superseded by entry 4");
    assertThat(rows.get(2).get(3)).contains("set 4 mm").doesNotContain("unchanged");
    assertThat(rows.get(3).get(3))
        .contains("Supersedes entry 3: read wrongly")
        .contains("set 6 mm");
    assertThat(rows.get(4).get(3))
        .contains("kept: recording-a.csv, report-b.pdf")
        .contains("no drawing: no result of this stand can be read");
    assertThat(rows.get(1).get(3)).doesNotContain("no drawing");
    assertThat(prose(blocks, false)).isEmpty();
  }

  private static List<String> drawings(List<Block> blocks) {
    return only(Figures.class, blocks)
        .flatMap(figures -> figures.plan().at(186, 60).stream())
        .map(drawing -> drawing.alternative().replace('\u00a0', ' '))
        .toList();
  }

  /** Entries: 1 opening, 2 a stand. */
  @Test
  void eachLegOfAStandHasADrawingOfItsOwn() {
    RecordView view = Entries.opened().add(EntryKind.STAND, Invented.found(21)).view();
    Demo one = Demo.transtibial(Side.RIGHT);
    List<Block> blocks = timeline(view, Map.of(2, one.state(0)));
    assertThat(drawings(blocks)).singleElement().asString().startsWith("Entry 2, 09:00");
    assertThat(drawings(blocks).get(0)).doesNotContain("09:00, right");
    assertThat(rows(blocks).get(1).get(3)).doesNotContain("no drawing");
    assertThat(prose(blocks, false)).hasSize(1);
    // The left leg of these has no landmark to draw.
    Demo both = Demo.transtibial(Side.RIGHT).bothSides().twoPlates();
    assertThat(drawings(timeline(view, Map.of(2, both.state(0)))))
        .singleElement()
        .asString()
        .startsWith("Entry 2, 09:00, right");
  }
}
