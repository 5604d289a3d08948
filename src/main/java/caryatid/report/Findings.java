package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.loadline.Finding;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.loadline.Withheld;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.Block.Column;
import caryatid.report.Block.Table;
import caryatid.uncertainty.Estimate;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The table of findings for page one, and what it refers to. */
final class Findings {
  /** Coverage of every interval the report states. */
  static final double COVERAGE = 0.95;

  /** Leads to the sentence below the table. */
  private static final String TOO_NARROW = "\u00a0†";

  private final AlignmentState state;
  private final Wording wording;

  Findings(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
  }

  Table results() {
    List<Column> columns =
        List.of(
            text("PLANE", 15),
            text("LANDMARK", 32),
            number("OFFSET", 17),
            text("DIRECTION", 16),
            number("UNCERTAINTY", 14),
            number("TARGET", 14),
            text("TOLERANCE", 24),
            new Column(wording.word("Findings.RESULT"), 42, false, true),
            text("SOURCE", 12));
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
    row.add(wording.plain(mm.expanded(COVERAGE), Unit.MM));
    row.addAll(wanted(finding.target()));
    row.add(verdict(finding) + (isTooNarrow(finding) ? TOO_NARROW : ""));
    row.add(number(finding.target()));
    return row;
  }

  private String verdict(Finding finding) {
    return wording.word("Labels.VERDICT." + finding.verdict().name());
  }

  private static boolean isTooNarrow(Finding finding) {
    return finding.verdict() != Verdict.OUTSIDE && !finding.decidable();
  }

  private List<String> row(Withheld withheld) {
    List<String> row = new ArrayList<>(where(withheld.target()));
    row.addAll(List.of("–", "–", "–"));
    row.addAll(wanted(withheld.target()));
    row.add(wording.word("Findings.WITHHELD"));
    row.add(number(withheld.target()));
    return row;
  }

  /** What the table's short words and marks mean, as far as it has them. */
  Optional<String> explanation() {
    List<String> sentences = new ArrayList<>();
    boolean tooClose = state.findings().stream().anyMatch(f -> f.verdict().tooClose());
    if (tooClose && advise()) {
      sentences.add(wording.word("Findings.TOO_CLOSE"));
    }
    if (state.findings().stream().anyMatch(Findings::isTooNarrow)) {
      sentences.add(wording.word(advise() ? "Findings.TOO_NARROW" : "Findings.UNDECIDABLE"));
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  /** Where a prosthetic knee may bend, it comes first, and nobody is advised to measure again. */
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
            state.withheld().stream().map(Withheld::target))
        .map(Findings::source)
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
    boolean both = state.stands().get(0).trial().side().sides().size() > 1;
    String side = both ? ", " + wording.word(target.side()) : "";
    return List.of(wording.word(target.plane()), target.landmark() + side);
  }

  private List<String> wanted(Target target) {
    return List.of(
        wording.signed(target.recommendedMm(), Unit.MM),
        wording.fill(
            "Findings.FROM_TO",
            Argument.text(wording.signed(target.lowestMm(), Unit.MM)),
            Argument.text(wording.signed(target.highestMm(), Unit.MM))));
  }

  Column text(String name, double parts) {
    return new Column(wording.word("Findings." + name), parts, false);
  }

  Column number(String name, double parts) {
    return new Column(wording.word("Findings." + name), parts, true);
  }
}
