package caryatid.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class LinearGaussianTest {
  /** Norris, NIST StRD: y and x, 36 of each. */
  private static final double[] NORRIS = {
    0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3,
    998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5,
    668.8, 666.9, 339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8,
    888.8, 887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0, 887.2,
    998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4, 669.1, 449.2, 448.9,
    0.2, 0.5
  };

  private static LinearGaussian norris(double sd, RealMatrix precision) {
    int n = NORRIS.length / 2;
    RealMatrix design = new Array2DRowRealMatrix(n, 2);
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      design.setEntry(i, 0, 1);
      design.setEntry(i, 1, NORRIS[2 * i + 1]);
      y[i] = NORRIS[2 * i];
    }
    return LinearGaussian.of(
        new ArrayRealVector(2),
        precision,
        design,
        MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(sd * sd),
        new ArrayRealVector(y));
  }

  /**
   * Validation: certified coefficients, standard errors and residual standard deviation of NIST
   * StRD Norris (check-values, read); with a prior that says nothing and the certified residual
   * standard deviation, the posterior is the regression. Ten digits hold in the inverse.
   */
  @Test
  void withAPriorThatSaysNothingItIsTheRegressionOfNorris() {
    double sd = 0.884796396144373;
    LinearGaussian after = norris(sd, new Array2DRowRealMatrix(2, 2));
    assertThat(after.mean().getEntry(0)).isCloseTo(-0.262323073774029, within(1e-9));
    assertThat(after.mean().getEntry(1)).isCloseTo(1.00211681802045, within(1e-11));
    assertThat(Math.sqrt(after.covariance().getEntry(0, 0)))
        .isCloseTo(0.232818234301152, within(1e-9));
    assertThat(Math.sqrt(after.covariance().getEntry(1, 1)))
        .isCloseTo(0.000429796848199937, within(1e-12));
    assertThat(after.misfit()).isCloseTo(34, within(1e-6));
  }

  /** Validation by hand: a mean of 0 known to 2 and a measurement of 10 known to 1 give 8, 4/5. */
  @Test
  void whatIsKnownBetterCountsMore() {
    LinearGaussian after =
        LinearGaussian.of(
            new ArrayRealVector(1),
            MatrixUtils.createRealDiagonalMatrix(new double[] {0.25}),
            MatrixUtils.createRealIdentityMatrix(1),
            MatrixUtils.createRealIdentityMatrix(1),
            new ArrayRealVector(new double[] {10}));
    assertThat(after.mean().getEntry(0)).isCloseTo(8, within(1e-12));
    assertThat(after.covariance().getEntry(0, 0)).isCloseTo(0.8, within(1e-12));
    assertThat(after.misfit()).isCloseTo(20, within(1e-12));
  }
}
