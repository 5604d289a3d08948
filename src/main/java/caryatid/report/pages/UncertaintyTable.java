package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.StateOffset;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import caryatid.loadline.Finding;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The table of the main cause of each finding's uncertainty, and what would reduce it. */
public final class UncertaintyTable {
  private static final double TABLE_MM = 186;
  private static final double PLANE_MM = 12.5;
  private static final double LEAST_MM = 26;
  private static final double REMEDY_MM = 28;

  /** Room that is left them where the causes have long names. */
  private static final double LEAST_REMEDY_MM = 19;

  private static final double NARROW_MM = 18;

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
        .flatMap(StateOffset::hint)
        .filter(hint -> findings.advise())
        .map(this::remedy)
        .orElse("–");
  }

  private String remedy(PrecisionHint hint) {
    return wording.fill(
        "Findings.REMEDY_TO",
        Argument.text(wording.word("Findings.REMEDY." + hint.remedy().lastPart())),
        Argument.of(hint.halfWidthThenMm(), Unit.MM));
  }

  /** What makes up each finding's standard uncertainty, a column a cause. */
  Table budget() {
    UncertaintyBudgetTable budget = new UncertaintyBudgetTable(state.findings(), wording);
    TableColumn together = findings.number("STANDARD_UNCERTAINTY", 12);
    double free =
        TABLE_MM
            - PLANE_MM
            - budget.columns().stream().mapToDouble(TableColumn::parts).sum()
            - together.parts();
    double wide = Math.min(findings.landmarkMm(), Math.max(LEAST_MM, free - REMEDY_MM));
    double remedy = Math.min(REMEDY_MM, Math.max(LEAST_REMEDY_MM, free - wide));
    double landmark = Math.min(wide, Math.max(NARROW_MM, free - remedy));
    List<TableColumn> columns = new ArrayList<>();
    columns.add(findings.text("PLANE", PLANE_MM));
    columns.add(findings.text("LANDMARK", landmark));
    columns.addAll(budget.columns());
    columns.add(together);
    columns.add(findings.text("REMEDY", remedy));
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

  /** The key of a cause's word. */
  public static String key(Cause cause) {
    return switch (cause) {
      case SWAY -> "Budget.SWAY";
      case PLATE_ACCURACY -> "Budget.PLATE_ACCURACY";
      case MARKING -> "Budget.MARKING";
      case REGISTRATION -> "Budget.REGISTRATION";
      case LANDMARK_MOVEMENT -> "Budget.LANDMARK_MOVEMENT";
      case YAW -> "Budget.YAW";
      case LEVEL -> "Budget.LEVEL";
      case REPEATABILITY -> "Budget.REPEATABILITY";
      case BODY_MASS -> "Budget.BODY_MASS";
    };
  }

  /** The table of uncertainty budgets: a column for each cause that contributes to any finding. */
  private static final class UncertaintyBudgetTable {
    /** Less is written as zero everywhere, mm. */
    private static final double SHOWN_MM = 0.05;

    private static final double LEAST_COLUMN_MM = 10.5;

    private final List<Cause> causes;
    private final Wording wording;

    UncertaintyBudgetTable(List<Finding> findings, Wording wording) {
      this.causes =
          Stream.of(Cause.values())
              .filter(
                  cause ->
                      findings.stream().anyMatch(f -> partMm(f.offset().mm(), cause) >= SHOWN_MM))
              .toList();
      this.wording = wording;
    }

    List<TableColumn> columns() {
      return causes.stream()
          .map(cause -> wording.word(key(cause)))
          .map(heading -> new TableColumn(heading, widthMm(heading), true))
          .toList();
    }

    /** Room for the heading's longest word. */
    private static double widthMm(String heading) {
      return Stream.of(heading.split(" "))
          .mapToDouble(word -> 2.2 + Fonts.widthMm(word, Lettering.STRONG))
          .reduce(LEAST_COLUMN_MM, Math::max);
    }

    List<String> cells(Estimate mm) {
      return causes.stream().map(cause -> wording.plain(partMm(mm, cause), Unit.MM)).toList();
    }

    private static double partMm(Estimate mm, Cause cause) {
      double squares = 0;
      for (Contribution part : mm.contributions()) {
        if (part.source().cause() == cause) {
          squares += part.amount() * part.amount();
        }
      }
      return Math.sqrt(squares);
    }
  }
}
