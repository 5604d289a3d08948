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

/** The table of what makes each finding unsure, and what would help. */
final class Certainty {
  private final AlignmentState state;
  private final Wording wording;
  private final Findings findings;

  Certainty(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.findings = new Findings(state, wording);
  }

  private String remedy(Finding finding) {
    return state.offsets().stream()
        .filter(o -> o.offset().equals(finding.offset()))
        .findFirst()
        .flatMap(StateOffset::advice)
        .map(this::remedy)
        .orElse("–");
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
        new ArrayList<>(List.of(findings.text("PLANE", 13), findings.text("LANDMARK", findings.landmarkMm())));
    columns.addAll(budget.columns());
    columns.add(findings.number("STANDARD_UNCERTAINTY", 17));
    columns.add(findings.text("REMEDY", 34));
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : state.findings()) {
      List<String> row = new ArrayList<>(findings.where(finding.target()));
      Estimate mm = finding.offset().mm();
      row.addAll(budget.cells(mm));
      row.add(wording.plain(mm.standardUncertainty(), Unit.MM));
      row.add(remedy(finding));
      rows.add(row);
    }
    return new Table(columns, rows);
  }
}
