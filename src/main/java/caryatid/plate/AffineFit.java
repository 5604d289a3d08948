package caryatid.plate;

import java.util.List;

/**
 * The map from true places to shown ones by least squares, each direction by itself: shown = zero +
 * slope right times right + slope anterior times anterior (ordinary least squares for two
 * variables; NIST/SEMATECH e-Handbook of Statistical Methods, 4.4.3.1). Three marks determine it;
 * what more marks leave over is scatter.
 */
final class AffineFit {
  /** Numbers fitted: two zeros, four slopes. */
  static final int FITTED = 6;

  private final int count;
  private final double meanRightMm;
  private final double meanAnteriorMm;
  private final double sumRight;
  private final double sumAcross;
  private final double sumAnterior;
  private final double[] right;
  private final double[] anterior;

  /**
   * @param marks not on one line
   */
  AffineFit(List<MarkedWeight> marks) {
    this.count = marks.size();
    this.meanRightMm = marks.stream().mapToDouble(MarkedWeight::rightMm).average().orElseThrow();
    this.meanAnteriorMm =
        marks.stream().mapToDouble(MarkedWeight::anteriorMm).average().orElseThrow();
    double rr = 0;
    double ra = 0;
    double aa = 0;
    for (MarkedWeight mark : marks) {
      double r = mark.rightMm() - meanRightMm;
      double a = mark.anteriorMm() - meanAnteriorMm;
      rr += r * r;
      ra += r * a;
      aa += a * a;
    }
    this.sumRight = rr;
    this.sumAcross = ra;
    this.sumAnterior = aa;
    this.right = row(marks, true);
    this.anterior = row(marks, false);
  }

  /** Zero, slope right, slope anterior and the sum of squared residuals of one shown direction. */
  private double[] row(List<MarkedWeight> marks, boolean toTheRight) {
    double mean = marks.stream().mapToDouble(m -> shown(m, toTheRight)).average().orElseThrow();
    double byRight = 0;
    double byAnterior = 0;
    for (MarkedWeight mark : marks) {
      byRight += (mark.rightMm() - meanRightMm) * (shown(mark, toTheRight) - mean);
      byAnterior += (mark.anteriorMm() - meanAnteriorMm) * (shown(mark, toTheRight) - mean);
    }
    double determinant = determinant();
    double slopeRight = (byRight * sumAnterior - byAnterior * sumAcross) / determinant;
    double slopeAnterior = (byAnterior * sumRight - byRight * sumAcross) / determinant;
    double zero = mean - slopeRight * meanRightMm - slopeAnterior * meanAnteriorMm;
    double squares = 0;
    for (MarkedWeight mark : marks) {
      double fitted = zero + slopeRight * mark.rightMm() + slopeAnterior * mark.anteriorMm();
      squares += Math.pow(shown(mark, toTheRight) - fitted, 2);
    }
    return new double[] {zero, slopeRight, slopeAnterior, squares};
  }

  private static double shown(MarkedWeight mark, boolean toTheRight) {
    return toTheRight ? mark.shown().rightMm() : mark.shown().anteriorMm();
  }

  private double determinant() {
    return sumRight * sumAnterior - sumAcross * sumAcross;
  }

  /** Where the plate shows the zero, to the right, mm. */
  double zeroRightMm() {
    return right[0];
  }

  /** Where the plate shows the zero, anteriorly, mm. */
  double zeroAnteriorMm() {
    return anterior[0];
  }

  /** How long the plate shows a true millimetre to the right. */
  double scaleRight() {
    return Math.hypot(right[1], anterior[1]);
  }

  /** How long the plate shows a true anterior millimetre. */
  double scaleAnterior() {
    return Math.hypot(right[2], anterior[2]);
  }

  /** How far what the plate shows is turned, rad; positive to the left, seen from above. */
  double turnRad() {
    return Math.atan2(anterior[1] - right[2], right[1] + anterior[2]);
  }

  /**
   * How well the shown directions tell the true ones apart: 1 where both are shown alike, whatever
   * the unit, 0 where one is not shown or both are shown as one. At 0.5 one is shown about a
   * quarter as far as the other.
   */
  double independence() {
    double determinant = right[1] * anterior[2] - right[2] * anterior[1];
    double squares =
        right[1] * right[1]
            + right[2] * right[2]
            + anterior[1] * anterior[1]
            + anterior[2] * anterior[2];
    return squares > 0 ? 2 * Math.abs(determinant) / squares : 0;
  }

  /** Variance of a shown place about the map, mm^2, each direction; with 2n - 6 degrees. */
  double variance() {
    return (right[3] + anterior[3]) / degrees();
  }

  double degrees() {
    return 2.0 * count - FITTED;
  }

  /** What one millimetre of scatter leaves in the scale to the right. */
  double ofScaleRight() {
    return Math.sqrt(sumAnterior / determinant());
  }

  /** The same of the anterior scale. */
  double ofScaleAnterior() {
    return Math.sqrt(sumRight / determinant());
  }

  /** The same of the turn, rad: half the difference of two slopes. */
  double ofTurn() {
    return Math.hypot(ofScaleRight(), ofScaleAnterior()) / 2;
  }

  /** The same of the shown zero, each direction, mm. */
  double ofZero() {
    double r = meanRightMm;
    double a = meanAnteriorMm;
    double quadratic = r * r * sumAnterior - 2 * r * a * sumAcross + a * a * sumRight;
    return Math.sqrt(1.0 / count + quadratic / determinant());
  }

  /**
   * How far the marks are from lying on one line: 1 where both directions are spread alike and
   * independently, 0 on a line.
   */
  static double spread(List<MarkedWeight> marks) {
    AffineFit sums = new AffineFit(marks);
    double half = (sums.sumRight + sums.sumAnterior) / 2;
    return half > 0 ? sums.determinant() / (half * half) : 0;
  }

  /** The least extent of the marks in a direction, mm. */
  static double extentMm(List<MarkedWeight> marks) {
    return Math.min(
        extent(marks.stream().mapToDouble(MarkedWeight::rightMm).toArray()),
        extent(marks.stream().mapToDouble(MarkedWeight::anteriorMm).toArray()));
  }

  private static double extent(double[] mm) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double one : mm) {
      least = Math.min(least, one);
      most = Math.max(most, one);
    }
    return most - least;
  }
}
