package caryatid.calibration;

import static caryatid.calibration.Table.number;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far real stands drift and shift in parts of some length: the means of a part's first and last
 * quarter, and of 2 s before and 2 s after a moment, in steps of half a second. Of both directions
 * the larger difference counts.
 */
final class RealLimits {
  private static final int[] LENGTHS_S = {10, 20, 30, 60};
  private static final double STEP_S = 0.5;
  private static final int STEPS_OF_MEAN = 4;

  private RealLimits() {}

  static Table of(List<Recording> stands) {
    Table table =
        new Table(
            "stands",
            "parts",
            "how many",
            "drift: 95 %, mm",
            "drift: 99 %, mm",
            "drift: largest, mm",
            "shift: 95 %, mm",
            "shift: 99 %, mm",
            "shift: largest, mm");
    for (int lengthS : LENGTHS_S) {
      List<double[][]> parts = stands.stream().flatMap(s -> parts(s, lengthS).stream()).toList();
      double[] drift = parts.stream().mapToDouble(RealLimits::drift).sorted().toArray();
      double[] shift = parts.stream().mapToDouble(RealLimits::shift).sorted().toArray();
      table.row(
          "real",
          lengthS + " s",
          number(parts.size(), 0),
          number(point(drift, 0.95), 1),
          number(point(drift, 0.99), 1),
          number(point(drift, 1), 1),
          number(point(shift, 0.95), 1),
          number(point(shift, 0.99), 1),
          number(point(shift, 1), 1));
    }
    return table;
  }

  /** Means over each half second, sideways and fore and aft, of each part. */
  private static List<double[][]> parts(Recording stand, int lengthS) {
    PlateTrack track = stand.plates().get(0);
    int block = (int) Math.round(STEP_S * stand.rateHz());
    double[] right = blocks(track.copRightMm().orElseThrow().shared(), block);
    double[] anterior = blocks(track.copAnteriorMm().shared(), block);
    int each = (int) (lengthS / STEP_S);
    List<double[][]> parts = new ArrayList<>();
    for (int from = 0; from + each <= right.length; from += each) {
      parts.add(
          new double[][] {
            Arrays.copyOfRange(right, from, from + each),
            Arrays.copyOfRange(anterior, from, from + each)
          });
    }
    return parts;
  }

  private static double[] blocks(double[] samples, int block) {
    double[] means = new double[samples.length / block];
    for (int i = 0; i < means.length; i++) {
      means[i] = mean(samples, i * block, (i + 1) * block);
    }
    return means;
  }

  private static double mean(double[] of, int from, int to) {
    return Arrays.stream(of, from, to).average().orElseThrow();
  }

  private static double drift(double[][] part) {
    double most = 0;
    for (double[] x : part) {
      int quarter = x.length / 4;
      double apart = mean(x, x.length - quarter, x.length) - mean(x, 0, quarter);
      most = Math.max(most, Math.abs(apart));
    }
    return most;
  }

  private static double shift(double[][] part) {
    double most = 0;
    for (double[] x : part) {
      for (int at = STEPS_OF_MEAN; at + STEPS_OF_MEAN <= x.length; at++) {
        double apart = mean(x, at, at + STEPS_OF_MEAN) - mean(x, at - STEPS_OF_MEAN, at);
        most = Math.max(most, Math.abs(apart));
      }
    }
    return most;
  }

  /** Between the two nearest of sorted values in proportion. */
  private static double point(double[] sorted, double p) {
    double at = p * (sorted.length - 1);
    int below = (int) at;
    double above = sorted[Math.min(below + 1, sorted.length - 1)];
    return sorted[below] + (at - below) * (above - sorted[below]);
  }
}
