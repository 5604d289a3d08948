package caryatid.recording.importer;

import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.TimeUnit;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A known stand written in a random dialect, and the description that says what it does not. */
final class RandomExport {
  /** Where the file states its units. */
  private enum UnitStyle {
    NOWHERE,
    BRACKETS,
    ROW
  }

  private final Random random;
  final int rows;
  final double rateHz;
  final List<double[][]> truth;
  final boolean timed;

  /** Whether a column counts the samples, as some exports without times have it. */
  final boolean numbered;

  private final RandomStand stand;
  private final UnitStyle style;
  private final TimeUnit timeUnit;
  private final List<RandomStand.Column> columns = new ArrayList<>();
  private final char delimiter;
  private final char mark;

  RandomExport(long seed) {
    random = new Random(seed);
    rows = 20 + random.nextInt(60);
    rateHz = pick(50.0, 100.0, 250.0, 1000.0);
    timed = random.nextInt(4) > 0;
    style = pick(UnitStyle.values());
    timeUnit = pick(TimeUnit.values());
    delimiter = pick('\t', ';', ',', ' ');
    mark = delimiter == ',' ? '.' : pick('.', ',');
    if (timed) {
      columns.add(
          new RandomStand.Column("Time", timeUnit.name().toLowerCase(Locale.ROOT), times()));
    }
    numbered = !timed && random.nextBoolean();
    if (numbered) {
      columns.add(new RandomStand.Column(pick("Sample", "Frame", "Seq"), "", numbers()));
    }
    stand = new RandomStand(random, rows, 1 + random.nextInt(3));
    truth = stand.truth();
    columns.addAll(stand.columns());
    Collections.shuffle(columns, random);
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private double[] times() {
    double[] times = new double[rows];
    for (int i = 0; i < rows; i++) {
      times[i] = i / rateHz / timeUnit.seconds();
    }
    return times;
  }

  private double[] numbers() {
    double[] numbers = new double[rows];
    int first = random.nextInt(2);
    java.util.Arrays.setAll(numbers, i -> first + i);
    return numbers;
  }

  PlateDescription description() {
    Described described = new Described().axes(stand.axes());
    boolean said = style != UnitStyle.NOWHERE;
    for (int plate = 1; plate <= truth.size(); plate++) {
      described.plate(stand.layout(plate, style != UnitStyle.NOWHERE));
    }
    if (!timed) {
      described.rate(rateHz);
    } else if (!said) {
      described.time("Time", timeUnit);
    }
    return described.get();
  }

  /** The file's lines: what stands above, names, units, rows. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int above = random.nextInt(5) == 0 ? random.nextInt(40) : 0;
    for (int i = 0; i < above; i++) {
      lines.add(pick("Subject: K7", "remark=none", "Made by hand", "", "Level\t3"));
    }
    boolean brackets = style == UnitStyle.BRACKETS && delimiter != ' ';
    lines.add(
        joined(
            columns.stream()
                .map(
                    c ->
                        brackets && !c.unit().isEmpty()
                            ? c.name() + " (" + c.unit() + ")"
                            : c.name())
                .toList()));
    if (style != UnitStyle.NOWHERE && !brackets) {
      String none = delimiter == ' ' ? "-" : pick("", "-", "[-]");
      lines.add(joined(columns.stream().map(c -> c.unit().isEmpty() ? none : c.unit()).toList()));
    }
    for (int row = 0; row < rows; row++) {
      lines.add(row(row));
    }
    return lines;
  }

  /** How many lines stand above the first row. */
  int headLines(List<String> lines) {
    return lines.size() - rows;
  }

  private String row(int row) {
    return joined(columns.stream().map(c -> number(c.values()[row])).toList());
  }

  private String number(double value) {
    return String.format(Locale.ROOT, "%.8f", value).replace('.', mark);
  }

  String joined(List<String> cells) {
    return String.join(String.valueOf(delimiter), cells);
  }

  char delimiter() {
    return delimiter;
  }

  /** The lines as a file, in a random encoding with random line ends. */
  byte[] file(List<String> lines) {
    String end = pick("\n", "\r\n");
    String text = String.join(end, lines) + (random.nextInt(4) == 0 ? "" : end);
    Charset charset =
        pick(StandardCharsets.UTF_8, StandardCharsets.UTF_8, StandardCharsets.UTF_16LE);
    boolean marked = charset.equals(StandardCharsets.UTF_16LE) || random.nextInt(4) == 0;
    return ((marked ? "\ufeff" : "") + text).getBytes(charset);
  }
}
