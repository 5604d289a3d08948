package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import caryatid.loadline.Finding;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Target;
import caryatid.loadline.UnjudgedTarget;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Estimate;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The table of findings, and what it refers to. */
final class FindingsTable {
  /** Leads to the sentence below the table. */
  private static final String TOO_NARROW = "†\u00a0";

  private static final double LEAST_NAME_MM = 28;
  private static final double MOST_NAME_MM = 46;

  private final AlignmentState state;
  private final Wording wording;

  FindingsTable(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
  }

  Table results() {
    List<TableColumn> columns =
        List.of(
            text("PLANE", 12.5),
            text("LANDMARK", landmarkMm()),
            number("OFFSET", 16.5),
            text("DIRECTION", 15.5),
            number("UNCERTAINTY", 13),
            text("TARGET", 31),
            strong("PROBABILITY", 14),
            number("DEGREES_OF_FREEDOM", 9),
            number("DIFFERENCE", 15),
            number("SOURCE", 10));
    List<List<String>> rows = new ArrayList<>();
    state.findings().forEach(finding -> rows.add(row(finding)));
    state.withheld().forEach(withheld -> rows.add(row(withheld)));
    return new Table(columns, rows);
  }

  private List<String> row(Finding finding) {
    Estimate mm = finding.offset().mm();
    List<String> row = new ArrayList<>(where(finding.target()));
    row.add(wording.signed(mm.value(), Unit.MM));
    row.add(new OffsetWords(wording).direction(finding.target().plane(), mm.value()));
    row.add(wording.plain(mm.expanded(Estimate.COVERAGE), Unit.MM));
    row.addAll(wanted(finding.target()));
    String met = wording.plain(100 * finding.probabilityWithin(), Unit.PERCENT);
    row.add((finding.undecidable() ? TOO_NARROW : "") + met);
    row.add(
        Double.isInfinite(mm.degreesOfFreedom())
            ? "∞"
            : wording.plain(mm.degreesOfFreedom(), Unit.HZ));
    row.add(difference(finding));
    row.add(number(finding.target()));
    return row;
  }

  private String difference(Finding finding) {
    return state
        .offset(finding)
        .map(o -> wording.plain(o.smallestDifferenceMm(), Unit.MM))
        .orElse("–");
  }

  private List<String> row(UnjudgedTarget withheld) {
    List<String> row = new ArrayList<>(where(withheld.target()));
    row.addAll(List.of("–", "–", "–"));
    row.addAll(wanted(withheld.target()));
    row.addAll(List.of("–", "–", "–"));
    row.add(number(withheld.target()));
    return row;
  }

  /** What the table's mark means, if it has one. */
  Optional<String> explanation() {
    return state.findings().stream().anyMatch(Finding::undecidable)
        ? Optional.of(wording.word(advise() ? "Findings.TOO_NARROW" : "Findings.UNDECIDABLE"))
        : Optional.empty();
  }

  /** If a prosthetic knee may bend, that comes first, and measuring again is not advised. */
  boolean advise() {
    return !KneeSafety.mayBend(state.remarks());
  }

  /** The documents that the targets come from, under the numbers that the table gives them. */
  Optional<String> sources() {
    List<String> sources = distinctSources();
    String numbered =
        IntStream.range(0, sources.size())
            .mapToObj(i -> (i + 1) + "\u00a0" + sources.get(i))
            .collect(Collectors.joining("; "));
    return sources.isEmpty()
        ? Optional.empty()
        : Optional.of(wording.fill("Findings.SOURCES", Argument.text(numbered)));
  }

  private List<String> distinctSources() {
    return Stream.concat(
            state.findings().stream().map(Finding::target),
            state.withheld().stream().map(UnjudgedTarget::target))
        .map(FindingsTable::source)
        .distinct()
        .toList();
  }

  private static String source(Target target) {
    return target.source() + target.condition().map(c -> " (" + c + ")").orElse("");
  }

  private String number(Target target) {
    return Integer.toString(1 + distinctSources().indexOf(source(target)));
  }

  List<String> where(Target target) {
    LandmarkWords names = new LandmarkWords(wording, state.trial());
    String name = names.name(target.landmark(), target.side());
    return List.of(
        wording.word(target.plane()),
        name + LandmarkWords.leg(state.trial(), target.side(), wording));
  }

  /** Room for the longest name, as far as a table can spare it, mm. */
  double landmarkMm() {
    double widest =
        state.findings().stream()
            .mapToDouble(f -> Fonts.widthMm(where(f.target()).get(1), Lettering.PLAIN))
            .max()
            .orElse(0);
    return Math.max(LEAST_NAME_MM, Math.min(MOST_NAME_MM, widest + 3));
  }

  private List<String> wanted(Target target) {
    return List.of(
        wording.fill(
            "Findings.RECOMMENDED",
            Argument.text(wording.signed(target.recommendedMm(), Unit.MM)),
            Argument.text(wording.signed(target.lowestMm(), Unit.MM)),
            Argument.text(wording.signed(target.highestMm(), Unit.MM))));
  }

  TableColumn text(String name, double leastMm) {
    return new TableColumn(heading(name), widthMm(name, leastMm), false);
  }

  TableColumn number(String name, double leastMm) {
    return new TableColumn(heading(name), widthMm(name, leastMm), true);
  }

  private TableColumn strong(String name, double leastMm) {
    return new TableColumn(heading(name), widthMm(name, leastMm), true, true);
  }

  private String heading(String name) {
    return wording.word("Findings." + name);
  }

  /** Room for the heading's longest word. */
  private double widthMm(String name, double leastMm) {
    return Stream.of(heading(name).split(" "))
        .mapToDouble(word -> 2.3 + Fonts.widthMm(word, Lettering.STRONG))
        .reduce(leastMm, Math::max);
  }
}
