package caryatid.report;

import caryatid.loadline.Verdict;
import caryatid.remark.Unit;
import caryatid.report.pages.UncertaintyTable;
import caryatid.wording.Wording;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What is said of all findings at one landmark in one plane.
 *
 * @param rows the findings, at least one
 */
record BatchSummary(List<FindingRow> rows, Wording wording) {

  /** Met, undecided, of these not decidable, not met; then the interval against the tolerance. */
  List<String> numbers() {
    long met = rows.stream().filter(row -> row.verdict() == Verdict.WITHIN).count();
    long notMet = rows.stream().filter(row -> row.verdict() == Verdict.OUTSIDE).count();
    long undecidable = rows.stream().filter(FindingRow::undecidable).count();
    return List.of(
        Long.toString(met),
        Long.toString(rows.size() - met - notMet),
        Long.toString(undecidable),
        Long.toString(notMet),
        median(FindingRow::expandedMm) + " / " + median(FindingRow::toleranceMm));
  }

  /** What makes most of the uncertainty, and the states whose offsets are unusual. */
  List<String> words() {
    String unusual =
        rows.stream()
            .filter(FindingRow::isUnusual)
            .map(FindingRow::state)
            .collect(Collectors.joining(", "));
    return List.of(mostOften(), unusual);
  }

  private String mostOften() {
    return rows.stream()
        .flatMap(row -> row.largest().stream())
        .collect(Collectors.groupingBy(cause -> cause, LinkedHashMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .max(Map.Entry.comparingByValue())
        .map(most -> wording.word(UncertaintyTable.key(most.getKey())) + ": " + most.getValue())
        .orElse("");
  }

  /** The median of half-widths. */
  private String median(ToDoubleFunction<FindingRow> of) {
    double[] sorted = rows.stream().mapToDouble(of).toArray();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    return "\u00b1\u00a0" + wording.number(median, Unit.MM);
  }
}
