package caryatid.loadline;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether marks lie as high above the plate as they can, and one above the other. */
final class MarkHeights {
  /** Marks from the ground up; those in one place may lie in either order. */
  private static final List<List<LandmarkKind>> UPWARDS =
      List.of(
          List.of(LandmarkKind.ANKLE_AXIS, LandmarkKind.FOOT_REFERENCE_POINT),
          List.of(LandmarkKind.KNEE_CENTRE),
          List.of(LandmarkKind.HIP));

  private final List<Landmark> landmarks;
  private final GeometryLimits limits;

  MarkHeights(List<Landmark> landmarks, GeometryLimits limits) {
    this.landmarks = landmarks;
    this.limits = limits;
  }

  /**
   * What cannot be; heights of which one contradicts another are not held against the limits too.
   *
   * @param sheet that says the heights
   */
  List<Problem> problems(Place sheet) {
    List<Problem> problems = new ArrayList<>();
    for (Landmark high : landmarks) {
      landmarks.stream()
          .filter(low -> isMeantBelow(low, high) && high.heightMm() <= low.heightMm())
          .forEach(low -> problems.add(outOfOrder(sheet, high, low)));
    }
    return problems.isEmpty() ? impossible(sheet) : problems;
  }

  private List<Problem> impossible(Place sheet) {
    List<Problem> problems = new ArrayList<>();
    for (Landmark mark : landmarks) {
      bounds(mark)
          .filter(bounds -> bounds.isImpossible(mark.heightMm()))
          .ifPresent(bounds -> problems.add(impossible(sheet, mark, bounds)));
    }
    return problems;
  }

  private static boolean isMeantBelow(Landmark low, Landmark high) {
    return low.side() == high.side() && level(low) >= 0 && level(low) < level(high);
  }

  /** Counted from the ground; below 0 for marks that may lie anywhere. */
  private static int level(Landmark mark) {
    int level = UPWARDS.size() - 1;
    while (level >= 0 && !UPWARDS.get(level).contains(mark.kind())) {
      level--;
    }
    return level;
  }

  private static Problem outOfOrder(Place sheet, Landmark high, Landmark low) {
    return Problem.at(
        sheet,
        LoadLineProblem.LANDMARKS_OUT_OF_ORDER,
        Argument.text(high.name()),
        mm(high.heightMm()),
        Argument.text(low.name()),
        mm(low.heightMm()));
  }

  private Optional<Bounds> bounds(Landmark mark) {
    return LimitedQuantity.height(mark.kind()).map(limits::of);
  }

  private static Problem impossible(Place sheet, Landmark mark, Bounds bounds) {
    return Problem.at(
        sheet,
        LoadLineProblem.HEIGHT_IMPOSSIBLE,
        Argument.text(mark.name()),
        mm(bounds.refuseBelow()),
        mm(bounds.refuseAbove()),
        mm(mark.heightMm()));
  }

  /** What can hardly be. */
  List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Landmark mark : landmarks) {
      bounds(mark)
          .filter(bounds -> bounds.isOdd(mark.heightMm()))
          .ifPresent(bounds -> questions.add(odd(mark, bounds)));
    }
    return questions;
  }

  private static Question odd(Landmark mark, Bounds bounds) {
    String side = mark.side().lastPart().toLowerCase(Locale.ROOT);
    return Question.of(
        LoadLineQuestion.ODD_HEIGHT,
        mark.name() + " " + side + " up " + Math.round(mark.heightMm()),
        Argument.text(mark.name()),
        mm(mark.heightMm()),
        mm(bounds.askBelow()),
        mm(bounds.askAbove()));
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
