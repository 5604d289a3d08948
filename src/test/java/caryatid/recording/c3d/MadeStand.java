package caryatid.recording.c3d;

import caryatid.recording.c3d.MadeC3d.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.StringJoiner;

/**
 * An invented stand on two plates, one foot on each, whose forces and points are known in the
 * laboratory's axes: x anterior, y left, z up. Forces are multiples of 32 N and points of 4 mm, so
 * that every channel is a number that both integers and reals can hold.
 */
public final class MadeStand {
  /** Frames, each with two samples. */
  public static final int FRAMES = 600;

  public static final int PER_FRAME = 2;

  /** Half distances between the sensors of a plate of type 3, mm. */
  static final double A = 128;

  static final double B = 256;

  /** How deep the zero-moment point lies below the top, mm. */
  static final double DEPTH = 40;

  /** Centre of each plate in the laboratory, mm. */
  static final double[][] CENTRES = {{400, 400, 0}, {400, 700, 0}};

  /** A sample of a plate: point and force on the person in the laboratory's axes. */
  public record Load(double x, double y, double fx, double fy, double fz, double tz) {}

  /** The loads of each plate, one a sample. */
  public final List<List<Load>> loads = new ArrayList<>();

  private final int type;
  private final Made processor;
  private final boolean real;
  private final int frames;
  private boolean unsigned;
  private boolean onThePlate;
  private boolean metres;
  private double originSign = 1;

  public MadeStand(int type, Made processor, boolean real) {
    this(type, processor, real, FRAMES, 4, 32, 1);
  }

  /**
   * @param draws in how many steps, each taken or not, the vertical force differs
   */
  private MadeStand(
      int type, Made processor, boolean real, int frames, double stepMm, double stepN, int draws) {
    this.type = type;
    this.processor = processor;
    this.real = real;
    this.frames = frames;
    Random random = new Random(20);
    for (double[] centre : CENTRES) {
      List<Load> plate = new ArrayList<>();
      double x = centre[0] + 80;
      double y = centre[1] + 20;
      for (int i = 0; i < frames * PER_FRAME; i++) {
        x = between(centre[0] + 60, x + stepMm * (random.nextInt(3) - 1));
        y = between(centre[1], y + stepMm * (random.nextInt(3) - 1));
        double fx = stepN * random.nextInt(2);
        double fy = stepN * random.nextInt(2);
        double fz = 416 + stepN * Integer.bitCount(random.nextInt(1 << draws));
        plate.add(new Load(x, y, fx, fy, fz, 4 * stepN * random.nextInt(3)));
      }
      loads.add(plate);
    }
  }

  private static double between(double lowest, double value) {
    return Math.max(lowest, Math.min(lowest + 40, value));
  }

  /**
   * One that is as calm as people stand, long enough for a check: 20 s on plates of type 2, written
   * as reals, which hold it exactly.
   */
  public static MadeStand calm() {
    return new MadeStand(2, Made.INTEL, true, 2000, 0.125, 0.25, 12);
  }

  public MadeStand unsigned() {
    unsigned = true;
    return this;
  }

  /** Channels hold the force on the plate. */
  public MadeStand onThePlate() {
    onThePlate = true;
    return this;
  }

  /** Lengths in metres, moments in newton-metres. */
  public MadeStand metres() {
    metres = true;
    return this;
  }

  /** {@code ORIGIN} with its sign turned. */
  public MadeStand reversedOrigin() {
    originSign = -1;
    return this;
  }

  private int perPlate() {
    return type == 3 ? 8 : 6;
  }

  private double length() {
    return metres ? 0.001 : 1;
  }

  /**
   * The same stand as a text: each plate's force and moment about its zero-moment point along the
   * laboratory's axes, in N and N mm, one line a sample. By statics from the loads, not by way of
   * the channels.
   */
  public String csv() {
    StringBuilder csv = new StringBuilder("Fx1,Fy1,Fz1,Mx1,My1,Mz1,Fx2,Fy2,Fz2,Mx2,My2,Mz2\n");
    for (int i = 0; i < loads.get(0).size(); i++) {
      StringJoiner line = new StringJoiner(",", "", "\n");
      for (int plate = 0; plate < 2; plate++) {
        for (double value : alongTheLaboratory(loads.get(plate).get(i), CENTRES[plate])) {
          line.add(Double.toString(value));
        }
      }
      csv.append(line);
    }
    return csv.toString();
  }

