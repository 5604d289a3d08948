package caryatid.report;

import caryatid.alignment.Advice;
import caryatid.alignment.AlignmentState;
import caryatid.loadline.Finding;
import caryatid.loadline.Target;
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

/** The tables of findings: results for page one, how sure they are for page two. */
final class Findings {
  /** Coverage of every interval the report states. */
  static final double COVERAGE = 0.95;

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
            text("LANDMARK", 27),
            number("OFFSET", 17),
            text("DIRECTION", 16),
            number("UNCERTAINTY", 14),
            number("TARGET", 13),
            text("TOLERANCE", 22),
            text("SOURCE", 30),
            text("RESULT", 36));
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
    row.add(wording.word(finding.verdict()));
    return row;
  }

  private List<String> row(Withheld withheld) {
    List<String> row = new ArrayList<>(where(withheld.target()));
    row.addAll(List.of("–", "–", "–"));
    row.addAll(wanted(withheld.target()));
    row.add(wording.word("Findings.WITHHELD"));
    return row;
  }

  private List<String> where(Target target) {
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
            Argument.text(wording.signed(target.highestMm(), Unit.MM))),
        target.source() + target.condition().map(c -> " (" + c + ")").orElse(""));
  }

  Table certainty() {
    List<Column> columns =
        List.of(
            text("PLANE", 14),
            text("LANDMARK", 26),
            number("PROBABILITY", 20),
            number("STANDARD_UNCERTAINTY", 23),
            number("DEGREES_OF_FREEDOM", 24),
            text("BUDGET", 47),
            text("REMEDY", 32));
    return new Table(columns, state.findings().stream().map(this::certainty).toList());
  }

  private List<String> certainty(Finding finding) {
    Estimate mm = finding.offset().mm();
    List<String> row = new ArrayList<>(where(finding.target()));
    row.add(wording.plain(100 * finding.probabilityWithin(), Unit.PERCENT));
    row.add(wording.plain(mm.standardUncertainty(), Unit.MM));
    row.add(
        Double.isInfinite(mm.degreesOfFreedom())
            ? "∞"
            : wording.plain(mm.degreesOfFreedom(), Unit.HZ));
    row.add(Budget.of(mm, wording));
    row.add(remedy(finding));
    return row;
  }

  private String remedy(Finding finding) {
    String narrow = finding.decidable() ? "" : wording.word("Findings.UNDECIDABLE") + " ";
    return narrow
        + state.offsets().stream()
            .filter(of -> of.offset().equals(finding.offset()))
            .flatMap(of -> of.advice().stream())
            .findFirst()
            .map(advice -> remedy(advice))
            .orElse("");
  }

  private String remedy(Advice advice) {
    return wording.fill(
        "Findings.REMEDY_TO",
        Argument.text(wording.word("Findings.REMEDY." + advice.remedy().name())),
        Argument.of(advice.halfWidthThenMm(), Unit.MM));
  }

  private Column text(String name, double parts) {
    return new Column(wording.word("Findings." + name), parts, false);
  }

  private Column number(String name, double parts) {
    return new Column(wording.word("Findings." + name), parts, true);
  }
}
