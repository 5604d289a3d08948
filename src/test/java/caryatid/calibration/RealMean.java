package caryatid.calibration;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Stretch;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mean centre of pressure of a part of a stand, sway alone as its uncertainty.
 *
 * @param anteriorMm fore and aft, mm
 * @param rightMm sideways, mm
 */
record RealMean(Estimate anteriorMm, Estimate rightMm) {

  /** Equal parts of a stand, in order; those that are refused are left out. */
  static List<RealMean> parts(Recording stand, int count) {
    double lengthS = stand.timeS().size() / stand.rateHz() / count;
    List<RealMean> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      part(stand, new Stretch(i * lengthS, (i + 1) * lengthS)).ifPresent(parts::add);
    }
    return parts;
  }

  private static Optional<RealMean> part(Recording stand, Stretch stretch) {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            new Stance.BothFeetOnOnePlate(Optional.empty()),
            List.of(Side.RIGHT),
            OptionalDouble.empty(),
            new PlateAccuracy(0, 0, 0, 0),
            Optional.of(stretch));
    try {
      MeanLoad load =
          StandAnalysis.analyse(stand, conditions).load(LoadLineOwner.WHOLE_BODY).orElseThrow();
      return Optional.of(new RealMean(load.copAnteriorMm(), load.copRightMm().orElseThrow()));
    } catch (BadInput refused) {
      return Optional.empty();
    }
  }
}
