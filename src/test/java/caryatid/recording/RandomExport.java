package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A known stand written in a random dialect, with random units, axes, channels and plates, and the
 * description that says what the file does not.
 */
final class RandomExport {
  /** Which channels are written. */
  private enum Kind {
    COP_AND_FORCE,
    COP_ALONE,
    FORCES_AND_MOMENTS
  }

  /** Where the file states its units. */
  private enum UnitStyle {
    NOWHERE,
    BRACKETS,
    ROW
  }

  private record Column(String name, String unit, double[] values) {}

  private final Random random;
  final int rows;
  final double rateHz;
  final List<double[][]> truth = new ArrayList<>();
  final boolean timed;

  /** Whether a column counts the samples, as some exports without times have it. */
  final boolean numbered;

  private final Kind kind;
  private final UnitStyle style;
  private final Axes axes;
  private final ForceUnit force;
  private final MomentUnit moment;
  private final LengthUnit length;
  private final TimeUnit timeUnit;
  private final double[] origin;
  private final int sense;
  private final List<Column> columns = new ArrayList<>();
  private final Delimiter delimiter;
  private final DecimalMark mark;

  RandomExport(long seed) {
    random = new Random(seed);
    rows = 20 + random.nextInt(60);
    rateHz = pick(50.0, 100.0, 250.0, 1000.0);
    timed = random.nextInt(4) > 0;
    kind = pick(Kind.values());
    style = pick(UnitStyle.values());
    axes = axes();
    force = pick(ForceUnit.values());
    moment = pick(MomentUnit.values());
    length = pick(LengthUnit.values());
    timeUnit = pick(TimeUnit.values());
    sense = random.nextBoolean() ? 1 : -1;
    origin = new double[] {random.nextInt(9) - 4, random.nextInt(9) - 4, random.nextInt(9) - 4};
    origin[axes.up().axis()] = -axes.up().sign() * random.nextInt(60);
    delimiter = pick(Delimiter.values());
    mark = delimiter == Delimiter.COMMA ? DecimalMark.POINT : pick(DecimalMark.values());
    if (timed) {
      columns.add(new Column("Time", timeUnit.name().toLowerCase(Locale.ROOT), times()));
    }
    numbered = !timed && random.nextBoolean();
    if (numbered) {
      columns.add(new Column(pick("Sample", "Frame", "Seq"), "", numbers()));
    }
    int plates = 1 + random.nextInt(3);
    for (int plate = 1; plate <= plates; plate++) {
      plate(plates == 1 ? "" : String.valueOf(plate));
    }
    Collections.shuffle(columns, random);
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** Any of the 24 right-handed frames. */
  private Axes axes() {
    while (true) {
      Direction right = pick(Direction.values());
      Direction anterior = pick(Direction.values());
      Direction up = pick(Direction.values());
      if (right.axis() != anterior.axis()
          && right.axis() != up.axis()
          && anterior.axis() != up.axis()) {
        Axes axes = new Axes(right, anterior, up);
        if (axes.rightHanded()) {
          return axes;
        }
      }
    }
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

  /** Right, anterior, up, horizontal forces of a plate; then its columns. */
  private void plate(String number) {
    double[][] person = new double[5][rows];
    double right = random.nextInt(200) - 100.5;
    double anterior = random.nextInt(200) - 100.5;
    for (int i = 0; i < rows; i++) {
      person[0][i] = right + 3 * Math.sin(0.9 * i);
      person[1][i] = anterior + 4 * Math.cos(0.7 * i);
      person[2][i] = 400 + 5 * Math.sin(0.3 * i);
      person[3][i] = 2 + Math.sin(0.5 * i);
      person[4][i] = -3 + Math.cos(0.4 * i);
    }
    truth.add(person);
    if (kind != Kind.FORCES_AND_MOMENTS) {
      add("CoP", number, export(person[0], person[1], null, 1), lengthName(), 1 / length.mm());
    }
    if (kind == Kind.COP_AND_FORCE) {
      double[][] only = export(null, null, person[2], sense);
      add("F", number, only, forceName(), 1 / force.newton());
    }
    if (kind == Kind.FORCES_AND_MOMENTS) {
      double[][] forces = export(person[3], person[4], person[2], sense);
      double[][] lever = export(person[0], person[1], null, 1);
      lever[axes.up().axis()] = new double[rows];
      add("F", number, forces, forceName(), 1 / force.newton());
      add("M", number, moments(lever, forces), momentName(), 1 / moment.newtonMm());
    }
  }

  /** From the person's directions to the export's x, y, z; null where there is nothing. */
  private double[][] export(double[] right, double[] anterior, double[] up, int sign) {
    double[][] xyz = new double[3][];
    put(xyz, axes.right(), right, sign);
    put(xyz, axes.anterior(), anterior, sign);
    put(xyz, axes.up(), up, sign);
    return xyz;
  }

  private static void put(double[][] xyz, Direction direction, double[] values, int sign) {
    if (values != null) {
      double[] turned = values.clone();
      for (int i = 0; i < turned.length; i++) {
        turned[i] *= direction.sign() * sign;
      }
      xyz[direction.axis()] = turned;
    }
  }

  /** (r - origin) x F, without a free moment. */
  private double[][] moments(double[][] r, double[][] f) {
    double[][] m = new double[3][rows];
    for (int i = 0; i < rows; i++) {
      double x = r[0][i] - origin[0];
      double y = r[1][i] - origin[1];
      double z = r[2][i] - origin[2];
      m[0][i] = y * f[2][i] - z * f[1][i];
      m[1][i] = z * f[0][i] - x * f[2][i];
      m[2][i] = x * f[1][i] - y * f[0][i];
    }
    return m;
  }

  private void add(String quantity, String number, double[][] xyz, String unit, double scale) {
    for (int axis = 0; axis < 3; axis++) {
      if (xyz[axis] != null) {
        double[] scaled = xyz[axis].clone();
        for (int i = 0; i < scaled.length; i++) {
          scaled[i] *= scale;
        }
        columns.add(new Column(quantity + "xyz".charAt(axis) + number, unit, scaled));
      }
    }
  }

  private String forceName() {
    return force == ForceUnit.N ? "N" : "kg";
  }

  private String momentName() {
    return moment == MomentUnit.N_M ? "N.m" : "N.mm";
  }

  private String lengthName() {
    return length == LengthUnit.INCH ? "inch" : length.name().toLowerCase(Locale.ROOT);
  }

  PlateDescription description() {
    Described described = new Described().axes(axes);
    boolean said = style != UnitStyle.NOWHERE;
    for (int plate = 1; plate <= truth.size(); plate++) {
      Described.Plate layout =
          new Described.Plate("plate " + plate)
              .at(0, 0)
              .trueOrigin(origin[0], origin[1], origin[2]);
      described.plate(said ? layout : layout.units(length, force, moment));
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
    boolean brackets = style == UnitStyle.BRACKETS && delimiter != Delimiter.BLANK;
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
      String none = delimiter == Delimiter.BLANK ? "-" : pick("", "-", "[-]");
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
    return String.format(Locale.ROOT, "%.8f", value).replace('.', mark.character());
  }

  String joined(List<String> cells) {
    return String.join(String.valueOf(delimiter.character()), cells);
  }

  char delimiter() {
    return delimiter.character();
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
