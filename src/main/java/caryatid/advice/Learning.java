package caryatid.advice;

import caryatid.loadline.LandmarkInPlane;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** Shows what was learnt: answers against geometry, and what was predicted of each state. */
final class Learning {
  /** A state that fits so badly contradicts those before it (common practice, no source). */
  private static final double CONTRADICTS = 0.01;

  /** Half-width of a 90 % interval in standard deviations. */
  static final double NINETY = 1.6448536269514722;

  private final List<LandmarkInPlane> offsets;
  private final List<ChangeKind> kinds;
  private final List<MeasuredState> states;
  private final Kinematics geometry;

  Learning(
      List<LandmarkInPlane> offsets,
      List<ChangeKind> kinds,
      List<MeasuredState> states,
      Kinematics geometry) {
    this.offsets = offsets;
    this.kinds = kinds;
    this.states = states;
    this.geometry = geometry;
  }

  /** Answers of the kinds that were changed, and a prediction of each state but the first. */
  Learnt learnt(WearerModel model) {
    List<Learnt.Answer> answers = new ArrayList<>();
    for (ChangeKind kind : kinds) {
      if (isChanged(kind, states)) {
        for (int j = 0; j < offsets.size(); j++) {
          answers.add(answer(model, kind, j));
        }
      }
    }
    List<Learnt.Predicted> predictions = new ArrayList<>();
    for (int s = 1; s < states.size(); s++) {
      predictions.addAll(predicted(s));
    }
    return new Learnt(answers, predictions);
  }

  /** Whether the states differ in what is set. */
  static boolean isChanged(ChangeKind kind, List<MeasuredState> states) {
    return states.stream()
            .flatMap(state -> state.settings().entrySet().stream())
            .filter(set -> set.getKey() == kind)
            .map(Map.Entry::getValue)
            .distinct()
            .count()
        > 1;
  }

  private Learnt.Answer answer(WearerModel model, ChangeKind kind, int j) {
    WearerModel.Response response = model.response(kind, j);
    return new Learnt.Answer(
        kind,
        offsets.get(j),
        geometry.slope(kind, offsets.get(j)),
        response.mm(),
        response.mm() - NINETY * response.sdMm(),
        response.mm() + NINETY * response.sdMm());
  }

  private List<Learnt.Predicted> predicted(int s) {
    List<MeasuredState> before = states.subList(0, s);
    MeasuredState state = states.get(s);
    MeasuredState last = states.get(s - 1);
    List<LandmarkInPlane> both =
        offsets.stream()
            .filter(at -> state.offset(at).isPresent())
            .filter(at -> before.stream().anyMatch(b -> b.offset(at).isPresent()))
            .toList();
    if (both.isEmpty()) {
      return List.of();
    }
    boolean plates = states.stream().map(MeasuredState::plate).distinct().count() > 1;
    WearerModel model = WearerModel.of(both, kinds, before, last, geometry, plates);
    Map<ChangeKind, Double> changes = new HashMap<>();
    kinds.forEach(kind -> changes.put(kind, state.setting(kind, last) - last.setting(kind, state)));
    Prediction expected = model.after(changes);
    List<StateErrors.MeasuredOffset> rows = WearerModel.rows(both, List.of(state));
    RealMatrix spread = expected.covariance().add(StateErrors.covariance(rows, plates));
    boolean contradicts = contradicts(rows, expected.meanMm(), spread);
    List<Learnt.Predicted> predicted = new ArrayList<>();
    for (int j = 0; j < rows.size(); j++) {
      double mm = expected.meanMm().getEntry(j);
      double half = NINETY * Math.sqrt(spread.getEntry(j, j));
      predicted.add(
          new Learnt.Predicted(
              state.name(),
              both.get(j),
              mm,
              mm - half,
              mm + half,
              rows.get(j).mm().value(),
              contradicts));
    }
    return predicted;
  }

  private static boolean contradicts(
      List<StateErrors.MeasuredOffset> rows, RealVector expected, RealMatrix spread) {
    RealVector rest = expected.mapMultiply(-1);
    for (int j = 0; j < rows.size(); j++) {
      rest.addToEntry(j, rows.get(j).mm().value());
    }
    double apart =
        rest.dotProduct(new CholeskyDecomposition(spread, 1e-6, 0).getSolver().solve(rest));
    return ChiSquaredDistribution.of(rows.size()).survivalProbability(apart) < CONTRADICTS;
  }
}
