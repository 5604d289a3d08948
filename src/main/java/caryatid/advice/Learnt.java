package caryatid.advice;

import caryatid.loadline.LandmarkInPlane;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the states show of this wearer.
 *
 * @param answers how each offset answers each kind of change that was made, against geometry
 * @param predictions what was to be expected of each state from those before it, and what was
 *     measured
 */
public record Learnt(List<Answer> answers, List<Predicted> predictions) {
  /** Nothing was learnt. */
  public static final Learnt NOTHING = new Learnt(List.of(), List.of());

  /**
   * How an offset answers one unit of a change.
   *
   * @param geometryMm what geometry expects, mm for each unit; empty where it tells nothing
   * @param mm what was learnt
   * @param lowMm lower end of its 90 % interval
   * @param highMm upper end
   */
  public record Answer(
      ChangeKind kind,
      LandmarkInPlane at,
      OptionalDouble geometryMm,
      double mm,
      double lowMm,
      double highMm) {}

  /**
   * One offset of a state as the states before it let expect it, and as it was measured.
   *
   * @param state the state's name
   * @param mm expected, mm
   * @param lowMm lower end of the 90 % interval of the measurement, mm
   * @param highMm upper end
   * @param measuredMm measured, mm
   * @param contradicts whether the state as a whole fits what came before in less than 1 of 100
   *     cases
   */
  public record Predicted(
      int state,
      LandmarkInPlane at,
      double mm,
      double lowMm,
      double highMm,
      double measuredMm,
      boolean contradicts) {}

  public Learnt {
    answers = List.copyOf(answers);
    predictions = List.copyOf(predictions);
  }

  /** The states that contradict those before them. */
  public List<Integer> contradicting() {
    return predictions.stream()
        .filter(Predicted::contradicts)
        .map(Predicted::state)
        .distinct()
        .toList();
  }
}
