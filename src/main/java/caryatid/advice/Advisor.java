package caryatid.advice;

import caryatid.advice.Advice.Outcome;
import caryatid.advice.Candidates.Candidate;
import caryatid.advice.Proposal.PredictedOffset;
import caryatid.advice.Situation.Circumstance;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Advises on the next change: the smallest one, or two with a stand between, ranked by the
 * probability that every offset is then within its tolerance.
 */
public final class Advisor {
  /** Probabilities that differ by no more are called about equal (common practice, no source). */
  public static final double ABOUT_EQUAL = 0.05;

  /** From here on every tolerance counts as met, as in a finding. */
  private static final double MET = 0.95;

  /** What a change has to gain, unless it may be enough to measure once more. */
  private static final double WORTH_IT = 0.01;

  /** Below, proposals are ranked by the offsets one by one. */
  private static final double HARDLY = 0.02;

  private static final int SHOWN = 3;
  private static final int TRIED = 4;

  private final Situation situation;
  private final Basis basis;
  private final List<Remark> remarks = new ArrayList<>();

  private Advisor(Situation situation, Basis basis) {
    this.situation = situation;
    this.basis = basis;
  }

  /** The advice for a situation. */
  public static Advice advise(Situation situation) {
    List<Remark> against = Obstacles.of(situation);
    Optional<Basis> basis = Basis.of(situation);
    Learnt learnt = basis.map(Basis::learnt).orElse(Learnt.NOTHING);
    if (!against.isEmpty() || basis.isEmpty()) {
      List<Remark> all = new ArrayList<>(Obstacles.warning(situation));
      all.addAll(against);
      return new Advice(
          Outcome.NOT_GIVEN,
          Stream.concat(all.stream(), Obstacles.ALWAYS.stream()).toList(),
          List.of(),
          Optional.empty(),
          List.of(),
          learnt);
    }
    return new Advisor(situation, basis.get()).advise(learnt);
  }

  /** What a heel does that the ankle is not set for, as far as geometry and stands tell. */
  public static List<HeelAnswer> heels(Situation situation) {
    if (situation.states().isEmpty()) {
      return List.of();
    }
    MeasuredState now = situation.states().get(situation.states().size() - 1);
    return HeelAnswer.of(
        situation,
        Obstacles.targets(situation, now),
        Obstacles.geometry(situation, now),
        Stream.of(ChangeKind.values())
            .filter(kind -> Learning.isChanged(kind, situation.states()))
            .toList());
  }

  private Advice advise(Learnt learnt) {
    Prediction now = basis.model().after(Map.of());
    double probabilityNow = basis.probability(now);
    List<Proposal> proposals = ranked();
    Outcome outcome = outcome(probabilityNow, proposals);
    say(outcome, learnt);
    return new Advice(
        outcome,
        remarks,
        basis.offsets(now),
        Optional.of(probabilityNow),
        outcome == Outcome.CHANGE ? proposals : List.of(),
        learnt);
  }

  private Outcome outcome(double probabilityNow, List<Proposal> proposals) {
    boolean warned = situation.is(Circumstance.KNEE_WARNING);
    if (!situation.plainCauses().isEmpty()) {
      return Outcome.CAUSES_FIRST;
    }
    if (probabilityNow >= MET && !warned) {
      return Outcome.NOTHING_TO_CHANGE;
    }
    if (warned) {
      return proposals.isEmpty() ? Outcome.NO_CHANGE_HELPS : Outcome.CHANGE;
    }
    double gain = proposals.isEmpty() ? 0 : proposals.get(0).probability() - probabilityNow;
    boolean likely = probabilityNow > 0.5;
    if (gain >= (likely && measuredSo() == 1 ? ABOUT_EQUAL : WORTH_IT)) {
      return Outcome.CHANGE;
    }
    if (likely) {
      return Outcome.MEASURE_AGAIN;
    }
    return probabilityNow < HARDLY && !proposals.isEmpty() && basis.improves(proposals.get(0))
        ? Outcome.CHANGE
        : Outcome.NO_CHANGE_HELPS;
  }

