package caryatid.advice;

import caryatid.loadline.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How one offset answers a heel of another height than the ankle is set for.
 *
 * @param target what is recommended
 * @param mmPer10Mm change of the offset for each 10 mm of heel, mm
 * @param lowPer10Mm lower end of its 90 % interval
 * @param highPer10Mm upper end
 * @param learnt whether stands in other heels are behind it, and not geometry alone
 * @param lowestHeelMm the lowest heel error, mm below 0, down to which every heel leaves the offset
 *     within its tolerance with 95 %; 0 where none does
 * @param highestHeelMm the highest one
 * @param line the offset expected at heels from one to another, the lowest first
 * @param measured what stands found that differ from the present setting by their heel alone
 */
public record HeelAnswer(
    Target target,
    double mmPer10Mm,
    double lowPer10Mm,
    double highPer10Mm,
    boolean learnt,
    double lowestHeelMm,
    double highestHeelMm,
    List<AtHeel> line,
    List<AtHeel> measured) {
  private static final double SURE = 0.95;
  private static final int FARTHEST_MM = 70;
  private static final int DRAWN_MM = 30;
  private static final int STEP_MM = 5;

  /**
   * The offset at a heel.
   *
   * @param heelMm by how much the heel is higher than the one that the ankle is set for, mm
   * @param mm the offset, mm
   * @param lowMm lower end of its 90 % interval
   * @param highMm upper end
   */
  public record AtHeel(double heelMm, double mm, double lowMm, double highMm) {}

  public HeelAnswer {
    line = List.copyOf(line);
    measured = List.copyOf(measured);
  }

  /** The answers of all offsets that have a target; none where geometry and stands tell nothing. */
  static List<HeelAnswer> of(
      Situation situation, List<Target> targets, Kinematics geometry, List<ChangeKind> others) {
    boolean learnt = Learning.isChanged(ChangeKind.HEEL, situation.states());
    boolean known =
        targets.stream().allMatch(t -> geometry.slope(ChangeKind.HEEL, t.at()).isPresent());
    if (!learnt && !known || targets.isEmpty()) {
      return List.of();
    }
    List<ChangeKind> kinds =
        Stream.concat(others.stream(), Stream.of(ChangeKind.HEEL)).distinct().toList();
    MeasuredState now = situation.states().get(situation.states().size() - 1);
    WearerModel model =
        WearerModel.of(
            targets.stream().map(Target::at).toList(),
            kinds,
            situation.states(),
            now,
            geometry,
            true);
    List<HeelAnswer> answers = new ArrayList<>();
    for (int j = 0; j < targets.size(); j++) {
      WearerModel.Response response = model.response(ChangeKind.HEEL, j);
      double half = Learning.NINETY * response.sdMm();
      double error = now.settings().getOrDefault(ChangeKind.HEEL, 0.0);
      answers.add(
          new HeelAnswer(
              targets.get(j),
              10 * response.mm(),
              10 * (response.mm() - half),
              10 * (response.mm() + half),
              learnt,
              end(model, targets.get(j), j, -1, error),
              end(model, targets.get(j), j, 1, error),
              line(model, j, error),
              measured(situation.states(), targets.get(j), now)));
    }
    return answers;
  }

  private static List<AtHeel> line(WearerModel model, int j, double nowMm) {
    List<AtHeel> line = new ArrayList<>();
    for (int mm = -DRAWN_MM; mm <= DRAWN_MM; mm += STEP_MM) {
      Prediction then = model.after(Map.of(ChangeKind.HEEL, mm - nowMm));
      double half = Learning.NINETY * then.sdMm(j);
      double at = then.meanMm().getEntry(j);
      line.add(new AtHeel(mm, at, at - half, at + half));
    }
    return line;
  }

  private static List<AtHeel> measured(
      List<MeasuredState> states, Target target, MeasuredState now) {
    List<AtHeel> measured = new ArrayList<>();
    for (MeasuredState state : states) {
      double heelMm = state.settings().getOrDefault(ChangeKind.HEEL, 0.0);
      boolean drawn = Math.abs(heelMm) <= DRAWN_MM && otherwise(state).equals(otherwise(now));
      state
          .offset(target.at())
          .filter(offset -> drawn)
          .ifPresent(
              offset -> {
                double mm = offset.mm().value();
                double half = Learning.NINETY * offset.mm().standardUncertainty();
                measured.add(new AtHeel(heelMm, mm, mm - half, mm + half));
              });
    }
    return measured;
  }

  private static Map<ChangeKind, Double> otherwise(MeasuredState state) {
    Map<ChangeKind, Double> settings = new HashMap<>(state.settings());
    settings.remove(ChangeKind.HEEL);
    return settings;
  }

  private static double end(WearerModel model, Target target, int j, int sense, double nowMm) {
    double end = 0;
    for (int mm = 0; mm <= FARTHEST_MM; mm++) {
      Prediction then = model.after(Map.of(ChangeKind.HEEL, sense * mm - nowMm));
      if (probability(then, target, j) < SURE) {
        return end;
      }
      end = sense * mm;
    }
    return end;
  }

  private static double probability(Prediction then, Target target, int j) {
    double mm = then.meanMm().getEntry(j);
    double sd = then.sdMm(j);
    return KneeGuard.behind(mm - target.highestMm(), sd)
        - KneeGuard.behind(mm - target.lowestMm(), sd);
  }
}
