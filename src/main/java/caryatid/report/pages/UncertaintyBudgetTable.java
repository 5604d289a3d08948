package caryatid.report.pages;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import caryatid.loadline.Finding;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The table of uncertainty budgets: a column for each cause that contributes to any finding. */
final class UncertaintyBudgetTable {
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

  private static String key(Cause cause) {
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
