package caryatid.recording.importer;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A known stand on one plate or several, as columns with random units, axes and channels. */
final class RandomStand {
  /** Which channels are written. */
  private enum Kind {
    COP_AND_FORCE,
    COP_ALONE,
    FORCES_AND_MOMENTS
  }

  /** A column of numbers as a file holds it; without a unit where it has none. */
  record Column(String name, String unit, double[] values) {}

  private final Random random;
  private final int rows;
  private final List<double[][]> truth = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private final Kind kind;
  private final Axes axes;
  private final ForceUnit force;
  private final MomentUnit moment;
  private final LengthUnit length;
  private final double[] origin;
  private final int sense;

  RandomStand(Random random, int rows, int plates) {
    this.random = random;
    this.rows = rows;
    kind = pick(Kind.values());
    axes = drawnAxes();
    force = pick(ForceUnit.values());
    moment = pick(MomentUnit.values());
    length = pick(LengthUnit.values());
    sense = random.nextBoolean() ? 1 : -1;
    origin = new double[] {random.nextInt(9) - 4, random.nextInt(9) - 4, random.nextInt(9) - 4};
    origin[axes.up().axis().ordinal()] = -axes.up().sign() * random.nextInt(60);
    for (int plate = 1; plate <= plates; plate++) {
      plate(plates == 1 ? "" : String.valueOf(plate));
    }
  }

  /**
   * Each plate's series: to the right, anterior, up, horizontal force to the right and anterior.
   */
  List<double[][]> truth() {
    return truth;
  }

  List<Column> columns() {
    return columns;
  }

  Axes axes() {
    return axes;
  }

  /**
   * What a description says of a plate.
   *
   * @param unitsSaid whether the file states the units, so that the description need not
   */
  Described.Plate layout(int plate, boolean unitsSaid) {
    Described.Plate layout =
        new Described.Plate("plate " + plate).at(0, 0).trueOrigin(origin[0], origin[1], origin[2]);
    return unitsSaid ? layout : layout.units(length, force, moment);
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** Any of the 24 right-handed frames. */
  private Axes drawnAxes() {
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
      lever[axes.up().axis().ordinal()] = new double[rows];
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
      xyz[direction.axis().ordinal()] = turned;
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
}
