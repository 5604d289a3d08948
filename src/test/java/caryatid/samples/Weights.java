package caryatid.samples;

import caryatid.samples.ExportText.Column;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The proof of the plate of the fitting room (invented): a weight of 60 kg on five marks, and a
 * person of 75 kg. The plate shows places 0.4 % too far apart and is turned by 0.2 degrees.
 */
final class Weights {
  private static final double G = 9.80665;
  private static final double RATE_HZ = 50;
  private static final int SAMPLES = 120;
  private static final double[] ORIGIN_MM = {0.5, -1, -40};
  private static final ExportText TEXT = new ExportText(";", ',', List.of(), false);

  private Weights() {}

  /** The recordings by their names. */
  static Map<String, byte[]> recordings() {
    Random random = new Random(2026_11_28);
    Map<String, byte[]> files = new LinkedHashMap<>();
    double[][] marks = {{-150, -200}, {150, -200}, {150, 200}, {-150, 200}, {0, 0}};
    for (int i = 0; i < marks.length; i++) {
      double right = marks[i][0] + 0.6 * random.nextGaussian();
      double anterior = marks[i][1] + 0.6 * random.nextGaussian();
      files.put("plate/weight-" + (i + 1) + ".csv", file(right, anterior, 60, 0, random));
    }
    files.put("plate/standing.csv", file(4, 25, 75, 3, random));
    files.put("plate/forward.csv", file(6, 80, 75, 3, random));
    files.put("plate/left-foot.csv", file(-92, 18, 75, 5, random));
    return files;
  }

  private static byte[] file(
      double right, double anterior, double kg, double swayMm, Random random) {
    double turn = Math.toRadians(0.2);
    double[][] cells = new double[SAMPLES][];
    for (int i = 0; i < SAMPLES; i++) {
      double phase = 2 * Math.PI * 0.6 * i / RATE_HZ;
      double r = right + swayMm * Math.sin(phase);
      double a = anterior + swayMm * Math.cos(phase);
      double x = 1.004 * (r * Math.cos(turn) - a * Math.sin(turn));
      double y = 1.004 * (r * Math.sin(turn) + a * Math.cos(turn));
      double up = kg * G + 0.3 * random.nextGaussian();
      double fx = 0.4 + 0.1 * random.nextGaussian();
      double fy = -0.3 + 0.1 * random.nextGaussian();
      // The moments about the true origin of a force that meets the surface in x, y.
      double mx = (y - ORIGIN_MM[1]) * up + ORIGIN_MM[2] * fy;
      double my = -(x - ORIGIN_MM[0]) * up - ORIGIN_MM[2] * fx;
      double mz = (x - ORIGIN_MM[0]) * fy - (y - ORIGIN_MM[1]) * fx;
      cells[i] = new double[] {fx, fy, up, mx, my, mz};
    }
    return TEXT.write(
        List.of(
            new Column("Time", "s", 2, i -> i / RATE_HZ),
            column("Fx", 2, cells, 0),
            column("Fy", 2, cells, 1),
            column("Fz", 2, cells, 2),
            column("Mx", 1, cells, 3),
            column("My", 1, cells, 4),
            column("Mz", 1, cells, 5)),
        SAMPLES);
  }

  private static Column column(String name, int decimals, double[][] cells, int at) {
    return new Column(name, "", decimals, i -> cells[i][at]);
  }
}
