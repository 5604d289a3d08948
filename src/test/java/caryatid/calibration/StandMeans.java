package caryatid.calibration;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.samples.Noise;
import caryatid.samples.Person;
import caryatid.samples.Stand;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How often the stated interval of one stand's mean holds the stand's long-run mean, fore and aft,
 * with plates that make no error: sway alone.
 *
 * @param runs stands that gave a result
 * @param refused stands that were refused
 * @param covered intervals that held the long-run mean
 * @param halfWidthSumMm sum of the half-widths, mm
 */
record StandMeans(int runs, int refused, int covered, double halfWidthSumMm) {
  private static final Errors NO_ERRORS =
      new Errors(new double[4], new double[2], new double[2], 0, new double[2], 0);
  private static final StandMeans REFUSED = new StandMeans(0, 1, 0, 0);

  /** Simulates stands of a family in a clinic; the same seed gives the same counts. */
  static StandMeans of(Family family, Clinic clinic, int runs, long seed) {
    return IntStream.range(0, runs)
        .parallel()
        .mapToObj(i -> one(family, clinic, new Noise(seed + i)))
        .reduce(new StandMeans(0, 0, 0, 0), StandMeans::plus);
  }

  private static StandMeans one(Family family, Clinic clinic, Noise noise) {
    Person person = Wearer.draw(family, noise.split()).person();
    Stand stand = Stand.of(person, clinic.samples(), clinic.rateHz(), noise.split());
    Recording recording = Measured.recording(stand, clinic.plates(), NO_ERRORS);
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            Sheet.stance(clinic),
            List.of(Side.RIGHT),
            OptionalDouble.empty(),
            new PlateAccuracy(0, 0, 0, 0),
            Optional.empty());
    try {
      Standing standing = StandAnalysis.analyse(recording, conditions);
      Estimate mean = standing.load(LoadLineOwner.RIGHT_FOOT).orElseThrow().copAnteriorMm();
      double half = mean.expanded(0.95);
      boolean covered = StrictMath.abs(mean.value() - person.right().anteriorMm()) <= half;
      return new StandMeans(1, 0, covered ? 1 : 0, half);
    } catch (BadInput refused) {
      return REFUSED;
    }
  }

  private StandMeans plus(StandMeans other) {
    return new StandMeans(
        runs + other.runs,
        refused + other.refused,
        covered + other.covered,
        halfWidthSumMm + other.halfWidthSumMm);
  }

  /** Mean half-width, mm. */
  double halfWidthMm() {
    return halfWidthSumMm / runs;
  }

  /** Intervals that held the long-run mean, %. */
  double coverage() {
    return 100.0 * covered / runs;
  }
}