  /** How many states were measured at the present setting, one after the other. */
  private int measuredSo() {
    List<MeasuredState> states = situation.states();
    int last = states.size() - 1;
    int first = last;
    while (first > 0 && states.get(first - 1).settings().equals(states.get(last).settings())) {
      first--;
    }
    return last - first + 1;
  }

  private void say(Outcome outcome, Learnt learnt) {
    remarks.addAll(Obstacles.warning(situation));
    switch (outcome) {
      case CAUSES_FIRST -> {
        remarks.add(Remark.of(AdviceRemark.CAUSES_FIRST));
        remarks.addAll(situation.plainCauses());
      }
      case NOTHING_TO_CHANGE -> remarks.add(Remark.of(AdviceRemark.ALL_WITHIN));
      case MEASURE_AGAIN -> remarks.add(Remark.of(AdviceRemark.MEASURE_AGAIN));
      case NO_CHANGE_HELPS -> remarks.add(Remark.of(AdviceRemark.NO_CHANGE_HELPS));
      case CHANGE, NOT_GIVEN -> {}
    }
    learnt
        .contradicting()
        .forEach(s -> remarks.add(Remark.of(AdviceRemark.CONTRADICTS, Argument.count(s))));
    if (outcome == Outcome.CHANGE) {
      remarks.addAll(Obstacles.limits(situation, basis.kneeOffset().isPresent()));
      if (learnt.answers().isEmpty()) {
        remarks.add(Remark.of(AdviceRemark.FROM_GEOMETRY));
      }
    }
    if (situation.is(Circumstance.ONE_UNDECIDED_STAND)
        && !situation.is(Circumstance.KNEE_WARNING)) {
      remarks.add(Remark.of(AdviceRemark.ONE_UNDECIDED_STAND));
    }
    remarks.addAll(Obstacles.ALWAYS);
  }

  private List<Proposal> ranked() {
    Candidates candidates = basis.candidates();
    List<Candidate> tried =
        Stream.concat(
                candidates.singles().stream().limit(TRIED),
                candidates.pairs().stream().limit(TRIED))
            .toList();
    Map<Proposal, Double> logs = new HashMap<>();
    for (Candidate candidate : tried) {
      logs.put(basis.proposal(candidate.changes()), candidate.logProbability());
    }
    double most = logs.keySet().stream().mapToDouble(Proposal::probability).max().orElse(0);
    Comparator<Proposal> order =
        most < HARDLY
            ? Comparator.comparing(p -> logs.get(p) - (p.changes().size() - 1) * ABOUT_EQUAL)
            : Comparator.comparing(p -> p.probability() - (p.changes().size() - 1) * ABOUT_EQUAL);
    List<Proposal> sorted = logs.keySet().stream().sorted(order.reversed()).limit(SHOWN).toList();
    return sorted.stream().map(p -> p.with(isEqual(p, sorted.get(0)))).toList();
  }

  private static boolean isEqual(Proposal one, Proposal first) {
    return !one.equals(first) && Math.abs(one.probability() - first.probability()) <= ABOUT_EQUAL;
  }

