package caryatid.advice;

import caryatid.advice.OffsetChances.ToleranceBounds;
import caryatid.advice.Proposal.PredictedOffset;
import caryatid.advice.Situation.Circumstance;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The model of a situation, with what is asked of it. */
record AdviceBasis(
    Situation situation,
    List<Target> targets,
    List<LandmarkInPlane> all,
    OptionalInt kneeOffset,
    List<Adjustment> adjustments,
    WearerModel model,
    Learnt learnt) {

  static Optional<AdviceBasis> of(Situation situation) {
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
        new AdviceBasis(
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

  private ToleranceBounds bounds() {
    double[] lowest = new double[all.size()];
    double[] highest = new double[all.size()];
    for (int j = 0; j < lowest.length; j++) {
      boolean asked = j < targets.size();
      lowest[j] = asked ? targets.get(j).lowestMm() : Double.NEGATIVE_INFINITY;
      highest[j] = asked ? targets.get(j).highestMm() : Double.POSITIVE_INFINITY;
    }
    return new ToleranceBounds(lowest, highest);
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
