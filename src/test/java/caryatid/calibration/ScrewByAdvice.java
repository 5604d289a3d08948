package caryatid.calibration;

import caryatid.advice.Adjustment;
import caryatid.advice.Advice;
import caryatid.advice.AdviceOutcome;
import caryatid.advice.Advisor;
import caryatid.advice.ChangeKind;
import caryatid.advice.Extension;
import caryatid.advice.LegChain;
import caryatid.advice.MeasuredState;
import caryatid.advice.Proposal;
import caryatid.advice.Situation;
import caryatid.alignment.AlignmentState;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What the program advises: the first change of the first proposal. */
final class ScrewByAdvice implements Strategy {
  private static final Map<Screw, ChangeKind> KINDS =
      new EnumMap<>(
          Map.of(
              Screw.ANKLE, ChangeKind.PLANTARFLEXION,
              Screw.FOOT_TILT, ChangeKind.INVERSION,
              Screw.FOOT_FORWARD, ChangeKind.FOOT_FORWARD,
              Screw.FOOT_LATERAL, ChangeKind.FOOT_LATERAL));

  @Override
  public Step next(List<Visit> visits) {
    Visit now = visits.get(visits.size() - 1);
    Advice advice = Advisor.advise(situation(visits, now));
    return advice.outcome() == AdviceOutcome.CHANGE ? step(advice.proposals().get(0)) : Step.AGAIN;
  }

  static Situation situation(List<Visit> visits, Visit now) {
    List<MeasuredState> states = new ArrayList<>();
    for (Visit visit : visits) {
      states.add(
          new MeasuredState(
              states.size() + 1,
              "plate",
              true,
              settings(visit),
              visit.state().findings().stream().map(Finding::offset).toList()));
    }
    AlignmentState state = now.state();
    return new Situation(
        new LegChain(Side.RIGHT, false, state.stands().get(0).landmarks()),
        states,
        AlignedWearer.WHERE,
        adjustments(now),
        Set.of(),
        List.of(),
        Extension.UNKNOWN);
  }

  private static Map<ChangeKind, Double> settings(Visit visit) {
    Map<ChangeKind, Double> settings = new EnumMap<>(ChangeKind.class);
    KINDS.forEach((screw, kind) -> settings.put(kind, visit.settings()[screw.ordinal()]));
    return settings;
  }

  private static List<Adjustment> adjustments(Visit now) {
    List<Adjustment> adjustments = new ArrayList<>();
    for (Screw screw : Screw.values()) {
      adjustments.add(
          new Adjustment(
              KINDS.get(screw),
              now.settings()[screw.ordinal()],
              -screw.travel(),
              screw.travel(),
              screw.step(),
              OptionalDouble.empty()));
    }
    return adjustments;
  }

  /** The change to be made now, and what is expected after it alone. */
  private static Step step(Proposal proposal) {
    Proposal.Change change = proposal.first();
    Screw screw =
        KINDS.entrySet().stream()
            .filter(e -> e.getValue() == change.of().kind())
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseThrow();
    List<double[]> intervals =
        proposal.afterFirst().stream().map(o -> new double[] {o.lowMm(), o.highMm()}).toList();
    return new Step(Optional.of(new Turn(screw, change.by())), intervals);
  }
}
