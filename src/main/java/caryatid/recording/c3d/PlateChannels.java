package caryatid.recording.c3d;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.RawUnit;
import caryatid.remark.Argument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One plate's force, and its moment about its own zero-moment point or its centre of pressure,
 * along the laboratory's axes.
 */
final class PlateChannels {
  /**
   * Three columns of a quantity along x, y and z of the laboratory.
   *
   * @param unit as the file states it, or as computed; empty where it does not say
   */
  record Columns(Quantity quantity, List<double[]> values, String unit) {
    Columns {
      values = List.copyOf(values);
    }

    Channel channel(int index) {
      return Channel.values()[3 * quantity.ordinal() + index];
    }
  }

  private final PlateSpec plate;
  private final AnalogChannels analog;
  private final LengthUnit length;
  private final Optional<ForceUnit> described;

  /**
   * @param described the unit of force that a description states, for a file that states none
   */
  PlateChannels(
      PlateSpec plate, AnalogChannels analog, LengthUnit length, Optional<ForceUnit> described) {
    this.plate = plate;
    this.analog = analog;
    this.length = length;
    this.described = described;
  }

  List<Columns> read() throws C3dFault {
    List<double[]> raw = new ArrayList<>();
    for (int channel : plate.channels()) {
      if (!analog.has(channel)) {
        throw fault(ImportProblem.MOTION_CHANNEL, channel);
      }
      raw.add(analog.values(channel));
    }
    refuseDead(raw);
    return switch (plate.type()) {
      case 1 -> List.of(forces(raw), pressure(raw));
      case 2 -> List.of(forces(raw), moments(raw));
      case 3 -> bySensors(raw);
      default -> byMatrix(raw);
    };
  }

  private Columns forces(List<double[]> raw) throws C3dFault {
    return columns(Quantity.FORCE, raw, 0, text -> ForceUnit.named(text).map(ForceUnit::newton));
  }

  private Columns moments(List<double[]> raw) throws C3dFault {
    return columns(
        Quantity.MOMENT, raw, 3, text -> MomentUnit.named(text).map(MomentUnit::newtonMm));
  }

  /** The centre of pressure of a plate of type 1, from the plate's centre. */
  private Columns pressure(List<double[]> raw) throws C3dFault {
    String unit = unit(3, 2, text -> LengthUnit.named(text).map(LengthUnit::mm));
    List<double[]> scaled = scaled(raw, 3, 2, unit, t -> LengthUnit.named(t).map(LengthUnit::mm));
    scaled.add(new double[raw.get(0).length]);
    return new Columns(Quantity.COP, rotated(scaled), unit.equals(MIXED) ? "mm" : unit);
  }

  private Columns columns(
      Quantity quantity, List<double[]> raw, int from, Function<String, Optional<Double>> factor)
      throws C3dFault {
    String unit = unit(from, 3, factor);
    String base = quantity == Quantity.FORCE ? "N" : "N mm";
    List<double[]> scaled = scaled(raw, from, 3, unit, factor);
    return new Columns(quantity, rotated(scaled), unit.equals(MIXED) ? base : unit);
  }

  /** What stands for several known units, which are converted to the first of their kind. */
  private static final String MIXED = "mixed";

  /** The one unit of some channels; {@link #MIXED} where they have several that are all known. */
  private String unit(int from, int count, Function<String, Optional<Double>> factor)
      throws C3dFault {
    List<String> units =
        plate.channels().subList(from, from + count).stream()
            .map(channel -> analog.unit(channel).orElse(""))
            .distinct()
            .toList();
    if (units.size() == 1) {
      return units.get(0);
    }
    if (units.stream().anyMatch(unit -> factor.apply(unit).isEmpty())) {
      throw new C3dFault(
          ImportProblem.MOTION_UNITS,
          Argument.text(PlateSpec.name(plate.number())),
          Argument.text(String.join(", ", units)));
    }
    return MIXED;
  }

  private List<double[]> scaled(
      List<double[]> raw,
      int from,
      int count,
      String unit,
      Function<String, Optional<Double>> factor) {
    List<double[]> scaled = new ArrayList<>();
    for (int i = from; i < from + count; i++) {
      double times =
          unit.equals(MIXED) ? analog.unit(plate.channels().get(i)).flatMap(factor).orElse(1.0) : 1;
      scaled.add(combined(raw.get(0).length, List.of(raw.get(i)), times));
    }
    return scaled;
  }