  private static double[] alongTheLaboratory(Load load, double[] centre) {
    double x = load.x() - centre[0];
    double y = load.y() - centre[1];
    return new double[] {
      load.fx(),
      load.fy(),
      load.fz(),
      y * load.fz() - DEPTH * load.fy(),
      DEPTH * load.fx() - x * load.fz(),
      x * load.fy() - y * load.fx() + load.tz()
    };
  }

  /** The file, to which more can be added. */
  public MadeC3d file() {
    MadeC3d made = new MadeC3d(processor, real);
    int channels = 2 * perPlate();
    made.integers("POINT:USED", 8)
        .integers("POINT:FRAMES", frames)
        .reals("POINT:SCALE", real ? -length() : 0.25 * length())
        .reals("POINT:RATE", 100)
        .texts("POINT:UNITS", metres ? "m" : "mm")
        .texts("POINT:LABELS", "RHEE", "RTOE", "RKNE", "RANK", "LHEE", "LTOE", "LKNE", "LANK")
        .integers("ANALOG:USED", channels)
        .reals("ANALOG:RATE", 100 * PER_FRAME)
        .reals("ANALOG:GEN_SCALE", 0.5)
        .texts("ANALOG:FORMAT", unsigned ? "UNSIGNED" : "SIGNED")
        .texts("ANALOG:UNITS", units())
        .integers("FORCE_PLATFORM:USED", 2)
        .integers("FORCE_PLATFORM:TYPE", type, type)
        .integers("FORCE_PLATFORM:ZERO", 1, 0)
        .numbers("FORCE_PLATFORM:CORNERS", 4, new int[] {3, 4, 2}, corners())
        .numbers("FORCE_PLATFORM:ORIGIN", 4, new int[] {3, 2}, origins());
    double[] numbers = new double[channels];
    for (int i = 0; i < channels; i++) {
      numbers[i] = i + 1;
    }
    made.numbers("FORCE_PLATFORM:CHANNEL", 2, new int[] {perPlate(), 2}, numbers);
    if (type == 4) {
      made.numbers("FORCE_PLATFORM:CAL_MATRIX", 4, new int[] {6, 6, 2}, matrices());
    }
    double[] scale = new double[channels];
    double[] offset = new double[channels];
    for (int i = 0; i < channels; i++) {
      scale[i] = scale(i % perPlate());
      offset[i] = unsigned ? 32768 : 3 * i;
    }
    made.reals("ANALOG:SCALE", scale);
    made.integers("ANALOG:OFFSET", offset);
    made.scaling(scale, offset, 0.5, unsigned);
    return made.data(markers(), samples(), PER_FRAME);
  }

  /** A power of two, small enough for the channel's numbers and large enough for sixteen bits. */
  private double scale(int channel) {
    boolean moment = channel >= 3 && type == 2;
    return type == 1
        ? 0.25
        : type == 3 ? 0.0625 : type == 4 ? 0.03125 : moment ? scaleOfMoment() : 0.5;
  }

  private double scaleOfMoment() {
    return metres ? 0.0078125 : 8;
  }

  private String[] units() {
    String[] units = new String[2 * perPlate()];
    for (int i = 0; i < units.length; i++) {
      int channel = i % perPlate();
      String second = type == 1 ? (metres ? "m" : "mm") : metres ? "Nm" : "Nmm";
      units[i] = type == 4 ? "V" : type == 3 || channel < 3 ? "N" : second;
    }
    if (type == 1) {
      units[5] = "Nmm";
      units[11] = "Nmm";
    }
    return units;
  }

  /**
   * Corners of plates whose x axis is the laboratory's y, whose y axis is its x, and whose z axis
   * points down.
   */
  private double[] corners() {
    double[] all = new double[24];
    double[][] quadrants = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    for (int plate = 0; plate < 2; plate++) {
      for (int corner = 0; corner < 4; corner++) {
        int at = 12 * plate + 3 * corner;
        all[at] = (CENTRES[plate][0] + 250 * quadrants[corner][1]) * length();
        all[at + 1] = (CENTRES[plate][1] + 140 * quadrants[corner][0]) * length();
        all[at + 2] = CENTRES[plate][2] * length();
      }
    }
    return all;
  }

