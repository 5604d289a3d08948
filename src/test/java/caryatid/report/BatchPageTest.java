package caryatid.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.format.ArchiveProblem;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Verdict;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.AmputationLevel;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the page of many states counts, calls unusual and draws, each worked out here. */
class BatchPageTest {
  private static final Pattern ROW = Pattern.compile("<tr>(.*?)</tr>");
  private static final Pattern CELL = Pattern.compile("<td[^>]*>(.*?)</td>");

  private static String page(List<FindingRow> findings, List<BatchPage.State> states) {
    BatchPage.Links links = new BatchPage.Links("results", Optional.empty());
    return new String(BatchPage.of(findings, states, links, Wording.in(Locale.ENGLISH)), UTF_8);
  }

  private static FindingRow row(String state, double mm, Verdict verdict) {
    return row(state, mm, verdict, Cause.MARKING, 10, 0, 25);
  }

  private static FindingRow row(
      String state,
      double mm,
      Verdict verdict,
      Cause cause,
      double recommended,
      double lowest,
      double highest) {
    Source source = new Source(cause, state);
    Estimate offset = Estimate.exact(mm).with(new Contribution(source, 1, 2, 60));
    return new FindingRow(
        state,
        "W1",
        OffsetDateTime.parse("2026-03-04T10:00Z"),
        AmputationLevel.TRANSTIBIAL,
        10,
        1,
        20,
        Plane.SAGITTAL,
        Side.RIGHT,
        LandmarkKind.KNEE_CENTRE,
        "knee centre",
        LoadLineOwner.RIGHT_FOOT,
        offset,
        recommended,
        lowest,
        highest,
        0.5,
        verdict,
        verdict.tooClose() && highest - lowest < 10,
        List.of(),
        "invented",
        Optional.empty());
  }

  /** The cells of each row of the table whose heading is given. */
  private static List<List<String>> cells(String page, String heading) {
    String table = page.substring(page.indexOf("<h2>" + heading));
    String body = table.substring(table.indexOf("<tbody>"), table.indexOf("</tbody>"));
    return ROW.matcher(body)
        .results()
        .map(tr -> CELL.matcher(tr.group(1)).results().map(td -> td.group(1)).collect(toList()))
        .collect(toList());
  }

  @Test
  void eachVerdictIsCountedOnce() {
    List<FindingRow> rows = new ArrayList<>();
    IntStream.range(0, 5).forEach(i -> rows.add(row("m" + i, 10, Verdict.WITHIN)));
    IntStream.range(0, 3).forEach(i -> rows.add(row("u" + i, 10, Verdict.INSIDE_TOO_CLOSE)));
    IntStream.range(0, 2).forEach(i -> rows.add(row("n" + i, 10, Verdict.OUTSIDE)));
    List<String> summary = cells(page(rows, List.of()), "Summary").get(0);
    assertThat(summary.subList(1, 5)).containsExactly("5", "3", "0", "2");
  }

  /** Half-width of 2 mm with 60 degrees of freedom: 2.0003 times as much, tabled. */
  @Test
  void aToleranceThatCannotBeDecidedIsCountedAndExplained() {
    FindingRow narrow = row("u", 10, Verdict.INSIDE_TOO_CLOSE, Cause.MARKING, 10, 7, 13);
    String page = page(List.of(narrow, row("m", 10, Verdict.WITHIN)), List.of());
    List<String> summary = cells(page, "Summary").get(0);
    assertThat(summary.get(3)).isEqualTo("1");
    assertThat(summary.get(5).replaceAll("\\h", " ")).isEqualTo("± 4.0 mm / ± 7.8 mm");
    assertThat(page).contains("Not decidable: the tolerance is narrower");
    assertThat(cells(page, "Findings").get(0).get(7).replaceAll("\\h", " "))
        .isEqualTo(
            "○ undecided: 3 mm within the tolerance; the tolerance is narrower than this"
                + " measurement can decide");
    assertThat(page(List.of(row("m", 10, Verdict.WITHIN)), List.of()))
        .doesNotContain("Not decidable");
  }

  @Test
  void oneReasonOfManyStatesIsGivenOnce() {
    List<BatchPage.State> states =
        Stream.of("a", "b", "c")
            .map(
                name ->
                    new BatchPage.State(
                        name,
                        List.of(),
                        List.of(Problem.at(Place.of(name + ".csv"), ArchiveProblem.NEWER_VERSION))))
            .toList();
    assertThat(page(List.of(), states))
        .containsOnlyOnce("was written by a newer")
        .contains("3: a, b, c");
    assertThat(new String(RefusedCsv.table(states, Wording.in(Locale.ENGLISH)), UTF_8).lines())
        .hasSize(4)
        .element(1)
        .asString()
        .startsWith("a,Archived.NEWER_VERSION,a.csv,,,");
  }

