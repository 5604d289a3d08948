package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How much processor time a keystroke takes that the page follows, with three counted stands of 32
 * s at 1000 Hz: {@code java -cp ... caryatid.web.KeystrokeTiming}. It prints medians.
 */
final class KeystrokeTiming {
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final int ROWS = 3200;
  private static final int TIMES = 10;
  private static final int WARM = 10;
  private static final int MEASURED = 15;

  private KeystrokeTiming() {}

  public static void main(String[] ignored) throws Exception {
    Path folder = Files.createTempDirectory("keystrokes");
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    try (OpenWindow window = new OpenWindow(folder)) {
      TypedStand stand = new TypedStand(window, window.start("K7-right", "right"));
      for (int i = 1; i <= 3; i++) {
        stand.upload("stand-" + i + ".csv", longer(K7.resolve("barefoot-" + i + ".csv")));
        stand.typeAs(Map.of(), "part", "live", "action", "count-" + i);
      }
      print("a landmark's height", stand, "landmark[2].up", "49");
      print("free text", stand, "last-change", "foot moved ");
      print("nothing, as when a folder is watched", stand, "part", "live");
    }
  }

  private static void print(String what, TypedStand stand, String name, String begun)
      throws Exception {
    List<Double> cpu = new ArrayList<>();
    List<Double> wall = new ArrayList<>();
    for (int i = 0; i < WARM + MEASURED; i++) {
      String typed = name.equals("part") ? begun : begun + i % 10;
      long cpuBefore = cpuNs();
      long before = System.nanoTime();
      String answer = stand.typeAs(Map.of(name, typed), "part", "live").body();
      if (!answer.contains("value=\"keep\"")) {
        throw new IllegalStateException(answer);
      }
      if (i >= WARM) {
        wall.add((System.nanoTime() - before) / 1e6);
        cpu.add((cpuNs() - cpuBefore) / 1e6);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%s: processor time %.0f ms (least %.0f), wall time %.0f ms%n",
        what,
        median(cpu),
        cpu.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
        median(wall));
  }

  private static long cpuNs() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static double median(List<Double> of) {
    return of.stream().sorted().toList().get(of.size() / 2);
  }

  /** An invented stand there and back again, with ten rows for each. */
  static byte[] longer(Path sample) throws IOException {
    List<String> lines = Files.readAllLines(sample);
    List<double[]> rows =
        new ArrayList<>(lines.stream().skip(1).map(KeystrokeTiming::row).toList());
    for (int i = rows.size() - 2; rows.size() <= ROWS; i--) {
      rows.add(rows.get(i));
    }
    StringBuilder text = new StringBuilder(lines.get(0)).append('\n');
    for (int i = 0; i < ROWS * TIMES; i++) {
      double[] from = rows.get(i / TIMES);
      double[] to = rows.get(i / TIMES + 1);
      double part = (double) (i % TIMES) / TIMES;
      text.append(Integer.toString(i / 1000)).append(',').append("%03d".formatted(i % 1000));
      for (int c = 1; c < from.length; c++) {
        String value = String.format(Locale.ROOT, "%.2f", from[c] + part * (to[c] - from[c]));
        text.append(';').append(value.replace('.', ','));
      }
      text.append('\n');
    }
    return text.toString().getBytes(UTF_8);
  }

  private static double[] row(String line) {
    return Arrays.stream(line.split(";"))
        .mapToDouble(cell -> Double.parseDouble(cell.replace(',', '.')))
        .toArray();
  }
}
