package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.StateOffset;
import caryatid.loadline.Finding;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** The table of the main cause of each finding's uncertainty, and what would reduce it. */
final class UncertaintyTable {
  private static final double TABLE_MM = 186;
  private static final double PLANE_MM = 12.5;
  private static final double LEAST_MM = 26;
  private static final double REMEDY_MM = 28;

  private final AlignmentState state;
  private final Wording wording;
  private final FindingsTable findings;

  UncertaintyTable(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.findings = new FindingsTable(state, wording);
  }

  private String remedy(Finding finding) {
    return state
        .offset(finding)
        .flatMap(StateOffset::advice)
        .filter(advice -> findings.advise())
        .map(this::remedy)
        .orElse("–");
  }

  private String remedy(PrecisionHint advice) {
    return wording.fill(
        "Findings.REMEDY_TO",
        Argument.text(wording.word("Findings.REMEDY." + advice.remedy().lastPart())),
        Argument.of(advice.halfWidthThenMm(), Unit.MM));
  }

  /** What makes up each finding's standard uncertainty, a column a cause. */
  Table budget() {
    UncertaintyBudgetTable budget = new UncertaintyBudgetTable(state.findings(), wording);
    TableColumn together = findings.number("STANDARD_UNCERTAINTY", 12);
    double rest =
        PLANE_MM
            + budget.columns().stream().mapToDouble(TableColumn::parts).sum()
            + together.parts()
            + REMEDY_MM;
    double landmark = Math.min(findings.landmarkMm(), Math.max(LEAST_MM, TABLE_MM - rest));
    List<TableColumn> columns = new ArrayList<>();
    columns.add(findings.text("PLANE", PLANE_MM));
    columns.add(findings.text("LANDMARK", landmark));
    columns.addAll(budget.columns());
    columns.add(together);
    columns.add(findings.text("REMEDY", REMEDY_MM));
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
