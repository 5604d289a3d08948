package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import java.util.ArrayList;
import java.util.List;

/**
 * What {@code FORCE_PLATFORM} says of one plate.
 *
 * @param number its number in the file, from 1
 * @param type 1 to 4
 * @param frame its place, mm
 * @param originMm {@code ORIGIN} as it is written
 * @param channels its channels, counted from 1
 * @param calibration the matrix of a plate of type 4, column after column; else empty
 */
record PlateSpec(
    int number,
    int type,
    PlateFrame frame,
    LabVector originMm,
    List<Integer> channels,
    List<Double> calibration) {
  private static final int MOST_PLATES = 64;

  PlateSpec {
    channels = List.copyOf(channels);
    calibration = List.copyOf(calibration);
  }

  /** The name that plates of a file have. */
  static String name(int number) {
    return "plate " + number;
  }

  /** How many plates the file states. */
  static int count(C3dParameters parameters) throws C3dFault {
    double used = parameters.count("FORCE_PLATFORM:USED").orElse(0);
    if (!(used >= 1)) {
      throw new C3dFault(ImportProblem.MOTION_FILE);
    }
    if (used > MOST_PLATES) {
      throw C3dFault.damaged("FORCE_PLATFORM:USED");
    }
    return (int) used;
  }

  /** The corners of a plate in the file's unit of length. */
  static List<LabVector> corners(C3dParameters parameters, int number) throws C3dFault {
    List<Double> all = block(parameters, "FORCE_PLATFORM:CORNERS", 12, number);
    List<LabVector> corners = new ArrayList<>();
    for (int i = 0; i < 12; i += 3) {
      corners.add(new LabVector(all.get(i), all.get(i + 1), all.get(i + 2)));
    }
    return corners;
  }

  /**
   * A plate.
   *
   * @param unitMm millimetres in the file's unit of length
   */
  static PlateSpec read(C3dParameters parameters, int number, double unitMm) throws C3dFault {
    List<Double> types = parameters.numbers("FORCE_PLATFORM:TYPE");
    if (types.size() < number) {
      throw C3dFault.damaged("FORCE_PLATFORM:TYPE");
    }
    double type = types.get(number - 1);
    if (type != 1 && type != 2 && type != 3 && type != 4) {
      throw new C3dFault(
          ImportProblem.MOTION_TYPE, Argument.text(name(number)), Argument.count(Math.round(type)));
    }
    List<Double> origin = block(parameters, "FORCE_PLATFORM:ORIGIN", 3, number);
    List<LabVector> corners =
        corners(parameters, number).stream().map(corner -> corner.times(unitMm)).toList();
    return new PlateSpec(
        number,
        (int) type,
        PlateFrame.of(corners)
            .orElseThrow(
                () -> new C3dFault(ImportProblem.MOTION_CORNERS, Argument.text(name(number)))),
        new LabVector(origin.get(0), origin.get(1), origin.get(2)).times(unitMm),
        channels(parameters, number, type == 3 ? 8 : 6),
        type == 4 ? block(parameters, "FORCE_PLATFORM:CAL_MATRIX", 36, number) : List.of());
  }

  /**
   * The channels of a plate; in a file with plates of several types each has a column of the
   * longest.
   */
  private static List<Integer> channels(C3dParameters parameters, int number, int needed)
      throws C3dFault {
    List<Integer> dimensions = parameters.dimensions("FORCE_PLATFORM:CHANNEL");
    int column = dimensions.isEmpty() ? 1 : dimensions.get(0);
    if (column < needed) {
      throw C3dFault.damaged("FORCE_PLATFORM:CHANNEL");
    }
    return block(parameters, "FORCE_PLATFORM:CHANNEL", column, number).stream()
        .limit(needed)
        .map(Double::intValue)
        .toList();
  }

  private static List<Double> block(C3dParameters parameters, String name, int length, int number)
      throws C3dFault {
    List<Double> all = parameters.numbers(name);
    int from = (number - 1) * length;
    if (all.size() < from + length) {
      throw C3dFault.damaged(name);
    }
    List<Double> block = all.subList(from, from + length);
    if (block.stream().anyMatch(value -> !Double.isFinite(value))) {
      throw C3dFault.damaged(name);
    }
    return block;
  }
}
