package caryatid.calibration;

import caryatid.samples.Measures;
import caryatid.samples.Noise;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** How simulated people sway in 60 s at 100 Hz, beside 1,930 real stands. */
final class People {
  /** The measures, in order. */
  static final List<String> MEASURES =
      List.of(
          "SD fore and aft, mm",
          "SD sideways, mm",
          "mean speed, mm/s",
          "range fore and aft, mm",
          "first against last quarter, mm",
          "largest step between samples, mm");

  /** What the real stands are called among the families. */
  static final String REAL_STANDS = "real stands";

  /** 5th, 50th and 95th percentile of the real stands (Santos and Duarte 2016, PeerJ 4:e2648). */
  static final double[][] REAL = {
    {2.8, 7.4, 14.9},
    {1.5, 5.3, 12.3},
    {6.2, 18.2, 48.3},
    {15.1, 40.6, 87.7},
    {0.4, 4.9, 16.6},
    {0.34, 1.2, 3.9}
  };

  private static final int RATE_HZ = 100;
  private static final int SAMPLES = 60 * RATE_HZ;

  private People() {}

  /** 5th, 50th and 95th percentile of each measure over simulated people. */
  static double[][] percentiles(Family family, int people, long seed) {
    double[][] each =
        IntStream.range(0, people)
            .mapToObj(i -> measures(family, new Noise(seed + i)))
            .toArray(double[][]::new);
    double[][] percentiles = new double[MEASURES.size()][];
    for (int m = 0; m < percentiles.length; m++) {
      int measure = m;
      double[] sorted = Arrays.stream(each).mapToDouble(x -> x[measure]).sorted().toArray();
      percentiles[m] =
          new double[] {sorted[people / 20], sorted[people / 2], sorted[people - 1 - people / 20]};
    }
    return percentiles;
  }

  private static double[] measures(Family family, Noise noise) {
    Family.Swaying sway = family.draw(noise);
    double[] fore = sway.fore().trace(SAMPLES, RATE_HZ, noise.split());
    double[] side = sway.side().trace(SAMPLES, RATE_HZ, noise.split());
    return new double[] {
      Measures.sd(fore),
      Measures.sd(side),
      Measures.speed(fore, side, RATE_HZ),
      Measures.range(fore),
      Measures.drift(fore),
      Measures.largestStep(fore)
    };
  }
}
