package caryatid.advice;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Parameters of a linear model with normal errors, after measurements: the conjugate update
 *
 * <pre>
 * P = P0 + H' V^-1 H,   m = P^-1 (P0 m0 + H' V^-1 z)
 * </pre>
 *
 * where m0 and P0 are mean and precision before (precision 0 where nothing is known), z = H x + e
 * the measurements, and V the covariance of their errors (Gelman et al., Bayesian Data Analysis,
 * 2013, 14.2 and 14.8; from memory; the derivation is in docs/advice.md).
 *
 * @param mean m
 * @param covariance P^-1
 * @param misfit (z - H m)' V^-1 (z - H m) + (m - m0)' P0 (m - m0): chi squared with as many degrees
 *     of freedom as there are measurements, less the parameters of precision 0
 */
record LinearGaussian(RealVector mean, RealMatrix covariance, double misfit) {

  /**
   * Updates.
   *
   * @param before m0
   * @param precision P0
   * @param design H, a row for each measurement
   * @param errors V
   * @param measured z
   * @throws org.apache.commons.math3.exception.MathIllegalArgumentException if V or P is not
   *     positive definite
   */
  static LinearGaussian of(
      RealVector before,
      RealMatrix precision,
      RealMatrix design,
      RealMatrix errors,
      RealVector measured) {
    RealMatrix inverse = new CholeskyDecomposition(errors).getSolver().getInverse();
    RealMatrix weighted = design.transpose().multiply(inverse);
    RealMatrix after = symmetric(precision.add(weighted.multiply(design)));
    RealMatrix covariance =
        symmetric(new CholeskyDecomposition(after, 1e-9, 0).getSolver().getInverse());
    RealVector mean = covariance.operate(precision.operate(before).add(weighted.operate(measured)));
    RealVector rest = measured.subtract(design.operate(mean));
    RealVector moved = mean.subtract(before);
    double misfit =
        rest.dotProduct(inverse.operate(rest)) + moved.dotProduct(precision.operate(moved));
    return new LinearGaussian(mean, covariance, misfit);
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }
}
