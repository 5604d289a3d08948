package caryatid.recording.c3d;

import caryatid.geometry.Side;
import caryatid.recording.model.BodyPoint;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which foot was on which plate: the only one that heel and toe markers are above.
 *
 * @param plates the plates' names by the feet of which that is known
 */
record FeetOnPlates(Map<Side, String> plates) {
  /**
   * A foot's markers may stick out beyond the plate by so much, mm (common practice, no source).
   */
  private static final double BESIDE_MM = 20;

  FeetOnPlates {
    plates = Map.copyOf(plates);
  }

  static FeetOnPlates of(Facing markers, List<MotionPlate> plates) {
    Map<Side, String> feet = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      Optional<LabVector> heel = markers.mean(side, BodyPoint.HEEL);
      Optional<LabVector> toe = markers.mean(side, BodyPoint.TOE);
      List<MotionPlate> under =
          plates.stream().filter(plate -> covers(plate, heel) && covers(plate, toe)).toList();
      if (under.size() == 1) {
        feet.put(side, under.get(0).name());
      }
    }
    return new FeetOnPlates(feet);
  }

  private static boolean covers(MotionPlate plate, Optional<LabVector> marker) {
    return marker.filter(place -> plate.spec().frame().covers(place, BESIDE_MM)).isPresent();
  }

  StageMessages facts(String file) {
    StageMessages facts = StageMessages.none(file);
    for (Side side : Side.values()) {
      if (plates.containsKey(side)) {
        facts =
            facts.withFact(
                ImportFact.MOTION_FOOT,
                Basis.CONCLUDED,
                Argument.term(side),
                Argument.text(plates.get(side)));
      }
    }
    return facts;
  }
}
