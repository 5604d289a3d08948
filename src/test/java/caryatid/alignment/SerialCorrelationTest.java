package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Why no correlation between stands in a row is estimated from a record (docs/method.md, section
 * 6): simulated records of states of three stands, each the next one's neighbour in a first-order
 * autoregression. Figures by the same simulation in another language, 20,000 records each.
 */
class SerialCorrelationTest {
  private static final int RECORDS = 6000;
  private static final int STANDS = 3;

  /** A coefficient of lag one within the states, about each state's mean. */
  private static double coefficient(Random random, int states, double correlation) {
    double products = 0;
    double squares = 0;
    for (int state = 0; state < states; state++) {
      double[] x = new double[STANDS];
      x[0] = random.nextGaussian();
      for (int i = 1; i < STANDS; i++) {
        double news = Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
        x[i] = correlation * x[i - 1] + news;
      }
      double mean = Arrays.stream(x).average().orElseThrow();
      for (int i = 0; i < STANDS; i++) {
        squares += (x[i] - mean) * (x[i] - mean);
        products += i == 0 ? 0 : (x[i] - mean) * (x[i - 1] - mean);
      }
    }
    return products / squares;
  }

  private static double[] coefficients(long seed, int states, double correlation) {
    Random random = new Random(seed);
    double[] all = new double[RECORDS];
    for (int i = 0; i < RECORDS; i++) {
      all[i] = coefficient(random, states, correlation);
    }
    Arrays.sort(all);
    return all;
  }

  /**
   * Clearly positive is what independent stands exceed in 5 of 100 records. A correlation of 0.5 is
   * then found in 14 of 100 records of five states, and in 25 of 100 of twelve. The standard error
   * of a figure is below 0.6 %.
   */
  @ParameterizedTest
  @CsvSource({"5, 14", "8, 18", "12, 25"})
  void aRecordRarelyShowsThatStandsInARowAreNotIndependent(int states, double percent) {
    double limit = coefficients(1, states, 0)[(int) (0.95 * RECORDS)];
    double found =
        Arrays.stream(coefficients(2, states, 0.5)).filter(c -> c > limit).count() * 100.0;
    assertThat(found / RECORDS).isBetween(percent - 3, percent + 3);
  }
}