  /** The model of a situation, with what is asked of it. */
  private record Basis(
      Situation situation,
      List<Target> targets,
      List<LandmarkInPlane> all,
      OptionalInt kneeOffset,
      List<Adjustment> adjustments,
      WearerModel model,
      Learnt learnt) {

    static Optional<Basis> of(Situation situation) {
      if (situation.states().isEmpty()) {
        return Optional.empty();
      }
      MeasuredState now = situation.states().get(situation.states().size() - 1);
      List<Target> targets = Obstacles.targets(situation, now);
      List<LandmarkInPlane> all = new ArrayList<>(targets.stream().map(Target::at).toList());
      now.offsets().stream()
          .map(offset -> offset.at())
          .filter(situation.leg()::isKneeFromTheSide)
          .filter(at -> !all.contains(at))
          .findFirst()
          .ifPresent(all::add);
      Kinematics geometry = Obstacles.geometry(situation, now);
      List<Adjustment> usable = Obstacles.usable(situation, all, geometry);
      if (targets.isEmpty() || usable.isEmpty()) {
        return Optional.empty();
      }
      List<ChangeKind> kinds =
          Stream.concat(
                  usable.stream().map(Adjustment::kind),
                  Stream.of(ChangeKind.values())
                      .filter(kind -> Learning.isChanged(kind, situation.states())))
              .distinct()
              .toList();
      WearerModel model = WearerModel.of(all, kinds, situation.states(), now, geometry, true);
      Learnt learnt = new Learning(all, kinds, situation.states(), geometry).learnt(model);
      return Optional.of(
          new Basis(
              situation, targets, List.copyOf(all), knee(situation, all), usable, model, learnt));
    }

    private static OptionalInt knee(Situation situation, List<LandmarkInPlane> all) {
      for (int j = 0; j < all.size(); j++) {
        if (situation.leg().isKneeFromTheSide(all.get(j))) {
          return OptionalInt.of(j);
        }
      }
      return OptionalInt.empty();
    }

    Candidates candidates() {
      return new Candidates(
          model,
          bounds(),
          adjustments,
          situation.extension(),
          situation.leg().prostheticKnee(),
          kneeOffset,
          kneeOffset.isPresent() ? Optional.of(guard(kneeOffset.getAsInt())) : Optional.empty());
    }

    private KneeGuard guard(int knee) {
      Prediction now = model.after(Map.of());
      return KneeGuard.of(
          situation.leg().prostheticKnee(),
          situation.is(Circumstance.KNEE_WARNING),
          now.meanMm().getEntry(knee),
          now.sdMm(knee),
          knee < targets.size() ? targets.get(knee).highestMm() : KneeGuard.FAR_MM);
    }

    private Candidates.Bounds bounds() {
      double[] lowest = new double[all.size()];
      double[] highest = new double[all.size()];
      for (int j = 0; j < lowest.length; j++) {
        boolean asked = j < targets.size();
        lowest[j] = asked ? targets.get(j).lowestMm() : Double.NEGATIVE_INFINITY;
        highest[j] = asked ? targets.get(j).highestMm() : Double.POSITIVE_INFINITY;
      }
      return new Candidates.Bounds(lowest, highest);
    }

    double probability(Prediction at) {
      return BoxProbability.of(at, bounds().lowest(), bounds().highest());
    }

    Proposal proposal(List<Proposal.Change> changes) {
      Map<ChangeKind, Double> by = new HashMap<>();
      changes.forEach(change -> by.put(change.of().kind(), change.by()));
      Prediction then = model.after(by);
      OptionalDouble behind =
          kneeOffset.isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(
                  KneeGuard.behind(
                      then.meanMm().getEntry(kneeOffset.getAsInt()),
                      then.sdMm(kneeOffset.getAsInt())));
      Proposal.Change first = changes.get(0);
      Prediction next = model.after(Map.of(first.of().kind(), first.by()));
      return new Proposal(
          changes.stream().map(this::rising).toList(),
          probability(then),
          offsets(then),
          offsets(next),
          behind,
          false);
    }

    private Proposal.Change rising(Proposal.Change change) {
      MeasuredState now = situation.states().get(situation.states().size() - 1);
      return change.rising(
          Obstacles.geometry(situation, now).riseMm(change.of().kind(), change.by()));
    }

    List<PredictedOffset> offsets(Prediction at) {
      List<PredictedOffset> offsets = new ArrayList<>();
      for (int j = 0; j < targets.size(); j++) {
        double mm = at.meanMm().getEntry(j);
        double half = Learning.NINETY * at.sdMm(j);
        offsets.add(new PredictedOffset(targets.get(j), mm, mm - half, mm + half));
      }
      return offsets;
    }

    /** Whether it makes each offset by itself likelier to be within, all of them together. */
    boolean improves(Proposal proposal) {
      Candidates candidates = candidates();
      return candidates.log(proposal.changes()) > candidates.log(List.of());
    }
  }
}
