package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which foot markers show on which plate, against the stance. */
final class MarkedFeet {
  private MarkedFeet() {}

  /**
   * Refuses a stance that markers contradict. A foot without markers on a plate contradicts none.
   *
   * @param prosthetic the prosthetic sides
   */
  static void refuse(Recording recording, Stance stance, List<Side> prosthetic) throws BadInput {
    Map<Side, String> stated = stated(recording, stance, prosthetic);
    List<Problem> problems = new ArrayList<>();
    for (Side side : Side.values()) {
      Optional<String> marked = Optional.ofNullable(recording.markers().feet().get(side));
      if (marked.filter(plate -> contradicts(side, plate, stated)).isPresent()) {
        problems.add(
            Problem.at(
                Place.of(recording.file()),
                StandProblem.FEET_BY_MARKERS,
                Argument.term(side),
                Argument.text(marked.get())));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  /** A foot that the stance does not place may be on any plate but the other foot's. */
  private static boolean contradicts(Side side, String marked, Map<Side, String> stated) {
    String plate = stated.get(side);
    boolean free = plate == null && !stated.containsValue(marked);
    return !stated.isEmpty() && !free && !marked.equals(plate);
  }

  private static Map<Side, String> stated(
      Recording recording, Stance stance, List<Side> prosthetic) {
    Map<Side, String> stated = new EnumMap<>(Side.class);
    if (stance instanceof Stance.PlatePerFoot feet) {
      stated.put(Side.LEFT, feet.leftPlate());
      stated.put(Side.RIGHT, feet.rightPlate());
    } else if (stance instanceof Stance.BothFeetOnOnePlate both) {
      String plate = named(recording, both.plate());
      stated.put(Side.LEFT, plate);
      stated.put(Side.RIGHT, plate);
    } else if (stance instanceof Stance.ProstheticFootOnPlate one && prosthetic.size() == 1) {
      stated.put(prosthetic.get(0), named(recording, one.plate()));
    }
    return stated;
  }

  private static String named(Recording recording, Optional<String> plate) {
    return plate
        .or(() -> recording.plates().stream().map(PlateTrack::plate).findFirst())
        .orElse("");
  }
}
