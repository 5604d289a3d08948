package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every table of a report prints, from a result in which no two numbers are alike. The
 * expected cells were worked out by hand from {@link Numbered}: standard uncertainties as the root
 * of the parts' sum of squares, half-widths as these times Student's t for 95 % (JCGM 100:2008,
 * table G.2, with more digits: 2.77645 for 4 degrees of freedom, 2.36462 for 7, 1.95996 for
 * infinitely many).
 */
class ReportNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  private static String html() {
    return new String(Report.html(Numbered.result(), List.of(), ENGLISH), StandardCharsets.UTF_8);
  }

  private static List<String> row(String cells) {
    return Stream.of(cells.split("\\|", -1)).map(String::strip).toList();
  }

  /** The tables in the order of the page. */
  static List<Arguments> tables() {
    return List.of(
        Arguments.of(
            "findings",
            0,
            """
            Plane | Landmark | Load line, mm | runs | ± (95 %), mm | Recommended (tolerance), mm | Probability met, % | Degrees of freedom | Detectable change, mm | Source
            sagittal | ankle axis | +47.3 | anterior | 12.5 | +44.0 (+37.0 to +55.0) | †\u00a087.3 | 4.0 | 8.4 | 1
            sagittal | prosthetic knee axis | −12.6 | posterior | 12.7 | −4.0 (−9.0 to +5.0) | 3.1 | 7.0 | 9.3 | 2
            frontal | prosthetic knee axis | +5.8 | lateral | 11.6 | +2.0 (−1.0 to +10.0) | 96.4 | ∞ | 10.7 | 3
            frontal | greater trochanter | – | – | – | −15.0 (−27.0 to −2.0) | – | – | – | 4
            """),
        Arguments.of(
            "what makes each finding unsure",
            1,
            """
            Plane | Landmark | sway | plate | marking | measuring line | movement | turn | level | stand to stand | together | What would help most
            sagittal | ankle axis | 1.1 | 0.4 | 2.3 | 0.7 | 1.6 | 0.2 | 0.9 | 3.1 | 4.5 | repeat: to ± 6.6\u00a0mm
            sagittal | prosthetic knee axis | 1.3 | 0.5 | 2.7 | 0.8 | 1.9 | 0.3 | 1.2 | 3.7 | 5.4 | mark better: to ± 7.7\u00a0mm
            frontal | prosthetic knee axis | 1.4 | 0.6 | 2.9 | 1.0 | 2.1 | 0.1 | 1.5 | 4.1 | 5.9 | –
            """),
        Arguments.of(
            "what the plate recorded; sway is the low-passed one",
            2,
            """
            Stand | Load of | CoP to the right, mm | CoP anterior, mm | Force, N | SD across, mm | SD fore and aft, mm | Mean speed, mm/s | 95 % ellipse, mm²
            1 | left foot's line | −91.3 ± 1.0 | +33.1 ± 4.1 | 481 | 2.1 | 5.3 | 9.4 | 193
            1 | right foot's line | +87.6 ± 1.2 | +48.8 ± 4.5 | 331 | 2.4 | 5.6 | 10.1 | 210
            1 | whole body's line | +4.2 ± 1.4 | +40.4 ± 4.9 | 812 | 2.7 | 5.9 | 10.8 | 227
            2 | left foot's line | −93.9 ± 1.6 | +31.7 ± 5.3 | 460 | 3.0 | 6.2 | 11.5 | 244
            2 | right foot's line | +85.1 ± 1.8 | +50.2 ± 5.7 | 346 | 3.3 | 6.5 | 12.2 | 261
            2 | whole body's line | +6.7 ± 2.0 | +42.5 ± 6.1 | 806 | 3.6 | 6.8 | 12.9 | 278
            """),
        Arguments.of(
            "each stand's moments",
            3,
            """
            Stand | Landmark | Plane | By the vertical, N m | The same, N m/kg | By the force's line, N m | What it does
            1 | prosthetic knee axis | sagittal | −4.4 ± 1.8 | −0.053 | −3.2 ± 1.4 | bends the knee / too small to tell its direction
            1 | ankle axis | sagittal | +15.6 ± 2.5 | – | – | tips the shank forward over the foot
            2 | prosthetic knee axis | sagittal | −5.4 ± 2.2 | −0.063 | −4.2 ± 1.8 | bends the knee / too small to tell its direction
            2 | ankle axis | sagittal | +16.6 ± 2.9 | – | – | tips the shank forward over the foot
            """));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void everyColumnShowsItsOwnNumber(String table, int number, String expected) {
    List<List<String>> rows = expected.lines().map(ReportNumbersTest::row).toList();
    assertThat(PageTables.of(html()).get(number)).as(table).isEqualTo(rows);
  }

  @Test
  void noTableOfThePageIsLeftOut() {
    assertThat(PageTables.of(html())).hasSize(tables().size());
  }

  /**
   * Load share: mean of 41.2 and 43.6 %; half-width 1.95996 times half the root of 1.1 squared plus
   * 1.3 squared.
   */
  @Test
  void everyFactOfTheStandShowsItsOwnNumber() {
    assertThat(PageTables.facts(html()))
        .contains(
            "Body mass: 83.6\u00a0kg",
            "Other foot: on block, height −2.2 mm",
            "Stance width: 172.3\u00a0mm",
            "Toe-out: 6.4°",
            "Walked since change: 9 min");
    assertThat(html())
        .contains(
            "transfemoral · walking shoe, heel height 14.5\u00a0mm · 2026-03-04 10:15 +01:00"
                + " · 2 stands · load on the right 42.4\u00a0% ± 1.7\u00a0%");
  }

  @Test
  void everyPartOfTheRecordingThatWasUsedOrLeftOutIsNamedByItsOwnTimes() {
    assertThat(html())
        .contains(
            "1.25\u00a0s to 31.50\u00a0s used, at 100.0\u00a0Hz. Left out: 0.0 to 1.3 s settling"
                + " after stepping on or before stepping off; 31.6 to 33.8 s unloaded. Of 100"
                + " people without a prosthesis, so many sway as little or less: standard deviation"
                + " fore and aft (5.4\u00a0mm) 22 to 25; mean speed (17.3\u00a0mm/s) 48 to 53.",
            "2.75\u00a0s to 29.40\u00a0s used, set by hand, at 50.0\u00a0Hz.",
            "after a low-pass at 10.0\u00a0Hz");
  }

  /** Read aloud through the tags, cell by cell. */
  @Test
  void thePdfHoldsTheSameTablesCellByCell() throws IOException {
    List<String> cells = new ArrayList<>();
    for (List<List<String>> table : PageTables.of(html())) {
      table.stream().flatMap(List::stream).map(ReportNumbersTest::plain).forEach(cells::add);
    }
    byte[] pdf =
        Report.pdf(Numbered.result(), List.of(), new Attachments(List.of()), ENGLISH, Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> said = ReadOut.of(document).lines().map(ReportNumbersTest::plain).toList();
      assertThat(said).containsSubsequence(cells);
    }
  }

  private static String plain(String cell) {
    return cell.replaceAll("\\s+", " ").replace("\u00a0", " ").replace("&#39;", "'").strip();
  }
}
