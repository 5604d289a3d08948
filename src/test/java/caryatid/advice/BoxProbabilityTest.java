package caryatid.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoxProbabilityTest {
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  /** Validation: both of two above their means: 1/4 + asin(r) / (2 pi) (Sheppard 1899, memory). */
  @ParameterizedTest
  @ValueSource(doubles = {-0.8, -0.3, 0, 0.5, 0.9})
  void twoValuesAreBothAboveTheirMeans(double r) {
    Prediction two =
        new Prediction(
            new ArrayRealVector(2),
            new Array2DRowRealMatrix(new double[][] {{4, 2 * r * 3}, {2 * r * 3, 9}}));
    double both = BoxProbability.of(two, new double[2], new double[] {INFINITE, INFINITE});
    assertThat(both).isCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), within(2e-3));
  }

  /** Validation: one within 1.959964 standard deviations in 95 of 100; three apart in 0.95^3. */
  @Test
  void valuesApartAreAProduct() {
    Prediction three =
        new Prediction(
            new ArrayRealVector(new double[] {1, 2, 3}),
            new Array2DRowRealMatrix(new double[][] {{1, 0, 0}, {0, 4, 0}, {0, 0, 9}}));
    double[] half = {1.959964, 2 * 1.959964, 3 * 1.959964};
    double[] lowest = {1 - half[0], 2 - half[1], 3 - half[2]};
    double[] highest = {1 + half[0], 2 + half[1], 3 + half[2]};
    assertThat(BoxProbability.of(three, lowest, highest))
        .isCloseTo(Math.pow(0.95, 3), within(1e-7));
  }
}
