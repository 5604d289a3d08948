package caryatid.advice;

import caryatid.loadline.LandmarkInPlane;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is expected of one unit of a change before this wearer has shown any: what geometry says,
 * with a wide uncertainty, because the person rebalances. Geometry as a whole is right to a factor
 * of 1 with a standard deviation of 0.6; each offset by itself departs from that by a tenth of the
 * largest that geometry expects. Where geometry knows nothing, 0 is expected, as uncertain as a
 * shift of the whole leg or its tilt at the knee's height (all of it common practice, no source).
 *
 * @param mm expected change of each offset for one unit, mm
 * @param covariance of these, mm squared
 * @param known whether geometry knows it
 */
record Expectation(double[] mm, RealMatrix covariance, boolean known) {
  static final double FACTOR_SD = 0.6;
  static final double ASIDE = 0.1;

  /** One degree at a height of 412 mm, and one millimetre. */
  private static final double DEGREE_MM = 7.2;

  static Expectation of(ChangeKind kind, List<LandmarkInPlane> offsets, Kinematics geometry) {
    double[] mm = new double[offsets.size()];
    boolean known = true;
    double largest = 0;
    for (int j = 0; j < mm.length; j++) {
      OptionalDouble slope = geometry.slope(kind, offsets.get(j));
      known &= slope.isPresent();
      mm[j] = slope.orElse(0);
      largest = Math.max(largest, Math.abs(mm[j]));
    }
    double unit = kind.isAngle() ? DEGREE_MM : 1;
    double aside = known ? ASIDE * Math.max(largest, 0.3 * unit) : unit;
    return new Expectation(mm, covariance(mm, aside), known);
  }

  private static RealMatrix covariance(double[] mm, double aside) {
    RealMatrix covariance = new Array2DRowRealMatrix(mm.length, mm.length);
    for (int i = 0; i < mm.length; i++) {
      for (int j = 0; j < mm.length; j++) {
        double own = i == j ? aside * aside : 0;
        covariance.setEntry(i, j, FACTOR_SD * FACTOR_SD * mm[i] * mm[j] + own);
      }
    }
    return covariance;
  }
}
