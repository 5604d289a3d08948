package caryatid.standing;

import caryatid.recording.model.Sampled;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.standing.UnusedPart.Reason;
import caryatid.uncertainty.SampleStatistics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Selects the part of a recording that is used, or says why none can be. */
final class StretchSelector {
  private final Sampled recording;
  private final StanceSignals all;
  private final Limits limits;

  StretchSelector(Sampled recording, StanceSignals all, Limits limits) {
    this.recording = recording;
    this.all = all;
    this.limits = limits;
  }

  /** The part the user set, or else the longest eligible one. */
  QuietStretch settle(Optional<Stretch> byHand) throws BadInput {
    QuietStretch stretch = byHand.isPresent() ? cut(byHand.get()) : search();
    for (LoadSignals signals : all.cut(stretch.fromIndex(), stretch.toIndex())) {
      steady(signals);
    }
    return stretch;
  }

  private QuietStretch search() throws BadInput {
    if (all.usable().count() == 0) {
      throw bad(StandProblem.NOTHING_USABLE);
    }
    QuietStretchFinder.FoundStretch found = QuietStretchFinder.in(all, recordedS(), limits);
    QuietStretch stretch =
        stretch(
            found.fromIndex(),
            Math.max(found.fromIndex() + 1, found.toIndex()),
            false,
            found.leftOut());
    if (found.toIndex() - found.fromIndex() < StandLimits.FEWEST_SAMPLES
        || stretch.durationS() < limits.shortestS()) {
      throw tooShort(stretch, found);
    }
    return stretch;
  }

  private BadInput tooShort(QuietStretch stretch, QuietStretchFinder.FoundStretch found) {
    for (LoadSignals signals : all.all()) {
      double variation = variation(loaded(signals));
      if (variation > limits.of(signals.of).sd()) {
        return unsteady(signals, variation);
      }
    }
    double foundS = found.toIndex() > found.fromIndex() ? stretch.durationS() : 0;
    return mainReason(found.leftOut())
        .map(
            reason ->
                bad(
                    StandProblem.TOO_SHORT,
                    Argument.of(limits.shortestS(), Unit.S),
                    Argument.of(foundS, Unit.S),
                    Argument.term(reason)))
        .orElseGet(
            () ->
                bad(
                    StandProblem.SHORT_RECORDING,
                    Argument.of(limits.shortestS(), Unit.S),
                    Argument.of(foundS, Unit.S)));
  }

  /** What keeps the most from being used; that a part is shorter than another keeps none. */
  private static Optional<Reason> mainReason(List<QuietStretchFinder.Run> leftOut) {
    return leftOut.stream()
        .filter(run -> run.reason() != Reason.SHORTER_STRETCH)
        .max(Comparator.comparingInt(run -> run.toIndex() - run.fromIndex()))
        .map(QuietStretchFinder.Run::reason);
  }

  private QuietStretch cut(Stretch byHand) throws BadInput {
    // Half a sample earlier and later: a rate that follows from rounded times is never quite even.
    double halfS = 0.5 / recording.rateHz();
    int from = firstAt(byHand.fromS() - halfS);
    int to = from;
    while (to < recording.size() && recording.timeS(to) <= byHand.toS() + halfS) {
      if (!all.usable().at(to)) {
        throw bad(StandProblem.GAP_BY_HAND, Argument.of(recording.timeS(to), Unit.S));
      }
      to++;
    }
    double durationS = to > from ? recording.timeS(to - 1) - recording.timeS(from) : 0;
    if (to - from < StandLimits.FEWEST_SAMPLES || durationS < limits.shortestS()) {
      throw bad(
          StandProblem.TOO_SHORT_BY_HAND,
          Argument.of(limits.shortestS(), Unit.S),
          Argument.of(durationS, Unit.S),
          Argument.of(recordedS(), Unit.S));
    }
    List<QuietStretchFinder.Run> leftOut = new ArrayList<>();
    if (from > 0) {
      leftOut.add(new QuietStretchFinder.Run(0, from, Reason.BY_HAND));
    }
    if (to < recording.size()) {
      leftOut.add(new QuietStretchFinder.Run(to, recording.size(), Reason.BY_HAND));
    }
    return stretch(from, to, true, leftOut);
  }

  private int firstAt(double fromS) {
    int from = 0;
    while (from < recording.size() && recording.timeS(from) < fromS) {
      from++;
    }
    return from;
  }

  private QuietStretch stretch(
      int from, int to, boolean byHand, List<QuietStretchFinder.Run> leftOut) {
    List<UnusedPart> parts =
        leftOut.stream()
            .map(
                r ->
                    new UnusedPart(
                        recording.timeS(r.fromIndex()),
                        recording.timeS(r.toIndex() - 1),
                        r.reason()))
            .toList();
    return new QuietStretch(
        from, to, recording.timeS(from), recording.timeS(to - 1), byHand, parts);
  }

  private void steady(LoadSignals signals) throws BadInput {
    double variation = variation(signals.upN);
    if (variation > limits.of(signals.of).sd()) {
      throw unsteady(signals, variation);
    }
    double anteriorMm = SampleStatistics.roughDeviation(signals.anteriorMm);
    double sdMm =
        signals.hasSideways()
            ? Math.max(SampleStatistics.roughDeviation(signals.rightMm), anteriorMm)
            : anteriorMm;
    if (sdMm > limits.mostSdMm()) {
      throw bad(
          StandProblem.WANDERING,
          Argument.term(signals.of),
          Argument.of(limits.mostSdMm(), Unit.MM),
          Argument.of(sdMm, Unit.MM));
    }
  }

  private BadInput unsteady(LoadSignals signals, double variation) {
    return bad(
        StandProblem.FORCE_UNSTEADY,
        Argument.term(signals.of),
        Argument.of(100 * limits.of(signals.of).sd(), Unit.PERCENT),
        Argument.of(100 * variation, Unit.PERCENT),
        Argument.of(100 * limits.of(signals.of).real(), Unit.PERCENT));
  }

  private double[] loaded(LoadSignals signals) {
    return java.util.stream.IntStream.range(0, signals.size())
        .filter(all.usable()::at)
        .mapToDouble(i -> signals.upN[i])
        .toArray();
  }

  private static double variation(double[] force) {
    return force.length < 2
        ? 0
        : SampleStatistics.roughDeviation(force) / Math.abs(SampleStatistics.roughMean(force));
  }

  private double recordedS() {
    int last = recording.size() - 1;
    return recording.timeS(last) - recording.timeS(0) + 1 / recording.rateHz();
  }

  private BadInput bad(StandProblem topic, Argument... arguments) {
    return new BadInput(Problem.at(Place.of(recording.file()), topic, arguments));
  }
}