  private double[] origins() {
    double a = type == 3 ? A : 0;
    double b = type == 3 ? B : 0;
    double z = -DEPTH * originSign;
    double[] origins = {a, b, z, a, b, z};
    for (int i = 0; i < 6; i++) {
      origins[i] *= length();
    }
    return origins;
  }

  private List<double[]> samples() {
    List<double[]> samples = new ArrayList<>();
    for (int i = 0; i < frames * PER_FRAME; i++) {
      double[] sample = new double[2 * perPlate()];
      for (int plate = 0; plate < 2; plate++) {
        double[] channels = channels(loads.get(plate).get(i), CENTRES[plate]);
        System.arraycopy(channels, 0, sample, plate * perPlate(), perPlate());
      }
      samples.add(sample);
    }
    return samples;
  }

  /** What a plate's channels show of a load, by statics. */
  private double[] channels(Load load, double[] centre) {
    double sign = onThePlate ? -1 : 1;
    // The plate's axes: x is the laboratory's y, y its x, z down.
    double fx = sign * load.fy();
    double fy = sign * load.fx();
    double fz = -sign * load.fz();
    double px = load.y() - centre[1];
    double py = load.x() - centre[0];
    double pz = -DEPTH;
    double tz = -sign * load.tz();
    double mx = py * fz - pz * fy;
    double my = pz * fx - px * fz;
    double mz = px * fy - py * fx + tz;
    return switch (type) {
      case 1 -> new double[] {fx, fy, fz, px * length(), py * length(), tz};
      case 2 -> {
        double m = length();
        yield new double[] {fx, fy, fz, mx * m, my * m, mz * m};
      }
      case 3 -> sensors(fx, fy, fz, mx, my, mz);
      default -> volts(new double[] {fx, fy, fz, mx * length(), my * length(), mz * length()});
    };
  }

  private static double[] sensors(
      double fx, double fy, double fz, double mx, double my, double mz) {
    double x = mx / B;
    double y = my / A;
    return new double[] {
      fx / 2 - mz / (2 * B),
      fx / 2 + mz / (2 * B),
      fy / 2,
      fy / 2,
      (fz + x - y) / 4,
      (fz + x + y) / 4,
      (fz - x + y) / 4,
      (fz - x - y) / 4
    };
  }

  /** Upper triangular, so that rows and columns are not exchanged unnoticed. */
  private double[][] matrix() {
    double moment = 256 * length();
    return new double[][] {
      {4, 1, 0, 0, 0, 0},
      {0, 4, 0, 0, 0, 0},
      {0, 0, 8, 0, 0, 0},
      {0, 0, 0, moment, moment, 0},
      {0, 0, 0, 0, moment, 0},
      {0, 0, 0, 0, 0, moment}
    };
  }

  private double[] volts(double[] load) {
    double[][] c = matrix();
    double[] v = new double[6];
    for (int row = 5; row >= 0; row--) {
      double rest = load[row];
      for (int column = row + 1; column < 6; column++) {
        rest -= c[row][column] * v[column];
      }
      v[row] = rest / c[row][row];
    }
    return v;
  }

  private double[] matrices() {
    double[] all = new double[72];
    for (int plate = 0; plate < 2; plate++) {
      for (int column = 0; column < 6; column++) {
        for (int row = 0; row < 6; row++) {
          all[36 * plate + 6 * column + row] = matrix()[row][column];
        }
      }
    }
    return all;
  }

  /**
   * Right foot on plate 1, left foot on plate 2; the right knee marker is unseen in every tenth
   * frame.
   */
  private List<double[][]> markers() {
    List<double[][]> all = new ArrayList<>();
    for (int frame = 0; frame < frames; frame++) {
      double[][] frameOf = new double[8][];
      for (int side = 0; side < 2; side++) {
        double y = CENTRES[side][1] + 20;
        double sway = frame % 2 == 0 ? 1 : -1;
        frameOf[4 * side] = marker(340, y, 40);
        frameOf[4 * side + 1] = marker(540, y, 30);
        frameOf[4 * side + 2] = marker(460 + sway, y, 450);
        frameOf[4 * side + 3] = marker(400, y, 80);
      }
      if (frame % 10 == 0) {
        frameOf[2] = new double[] {0, 0, 0, 0};
      }
      all.add(frameOf);
    }
    return all;
  }

  private double[] marker(double x, double y, double z) {
    return new double[] {x * length(), y * length(), z * length(), 0};
  }
}
