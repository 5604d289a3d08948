package caryatid.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleStatisticsTest {
  /**
   * Data sets of NIST StRD, univariate summary statistics, with the certified mean and standard
   * deviation. Held to 13 digits, what double precision keeps of 15.
   */
  @ParameterizedTest
  @CsvSource({
    "lew, 200, -177.435000000000, 277.332168044316",
    "lottery, 218, 518.958715596330, 291.699727470969",
    "mavro, 50, 2.00185600000000, 0.000429123454003053",
    "michelso, 100, 299.852400000000, 0.0790105478190518"
  })
  void validation_dataSetsOfNistStRD(String set, int n, double mean, double sd) throws IOException {
    double[] values = read(set);
    assertThat(values).hasSize(n);
    assertThat(SampleStatistics.mean(values)).isCloseTo(mean, withinPercentage(1e-12));
    assertThat(SampleStatistics.standardDeviation(values)).isCloseTo(sd, withinPercentage(1e-10));
    assertThat(SampleStatistics.roughMean(values)).isCloseTo(mean, withinPercentage(1e-8));
    assertThat(SampleStatistics.roughDeviation(values)).isCloseTo(sd, withinPercentage(1e-8));
  }

  private static double[] read(String set) throws IOException {
    try (InputStream in = SampleStatisticsTest.class.getResourceAsStream(set + ".txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      return text.lines().mapToDouble(Double::parseDouble).toArray();
    }
  }

  /** Set of NIST StRD, univariate summary statistics; certified values exact. */
  private static double[] numAcc(double middle) {
    return IntStream.range(0, 1001)
        .mapToDouble(i -> i == 0 ? middle : middle + (i % 2 == 1 ? -0.1 : 0.1))
        .toArray();
  }

  @Test
  void validation_numAcc1_of_NIST_StRD() {
    double[] values = {10000001, 10000003, 10000002};
    assertThat(SampleStatistics.mean(values)).isEqualTo(10000002);
    assertThat(SampleStatistics.standardDeviation(values)).isEqualTo(1);
  }

  @Test
  void validation_numAcc2_of_NIST_StRD() {
    holdsNumAcc(1.2, 1e-14);
  }

  /**
   * The data's own rounding to double is 5e-11 here, and 5e-10 in the next: more is not to be had.
   */
  @Test
  void validation_numAcc3_of_NIST_StRD() {
    holdsNumAcc(1000000.2, 2e-10);
  }

  @Test
  void validation_numAcc4_of_NIST_StRD() {
    holdsNumAcc(10000000.2, 2e-9);
  }

  private static void holdsNumAcc(double middle, double rounding) {
    double[] values = numAcc(middle);
    assertThat(SampleStatistics.mean(values)).isCloseTo(middle, within(Math.ulp(middle)));
    assertThat(SampleStatistics.standardDeviation(values)).isCloseTo(0.1, within(rounding));
  }

  @Test
  void aMeanNeedsANumberAndACovarianceTwoPairs() {
    assertThatThrownBy(() -> SampleStatistics.mean(new double[0]))
        .hasMessage("the mean of nothing");
    assertThatThrownBy(() -> SampleStatistics.standardDeviation(new double[1]))
        .hasMessage("covariance of 1 and 1");
    assertThatThrownBy(() -> SampleStatistics.covariance(new double[2], new double[3]))
        .hasMessage("covariance of 2 and 3");
  }
}
