package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.Drawing;
import caryatid.demo.ChangedStand;
import caryatid.demo.DemoRecord;
import caryatid.demo.Numbered;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.report.pages.Block;
import caryatid.report.pages.Paper;
import caryatid.report.pages.RecordReportData;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the tables of a record's report print, cell by cell, from a record in which no two numbers
 * of a table are alike; worked out by hand as in {@link ReportNumbersTest}.
 */
class RecordNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  @TempDir private Path folder;

  /** Entries: 1 opening, 2 and 4 bench alignment, 3 and 5 stands. */
  private DemoRecord record() throws Exception {
    Answers toes = item("toe-out", "2.75", "3", "toe leaflet");
    return new DemoRecord(folder)
        .add(EntryKind.BENCH_ALIGNMENT, DemoRecord.rows("items", flexion("5.25"), toes))
        .stand(Numbered.result())
        .add(EntryKind.BENCH_ALIGNMENT, DemoRecord.rows("items", flexion("6.75"), toes))
        .stand(60);
  }

  private static Answers flexion(String degrees) {
    return item("socket flexion", degrees, "4.5", "socket leaflet");
  }

  private static Answers item(String name, String set, String recommended, String source) {
    return DemoRecord.answers(
        "item",
        name,
        "set",
        new BigDecimal(set),
        "recommended",
        new BigDecimal(recommended),
        "unit",
        "deg",
        "source",
        source);
  }

  private RecordReportData story() throws Exception {
    return new RecordReportData(
        RecordView.of(record().read()), Map.of(3, Numbered.state()), List.of(), List.of());
  }

  /** Everything that the report says, cell by cell. */
  private List<String> said() throws Exception {
    return FittingReport.content(story(), "caryatid test", ENGLISH, Paper.A4).pages().stream()
        .flatMap(List::stream)
        .flatMap(RecordNumbersTest::said)
        .map(RecordNumbersTest::plain)
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private static Stream<String> said(Block block) {
    if (block instanceof Block.Table table) {
      return cells(table);
    }
    if (block instanceof Block.Figures figures) {
      return figures.plan().at(190, 60).stream().map(Drawing::alternative);
    }
    if (block instanceof Block.Facts facts) {
      return facts.facts().stream().map(fact -> fact.label() + " " + fact.value());
    }
    if (block instanceof Block.Points points) {
      return points.points().stream().map(point -> point.lead() + " " + point.words());
    }
    return block instanceof Block.Prose prose ? Stream.of(prose.words()) : Stream.of();
  }

  private static Stream<String> cells(Block.Table table) {
    return Stream.concat(
        table.columns().stream().map(Block.TableColumn::heading),
        table.rows().stream().flatMap(List::stream));
  }

  private static String plain(String words) {
    return words.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }

  /** Read aloud through the tags, cell by cell. */
  @Test
  void thePdfHoldsTheSameTables() throws Exception {
    RecordReportData data = story();
    List<String> cells =
        FittingReport.content(data, "caryatid test", ENGLISH, Paper.A4).pages().stream()
            .flatMap(List::stream)
            .filter(Block.Table.class::isInstance)
            .flatMap(table -> cells((Block.Table) table))
            .map(RecordNumbersTest::plain)
            .filter(cell -> !cell.isEmpty())
            .toList();
    byte[] pdf = FittingReport.pdf(data, "caryatid test", ENGLISH, Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(ReadOut.of(document).lines().map(RecordNumbersTest::plain))
          .containsSubsequence(cells);
    }
  }

  /** The tables' rows, with enough of what stands before them to know the table. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Plane | Landmark | Load line, mm | runs | ± (95 %), mm | Recommended (tolerance), mm |"
            + " Result | Source | Entry, footwear | sagittal | foot reference point, right | +47.3"
            + " | anterior | 12.5 | +44.0 (+37.0 to +55.0) | ○ undecided: 8 mm within the tolerance"
            + " | 1 | 3, walking shoe",
        "sagittal | knee centre, right | −12.6 | posterior | 12.7 | −4.0 (−9.0 to +5.0)"
            + " | × tolerance not met | 3 | 3, walking shoe",
        "frontal | knee centre, right | +5.8 | lateral | 11.6 | +2.0 (−1.0 to +10.0)"
            + " | ● tolerance met | 4 | 3, walking shoe",
        "Item | Set | Recommended | Differs by | Why | Source | Entry"
            + " | socket flexion | 6.75 deg | 4.5 deg | +2.25 deg | – | socket leaflet | 4"
            + " | toe-out | 2.75 deg | 3 deg | −0.25 deg | – | toe leaflet | 4",
        "a | 3 → 5 | socket flexion: 5.25 → 6.75 deg; footwear: walking shoe → demo shoe"
            + " | heel wedge one step firmer; ankle plantarflexed by 1.5 degrees"
            + " | gait smooth, wearer content",
        "2 | 08:20 AB | bench alignment | socket flexion; recommended 4.5 deg; set 5.25 deg;"
            + " source socket leaflet toe-out; recommended 3 deg; set 2.75 deg; source toe leaflet",
        "AB | 2026-03-04 08:10 +01:00 | 2026-03-04 09:10 +01:00"
            + " | opening (1), bench alignment (2, 4), static alignment (3, 5)"
      })
  void everyColumnShowsItsOwn(String row) throws Exception {
    List<String> cells = Stream.of(row.split("\\|")).map(String::strip).toList();
    assertThat(said()).containsSequence(cells);
  }

  /** The drawings in words; of the leg, half-widths are 1.95996 times 4.5, 3.5 and 2.5 mm. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sagittal, right, foot reference point: load line from the landmark, mm. Entry 3: 47.3 mm"
            + " anterior ± 12.5 mm, tolerance +37.0 to +55.0 mm, ",
        "sagittal, right, knee centre: load line from the landmark, mm. Entry 3: 12.6 mm posterior"
            + " ± 12.7 mm, tolerance −9.0 to +5.0 mm, × tolerance not met.",
        "frontal, right, knee centre: load line from the landmark, mm. Entry 3: 5.8 mm lateral ±"
            + " 11.6 mm, tolerance −1.0 to +10.0 mm, ● tolerance met.",
        "its 95 % interval reaches 9.7 mm to each side.",
        "greater trochanter, 905 mm up, known to within 8.8 mm (95 %). The load line runs 23 mm"
            + " posterior of it (−23.4 ± 5.3 mm, 95 %). ",
        "prosthetic knee axis, 493 mm up, known to within 6.9 mm (95 %). The load line runs 13 mm"
            + " posterior of it (−12.6 ± 12.7 mm, 95 %). Target −4.0 mm, tolerance −9.0 to +5.0 mm:"
            + " × tolerance not met, load line 4 mm too far posterior, 9 mm from the"
            + " recommendation.",
        "ankle axis, 81 mm up, known to within 4.9 mm (95 %). The load line runs 47 mm anterior of"
            + " it (+47.3 ± 12.5 mm, 95 %). Target +44.0 mm, tolerance +37.0 to +55.0 mm: "
      })
  void everyDrawingSaysItsOwn(String words) throws Exception {
    assertThat(said()).anyMatch(line -> line.contains(words));
  }

  @Test
  void everyNumberOfAStandIsInTheTimeline() throws Exception {
    assertThat(said())
        .anyMatch(
            line ->
                line.contains("heel height: 14.5 mm")
                    && line.contains("body mass: 82.5 kg")
                    && line.contains("load on the prosthetic side: 42.4 %"));
  }

  @Test
  void theFactsCountEntriesAndStands() throws Exception {
    assertThat(said())
        .containsSubsequence(
            "Started 2026-03-04 08:10 +01:00, AB",
            "Newest entry 2026-03-04 09:10 +01:00, AB",
            "Entries 5",
            "Stands 2",
            "Entry 3 was before the last change of the alignment (entry 4).");
  }

  /** Entries: 1 opening, 2 and 4 bench alignment, 3 and 5 stands, 6 accepted, 7 corrects 5. */
  @Test
  void entriesAreNamedByTheirOwnNumbers() throws Exception {
    RecordView view = RecordView.of(new DemoRecord(folder).story().read());
    RecordReportData data =
        new RecordReportData(view, Map.of(3, Numbered.state()), List.of(), List.of());
    List<String> said =
        FittingReport.content(data, "caryatid test", ENGLISH, Paper.A4).pages().stream()
            .flatMap(List::stream)
            .flatMap(RecordNumbersTest::said)
            .map(RecordNumbersTest::plain)
            .toList();
    assertThat(said)
        .contains(
            "Wearer's code DEMO-7", "Entries 7", "toe-out: the wearer prefers it (entry 6, AB)")
        .anyMatch(line -> line.equals("static alignment; superseded by entry 7"))
        .anyMatch(line -> line.startsWith("The record up to entry 7, by its head digest"));
  }

  /**
   * Half-widths by hand, from the numbers of {@link Numbered}: two stands in each state, so the
   * scatter of both counts, and the movement of the landmark twice; marked again, marks and turn
   * twice as well. Knee: t(7) 2.3646 times root (2 x 1.9^2 + 2 x 3.7^2), which is 13.9 mm, and
   * times root (34.6 + 2 x (2.7^2 + 0.3^2)), 16.6 mm. Ankle: t(4) 2.7764 times root 24.34 and root
   * 35, 13.7 and 16.4 mm. Sideways 1.96 times root 42.44 and root 59.28: 12.8 and 15.1 mm; of n
   * stands each 1.96 times root (8.82 + 67.24 / n), which is below 9 mm from six on.
   */
  @Test
  void everyChangeIsJudgedWithItsOwnNumbers() throws Exception {
    RecordReportData data =
        new RecordReportData(
            RecordView.of(record().read()),
            Map.of(3, Numbered.state(), 5, ChangedStand.moved(Numbered.state(), -17, 16, 9)),
            List.of(),
            List.of());
    List<String> said =
        FittingReport.content(data, "caryatid test", ENGLISH, Paper.A4).pages().stream()
            .flatMap(List::stream)
            .flatMap(RecordNumbersTest::said)
            .map(RecordNumbersTest::plain)
            .toList();
    assertThat(said)
        .containsSequence(
            "Entries", "Offset, load line", "Before → after", "Changed by, mm", "Judgement")
        .containsSequence(
            "3 → 5",
            "sagittal, foot reference point, right foot's line",
            "47.3 mm anterior → 30.3 mm anterior",
            "−17.0 ± 13.7 (± 16.4)",
            "a real change",
            "3 → 5",
            "sagittal, knee centre, right foot's line",
            "12.6 mm posterior → 3.4 mm anterior",
            "+16.0 ± 13.9 (± 16.6)",
            "real only if the marks stayed",
            "3 → 5",
            "frontal, knee centre, right foot's line",
            "5.8 mm lateral → 14.8 mm lateral",
            "+9.0 ± 12.8 (± 15.1)",
            "chance may explain it; stands in each state that would show it: 6");
  }

  /** The table of what is now refers to a source by its number. */
  @Test
  void everySourceHasTheNumberThatTheTableGivesIt() throws Exception {
    assertThat(said())
        .anyMatch(
            line ->
                line.startsWith("Sources: 1 ankle leaflet")
                    && line.contains("; 3 knee leaflet; 4 another knee leaflet"));
  }

  /** Nothing stated is a dash, and what is stated on one side only stands open on the other. */
  @Test
  void everyLimitOfAComponentStandsInItsColumn() throws Exception {
    Answers foot =
        DemoRecord.answers(
            "what",
            "foot",
            "name",
            "demo foot",
            "serial",
            "D-17",
            "side",
            "right",
            "body-mass-highest-kg",
            new BigDecimal("116.5"),
            "mobility-grade-lowest",
            2,
            "mobility-grade-highest",
            3,
            "heel-height-lowest-mm",
            new BigDecimal("5.5"),
            "heel-height-highest-mm",
            new BigDecimal("18"),
            "source",
            "foot leaflet");
    Answers ankle =
        DemoRecord.answers(
            "what",
            "ankle unit",
            "name",
            "demo ankle",
            "mobility-grade-lowest",
            1,
            "heel-height-highest-mm",
            new BigDecimal("40"));
    RecordView view =
        RecordView.of(
            new DemoRecord(folder)
                .add(EntryKind.COMPONENTS, DemoRecord.rows("components", foot, ankle))
                .read());
    List<String> said =
        FittingReport.content(
                new RecordReportData(view, Map.of(), List.of(), List.of()),
                "caryatid test",
                ENGLISH,
                Paper.A4)
            .pages()
            .stream()
            .flatMap(List::stream)
            .flatMap(RecordNumbersTest::said)
            .map(RecordNumbersTest::plain)
            .toList();
    assertThat(said)
        .containsSequence(
            "foot: demo foot, right", "D-17", "116.5 kg", "2–3", "5.5–18 mm", "foot leaflet", "2")
        .containsSequence("ankle unit: demo ankle", "–", "–", "1–", "–40 mm", "–", "2");
  }
}
