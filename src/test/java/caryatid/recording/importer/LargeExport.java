package caryatid.recording.importer;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes a large invented export, for measuring by hand (see DEVELOPERS.md): eight columns of
 * numbers at 1000 Hz, about 68 bytes a row.
 */
final class LargeExport {
  private LargeExport() {}

  /** Takes the file and the number of rows. */
  public static void main(String[] args) throws IOException {
    int rows = Integer.parseInt(args[1]);
    Random random = new Random(20260304);
    try (BufferedWriter out = Files.newBufferedWriter(Path.of(args[0]))) {
      out.write("Time (s),Fx (N),Fy (N),Fz (N),Mx (N mm),My (N mm),CoPx (mm),CoPy (mm)\n");
      for (int i = 0; i < rows; i++) {
        out.write(row(i, random));
      }
    }
  }

  private static String row(int i, Random random) {
    double x = 10 + 3 * Math.sin(i / 300.0) + 0.1 * random.nextGaussian();
    double y = 20 + 4 * Math.cos(i / 500.0) + 0.1 * random.nextGaussian();
    double up = 800 + random.nextGaussian();
    return String.format(
        Locale.ROOT,
        "%.3f,%.4f,%.4f,%.4f,%.3f,%.3f,%.4f,%.4f\n",
        i / 1000.0,
        random.nextGaussian(),
        random.nextGaussian(),
        up,
        y * up,
        -x * up,
        x,
        y);
  }
}
