package caryatid.standing;

import caryatid.recording.model.Sampled;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.uncertainty.SampleStatistics;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Refuses what a dead or wrong channel leaves behind: a centre of pressure that stands still in one
 * direction, and a horizontal force that no standing person makes. Its numbers would look like any
 * others.
 */
final class DeadChannels {
  /**
   * Time between the checked parts of the stretch, s; a channel that is dead for longer is found.
   */
  private static final double STEP_S = 5;

  /** One of so many samples tells most often, and much faster, that a part is not dead. */
  private static final int EVERY = 8;

  private final Sampled recording;
  private final Limits limits;
  private final List<Problem> problems = new ArrayList<>();

  private DeadChannels(Sampled recording, Limits limits) {
    this.recording = recording;
    this.limits = limits;
  }

  /**
   * Looks at each plate.
   *
   * @param quiet the signals of the feet and the whole body, cut to the stretch
   * @throws BadInput with every plate and direction that is refused
   */
  static void refuse(List<LoadSignals> quiet, Sampled recording, Limits limits) throws BadInput {
    DeadChannels channels = new DeadChannels(recording, limits);
    quiet.stream().filter(signals -> !signals.plate.isEmpty()).forEach(channels::look);
    if (!channels.problems.isEmpty()) {
      throw new BadInput(channels.problems);
    }
  }

  private void look(LoadSignals signals) {
    if (signals.hasSideways()) {
      still(StandProblem.STILL_SIDEWAYS, signals, signals.rightMm);
    }
    still(StandProblem.STILL_FORE_AND_AFT, signals, signals.anteriorMm);
    if (signals.hasForce && signals.hasHorizontal()) {
      leaning(signals);
    }
  }

  private void still(StandProblem topic, LoadSignals signals, double[] mm) {
    int window = Math.min(mm.length, samples(limits.leastSdS()));
    double partS = window / recording.rateHz();
    double leastMm = limits.leastSdMm(partS);
    double sdMm = leastSd(mm, window, leastMm);
    if (!(sdMm >= leastMm)) {
      problem(
          topic,
          Argument.text(signals.plate),
          Argument.of(leastMm, Unit.PLAIN),
          Argument.of(partS, Unit.S),
          Argument.of(sdMm, Unit.PLAIN));
    }
  }

  /**
   * The smallest standard deviation in any part of a length, the last part included; where it is
   * not below {@code enoughMm}, any number that is not.
   */
  private double leastSd(double[] mm, int window, double enoughMm) {
    double least = sd(mm, mm.length - window, mm.length, enoughMm);
    for (int from = 0; from + window < mm.length; from += samples(STEP_S)) {
      least = Math.min(least, sd(mm, from, from + window, enoughMm));
    }
    return least;
  }

  private static double sd(double[] mm, int from, int to, double enoughMm) {
    return someMove(mm, from, to, enoughMm)
        ? enoughMm
        : SampleStatistics.roughDeviation(Arrays.copyOfRange(mm, from, to));
  }

  /**
   * Whether some samples alone deviate enough for all: the squares of all deviations, which are
   * from the mean of all, add up to no less.
   */
  private static boolean someMove(double[] mm, int from, int to, double enoughMm) {
    double[] some = new double[(to - from) / EVERY];
    for (int i = 0; i < some.length; i++) {
      some[i] = mm[from + EVERY * i];
    }
    return some.length > 1
        && SampleStatistics.covariance(some, some) * (some.length - 1)
            > enoughMm * enoughMm * (to - from);
  }

  private int samples(double seconds) {
    return Math.max(1, (int) Math.round(seconds * recording.rateHz()));
  }

  private void leaning(LoadSignals signals) {
    double upN = SampleStatistics.roughMean(signals.upN);
    double horizontalN =
        Math.hypot(
            SampleStatistics.roughMean(signals.pushRightN),
            SampleStatistics.roughMean(signals.pushAnteriorN));
    if (!(horizontalN <= limits.mostLean() * upN)) {
      problem(
          StandProblem.LEANING_FORCE,
          Argument.text(signals.plate),
          Argument.of(horizontalN, Unit.N),
          Argument.of(upN, Unit.N),
          Argument.of(100 * limits.mostLean(), Unit.PERCENT),
          Argument.of(100 * horizontalN / upN, Unit.PERCENT));
    }
  }

  private void problem(StandProblem topic, Argument... arguments) {
    problems.add(Problem.at(Place.of(recording.file()), topic, arguments));
  }
}
