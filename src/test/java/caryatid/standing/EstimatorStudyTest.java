package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.uncertainty.SampleStatistics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often 95 % intervals of a stand's mean hold its long-run mean, by several estimators, on the
 * processes on which one was chosen, and the mean half-width in standard deviations of the process.
 * The correlation time is the sum of the relaxation times weighted by their shares of the variance.
 * {@code mvn -Pproof verify -Dtest=EstimatorStudyTest} runs it; {@code -Dapprove} writes the table
 * anew. Regression: the figures are our own.
 */
@Tag("proof")
class EstimatorStudyTest {
  private static final Path FILE = Path.of("docs/estimator-study.csv");
  private static final int STANDS = 4000;
  private static final double RATE_HZ = 20;
  private static final int[] SECONDS = {10, 20, 30, 60};

  /** Only the rows of so many seconds at most are made again and sought in the table. */
  private static final int LONGEST_S = Integer.getInteger("longest.s", 60);

  /** A mixture of first-order processes: shares of the variance and their relaxation times, s. */
  private record Family(String name, double[] shares, double[] timesS) {
    double correlationTimeS() {
      double sum = 0;
      for (int i = 0; i < shares.length; i++) {
        sum += shares[i] * timesS[i];
      }
      return sum;
    }

    double[] series(Random random, int n) {
      double[] sum = new double[n];
      for (int i = 0; i < shares.length; i++) {
        double[] part = Made.autoregressive(random, n, Math.exp(-1 / (RATE_HZ * timesS[i])));
        for (int t = 0; t < n; t++) {
          sum[t] += Math.sqrt(shares[i]) * part[t];
        }
      }
      return sum;
    }
  }

  private static final List<Family> FAMILIES =
      List.of(
          new Family("1 s", new double[] {1}, new double[] {1}),
          new Family("3 s", new double[] {1}, new double[] {3}),
          new Family(
              "0.3, 2, 10 s (20, 50, 30 %)",
              new double[] {0.2, 0.5, 0.3}, new double[] {0.3, 2, 10}),
          new Family(
              "0.3, 1.5, 8, 40 s (20, 35, 25, 20 %)",
              new double[] {0.2, 0.35, 0.25, 0.2}, new double[] {0.3, 1.5, 8, 40}));

  @Test
  void theTableInTheDocsIsWhatTheStudyFinds() throws IOException {
    if (LONGEST_S < 60) {
      assertThat(Files.readString(FILE)).contains(shorterRows());
      return;
    }
    StringBuilder table = new StringBuilder("relaxation times (shares),s,s / correlation time");
    for (Estimators e : Estimators.values()) {
      table.append(
          String.format(Locale.ROOT, ",\"%s: held, %%\",\"%s: half-width, SD\"", e.words, e.words));
    }
    table.append('\n');
    for (Family family : FAMILIES) {
      for (int seconds : SECONDS) {
        table.append(row(family, seconds));
      }
    }
    if (Boolean.getBoolean("approve")) {
      Files.writeString(FILE, table);
    }
    assertThat(Files.readString(FILE)).isEqualTo(table.toString());
  }

  private static List<String> shorterRows() {
    List<String> rows = new ArrayList<>();
    for (Family family : FAMILIES) {
      for (int seconds : SECONDS) {
        if (seconds <= LONGEST_S) {
          rows.add(row(family, seconds));
        }
      }
    }
    return rows;
  }

  private static String row(Family family, int seconds) {
    Map<Estimators, double[]> found = study(family, seconds);
    double times = seconds / family.correlationTimeS();
    StringBuilder row = new StringBuilder();
    row.append(String.format(Locale.ROOT, "\"%s\",%d,%.1f", family.name(), seconds, times));
    found.forEach(
        (estimator, f) -> row.append(String.format(Locale.ROOT, ",%.1f,%.2f", 100 * f[0], f[1])));
    double chosen = found.get(Estimators.CHOSEN)[0];
    if (times >= 20) {
      assertThat(chosen).as(family.name()).isBetween(0.93, 0.97);
    } else if (times >= 12) {
      assertThat(chosen).as(family.name()).isBetween(0.90, 0.97);
    }
    return row.append('\n').toString();
  }

  /** Coverage and mean half-width in standard deviations of the process. */
  private static Map<Estimators, double[]> study(Family family, int seconds) {
    Random random = new Random(20260301 + seconds);
    int n = (int) (seconds * RATE_HZ);
    Map<Estimators, double[]> sums = new EnumMap<>(Estimators.class);
    for (int stand = 0; stand < STANDS; stand++) {
      double[] series = family.series(random, n);
      double mean = SampleStatistics.mean(series);
      double sd = SampleStatistics.standardDeviation(series);
      double[] residuals = Arrays.stream(series).map(v -> v - mean).toArray();
      for (Estimators estimator : Estimators.values()) {
        double half = estimator.halfWidth(residuals, sd);
        double[] sum = sums.computeIfAbsent(estimator, e -> new double[2]);
        sum[0] += Math.abs(mean) <= half ? 1.0 / STANDS : 0;
        sum[1] += half / STANDS;
      }
    }
    return sums;
  }
}
