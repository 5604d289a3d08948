package caryatid.standing;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sampled;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.uncertainty.SampleStatistics;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Refuses what one foot's plate shows of squatting and the like, and a whole body that is nobody's.
 * Where other plates bore the rest of the body, their sum tells it; where they did not, one foot's
 * force and centre of pressure must.
 *
 * <p>Limits of one foot: the largest of single feet (see {@link StandLimits}). Slow squats show at
 * least 13.0 %, 10.7 % and 32 mm (four traces of an openly licensed motion data set, computed).
 */
final class Squats {
  private static final double MOST_FORCE = 0.098;

  /** One foot's slower changes are load that moves between the feet, Hz. */
  private static final double SLOW_HZ = 0.4;

  /** The ends are continued by so many periods of the cutoff. */
  private static final double PERIODS = 4;

  private final Sampled recording;
  private final Limits limits;

  private Squats(Sampled recording, Limits limits) {
    this.recording = recording;
    this.limits = limits;
  }

  /**
   * @param quiet the traces of the feet and the whole body, cut to the stretch
   * @throws BadInput if it is not quiet standing, or nobody
   */
  static void refuse(
      List<LoadSignals> quiet, QuietStretch stretch, Sampled recording, Limits limits)
      throws BadInput {
    Squats squats = new Squats(recording, limits);
    for (LoadSignals signals : quiet) {
      if (signals.of == LoadLineOwner.WHOLE_BODY && signals.hasForce) {
        squats.light(signals.upN);
      }
    }
    LoadSignals only = quiet.get(0);
    if (quiet.size() == 1 && only.of != LoadLineOwner.WHOLE_BODY && only.hasForce) {
      squats.foot(only, stretch);
    }
  }

  private void light(double[] upN) throws BadInput {
    double kg = SampleStatistics.roughMean(upN) / ForceUnit.STANDARD_GRAVITY;
    if (!(kg >= StandLimits.LEAST_BODY_KG)) {
      throw bad(
          StandProblem.LIGHT_BODY,
          Argument.of(StandLimits.LEAST_BODY_KG, Unit.KG),
          Argument.of(kg, Unit.KG));
    }
  }

  private void foot(LoadSignals foot, QuietStretch stretch) throws BadInput {
    Optional<double[]> whole = whole(foot, stretch);
    if (whole.isPresent()) {
      light(whole.get());
      wholeBody(whole.get());
      return;
    }
    double meanN = SampleStatistics.mean(foot.upN);
    double force = SampleStatistics.standardDeviation(foot.upN) / meanN;
    double quick = SampleStatistics.standardDeviation(quick(foot.upN)) / meanN;
    double anteriorMm = SampleStatistics.standardDeviation(foot.anteriorMm);
    int beyond =
        (force > MOST_FORCE ? 1 : 0)
            + (quick > StandLimits.FOOT_VARIES_QUICKLY ? 1 : 0)
            + (anteriorMm > StandLimits.FOOT_SD_ANTERIOR_MM ? 1 : 0);
    if (beyond >= 2) {
      throw bad(
          StandProblem.MOVING,
          Argument.term(foot.of),
          Argument.of(100 * MOST_FORCE, Unit.PERCENT),
          Argument.of(100 * force, Unit.PERCENT),
          Argument.of(100 * StandLimits.FOOT_VARIES_QUICKLY, Unit.PERCENT),
          Argument.of(100 * quick, Unit.PERCENT),
          Argument.of(StandLimits.FOOT_SD_ANTERIOR_MM, Unit.MM),
          Argument.of(anteriorMm, Unit.MM));
    }
  }

  private void wholeBody(double[] upN) throws BadInput {
    double variation = SampleStatistics.standardDeviation(upN) / SampleStatistics.mean(upN);
    Limits.Force body = limits.wholeBody();
    if (variation > body.sd()) {
      throw bad(
          StandProblem.FORCE_UNSTEADY,
          Argument.term(LoadLineOwner.WHOLE_BODY),
          Argument.of(100 * body.sd(), Unit.PERCENT),
          Argument.of(100 * variation, Unit.PERCENT),
          Argument.of(100 * body.real(), Unit.PERCENT));
    }
  }

  /** The force of all plates, where others than the foot's bore the other foot all the time. */
  private Optional<double[]> whole(LoadSignals foot, QuietStretch stretch) {
    double[] sum = foot.upN.clone();
    for (PlateTrack plate : recording.plates()) {
      if (!plate.plate().equals(foot.plate) && bears(plate, stretch)) {
        Arrays.setAll(sum, i -> sum[i] + plate.upN().orElseThrow().at(stretch.fromIndex() + i));
      }
    }
    double share = 1 - SampleStatistics.mean(foot.upN) / SampleStatistics.mean(sum);
    return share > StandLimits.OTHER_FOOT ? Optional.of(sum) : Optional.empty();
  }

  private static boolean bears(PlateTrack plate, QuietStretch stretch) {
    return plate.upN().isPresent()
        && IntStream.range(stretch.fromIndex(), stretch.toIndex()).allMatch(plate.usable()::at);
  }

  private double[] quick(double[] upN) {
    int padding = (int) Math.ceil(PERIODS * recording.rateHz() / SLOW_HZ);
    double[] slow = Butterworth.twoPasses(SLOW_HZ, recording.rateHz()).zeroPhase(upN, padding);
    double[] quick = upN.clone();
    Arrays.setAll(quick, i -> upN[i] - slow[i]);
    return quick;
  }

  private BadInput bad(StandProblem topic, Argument... arguments) {
    return new BadInput(Problem.at(Place.of(recording.file()), topic, arguments));
  }
}
