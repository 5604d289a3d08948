package caryatid.report;

import caryatid.alignment.Advice;
import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateOffset;
import caryatid.loadline.Finding;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.Block.Column;
import caryatid.report.Block.Table;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables of how sure each finding is, for page two. */
final class Certainty {
  private final AlignmentState state;
  private final Wording wording;
  private final Findings findings;

  Certainty(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.findings = new Findings(state, wording);
  }

  Table table() {
    List<Column> columns =
        List.of(
            findings.text("PLANE", 14),
            findings.text("LANDMARK", 32),
            findings.number("PROBABILITY", 25),
            findings.number("STANDARD_UNCERTAINTY", 25),
            findings.number("DEGREES_OF_FREEDOM", 22),
            findings.number("DIFFERENCE", 28),
            findings.text("REMEDY", 40));
    return new Table(columns, state.findings().stream().map(this::row).toList());
  }

  private List<String> row(Finding finding) {
    Estimate mm = finding.offset().mm();
    Optional<StateOffset> of =
        state.offsets().stream().filter(o -> o.offset().equals(finding.offset())).findFirst();
    List<String> row = new ArrayList<>(findings.where(finding.target()));
    row.add(wording.plain(100 * finding.probabilityWithin(), Unit.PERCENT));
    row.add(wording.plain(mm.standardUncertainty(), Unit.MM));
    row.add(
        Double.isInfinite(mm.degreesOfFreedom())
            ? "∞"
            : wording.plain(mm.degreesOfFreedom(), Unit.HZ));
    row.add(of.map(o -> wording.plain(o.smallestDifferenceMm(), Unit.MM)).orElse("–"));
    row.add(
        of.flatMap(StateOffset::advice)
            .filter(a -> findings.advise())
            .map(this::remedy)
            .orElse("–"));
    return row;
  }

  private String remedy(Advice advice) {
    return wording.fill(
        "Findings.REMEDY_TO",
        Argument.text(wording.word("Findings.REMEDY." + advice.remedy().name())),
        Argument.of(advice.halfWidthThenMm(), Unit.MM));
  }

  /** What makes up each finding's standard uncertainty, a column a cause. */
  Table budget() {
    Budget budget = new Budget(state.findings(), wording);
    List<Column> columns =
        new ArrayList<>(List.of(findings.text("PLANE", 13), findings.text("LANDMARK", 28)));
    columns.addAll(budget.columns());
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : state.findings()) {
      List<String> row = new ArrayList<>(findings.where(finding.target()));
      row.addAll(budget.cells(finding.offset().mm()));
      rows.add(row);
    }
    return new Table(columns, rows);
  }
}