  /**
   * Four sensors of three axes: Fx = fx12 + fx34, Fy = fy14 + fy23, Fz their sum, Mx = b (fz1 + fz2
   * - fz3 - fz4), My = a (-fz1 + fz2 + fz3 - fz4), Mz = b (-fx12 + fx34) + a (fy14 - fy23), with a
   * and b the first two numbers of {@code ORIGIN} (c3d.org, "TYPE-3").
   */
  private List<Columns> bySensors(List<double[]> raw) throws C3dFault {
    double a = plate.originMm().x();
    double b = plate.originMm().y();
    if (!(a > 0) || !(b > 0)) {
      throw fault(ImportProblem.MOTION_SENSORS, plate.number());
    }
    String text = unit(0, 8, t -> ForceUnit.named(t).map(ForceUnit::newton));
    Optional<ForceUnit> known = text.isEmpty() ? described : ForceUnit.named(text);
    List<double[]> f = scaled(raw, 0, 8, text, t -> ForceUnit.named(t).map(ForceUnit::newton));
    int size = raw.get(0).length;
    double newton = known.map(ForceUnit::newton).orElse(1.0);
    double[] fx = combined(size, f.subList(0, 2), newton, newton);
    double[] fy = combined(size, f.subList(2, 4), newton, newton);
    double[] fz = combined(size, f.subList(4, 8), newton, newton, newton, newton);
    double an = a * newton;
    double bn = b * newton;
    double[] mx = combined(size, f.subList(4, 8), bn, bn, -bn, -bn);
    double[] my = combined(size, f.subList(4, 8), -an, an, an, -an);
    double[] mz = combined(size, f.subList(0, 4), -bn, bn, an, -an);
    boolean newtons = known.isPresent() || text.equals(MIXED);
    return List.of(
        new Columns(Quantity.FORCE, rotated(List.of(fx, fy, fz)), newtons ? "N" : text),
        new Columns(
            Quantity.MOMENT,
            rotated(List.of(mx, my, mz)),
            RawUnit.named(text).isPresent() ? text : "N mm"));
  }

  /** Six channels in volts by the matrix, whose moments are in newtons times the unit of length. */
  private List<Columns> byMatrix(List<double[]> raw) throws C3dFault {
    for (int channel : plate.channels()) {
      String unit = analog.unit(channel).orElse("V");
      if (!unit.equalsIgnoreCase("V") && !unit.equalsIgnoreCase("volt")) {
        throw new C3dFault(
            ImportProblem.MOTION_VOLTS,
            Argument.text(PlateSpec.name(plate.number())),
            Argument.text(unit));
      }
    }
    List<double[]> out = new ArrayList<>();
    for (int row = 0; row < 6; row++) {
      double[] factors = new double[6];
      for (int column = 0; column < 6; column++) {
        factors[column] = plate.calibration().get(6 * column + row) * (row < 3 ? 1 : length.mm());
      }
      out.add(combined(raw.get(0).length, raw, factors));
    }
    return List.of(
        new Columns(Quantity.FORCE, rotated(out.subList(0, 3)), "N"),
        new Columns(Quantity.MOMENT, rotated(out.subList(3, 6)), "N mm"));
  }

  private static double[] combined(int size, List<double[]> series, double... factors) {
    double[] sum = new double[size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < factors.length; k++) {
        sum[i] += factors[k] * series.get(k)[i];
      }
    }
    return sum;
  }

  /** Series along the plate's axes, along the laboratory's. */
  private List<double[]> rotated(List<double[]> plates) {
    int size = plates.get(0).length;
    List<LabVector> axes = List.of(plate.frame().x(), plate.frame().y(), plate.frame().z());
    List<double[]> lab = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      lab.add(
          combined(
              size,
              plates,
              axes.get(0).along(axis),
              axes.get(1).along(axis),
              axes.get(2).along(axis)));
    }
    return lab;
  }

  /**
   * A channel that stands still while others of its plate move is dead; the moment about the
   * vertical is not needed. One of a plate on which nothing moves is none.
   */
  private void refuseDead(List<double[]> raw) throws C3dFault {
    boolean moves = raw.stream().anyMatch(values -> !still(values));
    boolean level = plate.type() <= 2;
    for (int i = 0; moves && i < (level ? 5 : raw.size()); i++) {
      boolean horizontal = level && i < 2 && (plate.type() == 1 || plate.originMm().z() == 0);
      if (!horizontal && still(raw.get(i))) {
        throw fault(ImportProblem.MOTION_DEAD, plate.channels().get(i));
      }
    }
  }

  private static boolean still(double[] values) {
    for (double value : values) {
      if (value != values[0]) {
        return false;
      }
    }
    return true;
  }

  private C3dFault fault(ImportProblem problem, int channel) {
    return new C3dFault(
        problem, Argument.text(PlateSpec.name(plate.number())), Argument.count(channel));
  }
}
