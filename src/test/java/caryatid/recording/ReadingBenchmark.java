package caryatid.recording;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * Times the reading of a large export, whole process against whole process in turn, on one core. No
 * test; to be run by hand on a quiet machine after {@code mvn package}, with Python's pandas and
 * taskset installed:
 *
 * <pre>
 * java -cp 'target/classes:target/test-classes:target/lib/*' caryatid.recording.ReadingBenchmark make big.csv 1700000
 * java -cp 'target/classes:target/test-classes:target/lib/*' caryatid.recording.ReadingBenchmark compare big.csv
 * </pre>
 */
final class ReadingBenchmark {
  private static final int TURNS = 7;
  private static final List<String> ONE_CORE = List.of("taskset", "-c", "0");

  private ReadingBenchmark() {}

  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[1]);
    switch (args[0]) {
      case "make" -> make(file, Integer.parseInt(args[2]));
      case "read" -> read(file);
      default -> compare(file);
    }
  }

  /** Eight numeric columns, about 68 bytes a row. */
  private static void make(Path file, int rows) throws IOException {
    Random random = new Random(20260304);
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("Time (s),Fx (N),Fy (N),Fz (N),Mx (N mm),My (N mm),CoPx (mm),CoPy (mm)\n");
      for (int i = 0; i < rows; i++) {
        double x = 10 + 3 * Math.sin(i / 300.0) + 0.1 * random.nextGaussian();
        double y = 20 + 4 * Math.cos(i / 500.0) + 0.1 * random.nextGaussian();
        double up = 800 + random.nextGaussian();
        out.write(
            String.format(
                Locale.ROOT,
                "%.3f,%.4f,%.4f,%.4f,%.3f,%.3f,%.4f,%.4f\n",
                i / 1000.0,
                random.nextGaussian(),
                random.nextGaussian(),
                up,
                y * up,
                -x * up,
                x,
                y));
      }
    }
  }

  private static void read(Path file) throws Exception {
    NamedBytes export =
        new NamedBytes() {
          @Override
          public String name() {
            return file.toString();
          }

          @Override
          public InputStream open() throws IOException {
            return Files.newInputStream(file);
          }
        };
    PlateDescription description =
        new Described().plate(new Described.Plate("plate 1").trueOrigin(0, 0, 0)).get();
    System.out.println(Importer.read(export, Optional.of(description)).timeS().size() + " rows");
  }

  private static void compare(Path file) throws Exception {
    List<String> ours = new ArrayList<>(ONE_CORE);
    ours.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx512m",
            "-XX:+UseSerialGC",
            "-XX:+UseTransparentHugePages",
            "-cp",
            System.getProperty("java.class.path"),
            ReadingBenchmark.class.getName(),
            "read",
            file.toString()));
    List<String> theirs = new ArrayList<>(ONE_CORE);
    theirs.addAll(
        List.of("python3", "-c", "import pandas; print(len(pandas.read_csv('" + file + "')))"));
    List<Double> ratios = new ArrayList<>();
    for (int turn = 0; turn < TURNS; turn++) {
      double own = seconds(ours);
      double other = seconds(theirs);
      ratios.add(own / other);
      System.out.printf(
          Locale.ROOT, "%.2f s, pandas %.2f s, ratio %.2f%n", own, other, own / other);
    }
    ratios.sort(null);
    System.out.printf(Locale.ROOT, "median ratio %.2f%n", ratios.get(TURNS / 2));
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process = new ProcessBuilder(command).inheritIO().start();
    if (process.waitFor() != 0) {
      throw new IOException("failed: " + String.join(" ", command));
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