  @Test
  void theCauseNamedIsTheOneThatIsLargestMostOften() {
    List<FindingRow> rows = new ArrayList<>();
    IntStream.range(0, 2)
        .forEach(i -> rows.add(row("a" + i, 10, Verdict.WITHIN, Cause.PLATE_ACCURACY, 10, 0, 25)));
    IntStream.range(0, 3)
        .forEach(i -> rows.add(row("b" + i, 10, Verdict.WITHIN, Cause.MARKING, 10, 0, 25)));
    assertThat(cells(page(rows, List.of()), "Summary").get(0).get(6)).endsWith(": 3");
  }

  /**
   * Offsets 1 to 9 mm, and one more. Without the last: median 5, median absolute deviation 2; with
   * it the median is 5.5 and the deviations' median 2.5. Modified z-score 0.6745 (x - 5.5) / 2.5
   * (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17): 3.5 is reached at 18.47 mm.
   */
  @Test
  void anOffsetIsUnusualFromTheHandbooksLimitOn() {
    assertThat(unusual(18.4)).isEmpty();
    assertThat(unusual(18.6)).isEqualTo("s9");
  }

  private static String unusual(double last) {
    List<FindingRow> rows = new ArrayList<>();
    IntStream.range(0, 9).forEach(i -> rows.add(row("s" + i, i + 1, Verdict.WITHIN)));
    rows.add(row("s9", last, Verdict.WITHIN));
    String page = page(rows, List.of());
    String unusual = cells(page, "Summary").get(0).get(7);
    assertThat(cells(page, "Findings").get(9).get(7).contains("unusual offset"))
        .isEqualTo(!unusual.isEmpty());
    String last10 = new String(FindingsCsv.table(rows, false), UTF_8).lines().toList().get(10);
    assertThat(last10.split(",", -1)).contains(unusual.isEmpty() ? "false" : "true");
    return unusual;
  }

  @Test
  void ofNineOffsetsNoneIsCalledUnusual() {
    List<FindingRow> rows = new ArrayList<>();
    IntStream.range(0, 8).forEach(i -> rows.add(row("s" + i, i + 1, Verdict.WITHIN)));
    rows.add(row("s8", 400, Verdict.WITHIN));
    assertThat(cells(page(rows, List.of()), "Summary").get(0).get(7)).isEmpty();
  }

  @Test
  void statesAreCountedThatHaveNoRecommendation() {
    List<BatchPage.State> states =
        List.of(
            new BatchPage.State("a", List.of(), List.of()),
            new BatchPage.State("b", List.of("The knee is not safe."), List.of()));
    assertThat(page(List.of(row("a", 10, Verdict.WITHIN)), states))
        .contains("States: 2. Not checked: 0. Recommended offsets found: 1.")
        .contains("<b>b</b> The knee is not safe.");
  }

  /** 100 mm over 120 units: 1.2 units a millimetre, the recommendation in the middle at 60. */
  @Test
  void theDrawingIsToScale() {
    String drawing = drawing(22);
    assertThat(numbers(drawing, "<rect class=\"band\" x=\"([\\d.]+)\" y=\"1\" width=\"([\\d.]+)\""))
        .containsExactly(60 - 10 * 1.2, 25 * 1.2);
    assertThat(numbers(drawing, "<circle class=\"offset\" cx=\"([\\d.]+)\""))
        .containsExactly(round(60 + 12 * 1.2));
    double half = 2 * 2.0003 * 1.2; // Student's t for 60 degrees, 97.5 %: 2.0003 (tabled)
    List<Double> interval =
        numbers(drawing, "<line class=\"interval\" x1=\"([\\d.]+)\" y1=\"8.0\" x2=\"([\\d.]+)\"");
    assertThat(interval.get(0)).isCloseTo(74.4 - half, within(0.06));
    assertThat(interval.get(1)).isCloseTo(74.4 + half, within(0.06));
  }

  @Test
  void beyondTheDrawingTheDotIsOpen() {
    assertThat(drawing(59)).contains("<circle class=\"offset\"");
    assertThat(drawing(61)).contains("<circle class=\"beyond\"");
    assertThat(drawing(-41)).contains("<circle class=\"beyond\"");
  }

  private static String drawing(double mm) {
    return cells(page(List.of(row("s", mm, Verdict.WITHIN)), List.of()), "Findings").get(0).get(5);
  }

  private static List<Double> numbers(String text, String pattern) {
    MatchResult found = Pattern.compile(pattern).matcher(text).results().findFirst().orElseThrow();
    return IntStream.rangeClosed(1, found.groupCount())
        .mapToObj(i -> Double.valueOf(found.group(i)))
        .toList();
  }

  private static double round(double number) {
    return Math.round(number * 10) / 10.0;
  }
}
