package caryatid.advice;

import caryatid.advice.Candidates.Candidate;
import caryatid.advice.Situation.Circumstance;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final AdviceBasis basis;
  private final List<Remark> remarks = new ArrayList<>();

  private Advisor(Situation situation, AdviceBasis basis) {
    this.situation = situation;
    this.basis = basis;
  }

  /** The advice for a situation. */
  public static Advice advise(Situation situation) {
    List<Remark> against = Obstacles.of(situation);
    Optional<AdviceBasis> basis = AdviceBasis.of(situation);
    Learnt learnt = basis.map(AdviceBasis::learnt).orElse(Learnt.NOTHING);
    if (!against.isEmpty() || basis.isEmpty()) {
      List<Remark> all = new ArrayList<>(Obstacles.warning(situation));
      all.addAll(against);
      return new Advice(
          AdviceOutcome.NOT_GIVEN,
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
    AdviceOutcome outcome = outcome(probabilityNow, proposals);
    say(outcome, learnt);
    return new Advice(
        outcome,
        remarks,
        basis.offsets(now),
        Optional.of(probabilityNow),
        outcome == AdviceOutcome.CHANGE ? proposals : List.of(),
        learnt);
  }

  private AdviceOutcome outcome(double probabilityNow, List<Proposal> proposals) {
    boolean warned = situation.is(Circumstance.KNEE_WARNING);
    if (!situation.plainCauses().isEmpty()) {
      return AdviceOutcome.CAUSES_FIRST;
    }
    if (probabilityNow >= MET && !warned) {
      return AdviceOutcome.NOTHING_TO_CHANGE;
    }
    if (warned) {
      return proposals.isEmpty() ? AdviceOutcome.NO_CHANGE_HELPS : AdviceOutcome.CHANGE;
    }
    double gain = proposals.isEmpty() ? 0 : proposals.get(0).probability() - probabilityNow;
    boolean likely = probabilityNow > 0.5;
    if (gain >= (likely && measuredSo() == 1 ? ABOUT_EQUAL : WORTH_IT)) {
      return AdviceOutcome.CHANGE;
    }
    if (likely) {
      return AdviceOutcome.MEASURE_AGAIN;
    }
    return probabilityNow < HARDLY && !proposals.isEmpty() && basis.improves(proposals.get(0))
        ? AdviceOutcome.CHANGE
        : AdviceOutcome.NO_CHANGE_HELPS;
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

  private void say(AdviceOutcome outcome, Learnt learnt) {
    remarks.addAll(Obstacles.warning(situation));
    switch (outcome) {
      case CAUSES_FIRST -> {
        remarks.add(Remark.of(AdviceRemark.CAUSES_FIRST));
        remarks.addAll(situation.plainCauses());
      }
      case NOTHING_TO_CHANGE -> remarks.add(Remark.of(AdviceRemark.ALL_WITHIN));
      case MEASURE_AGAIN -> remarks.add(Remark.of(AdviceRemark.MEASURE_AGAIN));
      case NO_CHANGE_HELPS ->
          remarks.add(
              Remark.of(
                  situation.is(Circumstance.KNEE_WARNING)
                      ? AdviceRemark.NO_CHANGE_STEADIES_KNEE
                      : AdviceRemark.NO_CHANGE_HELPS));
      case CHANGE, NOT_GIVEN -> {}
    }
    learnt
        .contradicting()
        .forEach(s -> remarks.add(Remark.of(AdviceRemark.CONTRADICTS, Argument.count(s))));
    if (outcome == AdviceOutcome.CHANGE) {
      remarks.addAll(Obstacles.limits(situation, basis.kneeOffset().isPresent()));
      if (learnt.answers().isEmpty()) {
        remarks.add(Remark.of(AdviceRemark.FROM_GEOMETRY));
      }
    }
    if (situation.is(Circumstance.ONE_UNDECIDED_STAND)) {
      remarks.add(
          Remark.of(
              situation.is(Circumstance.KNEE_WARNING)
                  ? AdviceRemark.ONE_UNDECIDED_STAND_WARNED
                  : AdviceRemark.ONE_UNDECIDED_STAND));
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
    Map<Proposal, Double> logs = new LinkedHashMap<>();
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
}
