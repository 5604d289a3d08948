package caryatid.chart.leg;

import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * What part of a view the strips of a plane show, at true size: a millimetre of the person is a
 * millimetre on paper. What lies further out is drawn beyond a break near the end.
 *
 * @param leftMm the strips' left end on paper, mm
 * @param widthMm the strips' width on paper, mm
 * @param fromMm what lies at the left end, across the view, mm
 */
public record StripWindow(double leftMm, double widthMm, double fromMm) {
  /** Room at each end for what lies beyond a break, mm. */
  public static final double BREAK_MM = 7;

  /** So much of each side of the load line is shown whatever else there is, mm. */
  private static final double LEAST_MM = 25;

  private static final double ROUNDING_MM = 1e-6;

  /**
   * The window that shows all places, or else the load line and as many as there is room for.
   *
   * @param lineMm where the load line runs across; where none is known, anything that must be seen
   */
  public static StripWindow of(
      List<Double> placesMm, double lineMm, double leftMm, double widthMm) {
    DoubleSummaryStatistics all =
        placesMm.stream().mapToDouble(Double::doubleValue).summaryStatistics();
    double low = Math.min(all.getMin(), lineMm);
    double high = Math.max(all.getMax(), lineMm);
    if (high - low <= widthMm - 2 * BREAK_MM) {
      return new StripWindow(leftMm, widthMm, (low + high - widthMm) / 2);
    }
    double before = LEAST_MM + (widthMm - 2 * LEAST_MM) * (lineMm - low) / (high - low);
    return new StripWindow(leftMm, widthMm, lineMm - before);
  }

  public double rightMm() {
    return leftMm + widthMm;
  }

  public double toMm() {
    return fromMm + widthMm;
  }

  /** Whether a place lies so far to the left that it is drawn beyond a break. */
  public boolean isBeforeBreak(double acrossMm) {
    return acrossMm < fromMm + BREAK_MM - ROUNDING_MM;
  }

  /** Whether a place lies so far to the right that it is drawn beyond a break. */
  public boolean isAfterBreak(double acrossMm) {
    return acrossMm > toMm() - BREAK_MM + ROUNDING_MM;
  }

  /** Where a place is drawn, across the view: what lies beyond a break is drawn near the end. */
  public double shownMm(double acrossMm) {
    if (isBeforeBreak(acrossMm)) {
      return fromMm + BREAK_MM / 3;
    }
    return isAfterBreak(acrossMm) ? toMm() - BREAK_MM / 3 : acrossMm;
  }

  /** Where a place is drawn on paper, mm from the drawing's left edge. */
  public double xMm(double acrossMm) {
    return leftMm + shownMm(acrossMm) - fromMm;
  }
}
