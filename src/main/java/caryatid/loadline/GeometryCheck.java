package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holds the geometry of a stand against {@link GeometryLimits}: refuses what cannot be, asks about
 * what can hardly be. Both are mostly slips of a sign, a side, a unit or a measuring line.
 */
public final class GeometryCheck {
  private final Standing standing;
  private final List<Offset> offsets;
  private final List<Landmark> landmarks;
  private final boolean prostheticKnee;
  private final GeometryLimits limits;

  /**
   * @param standing what the recording says
   * @param offsets of its lines
   * @param landmarks that they are measured from
   * @param prostheticKnee whether the prosthesis has a knee
   */
  public GeometryCheck(
      Standing standing,
      List<Offset> offsets,
      List<Landmark> landmarks,
      boolean prostheticKnee,
      GeometryLimits limits) {
    this.standing = standing;
    this.offsets = List.copyOf(offsets);
    this.landmarks = List.copyOf(landmarks);
    this.prostheticKnee = prostheticKnee;
    this.limits = limits;
  }

  /**
   * Refuses a stand whose geometry cannot be: marks that are not above each other, or higher or
   * lower than they can be, lines too far from a landmark, feet too close or too far apart, too
   * little or too much load on a prosthesis.
   *
   * @param how how the wearer stood
   * @throws BadInput if so, with everything that cannot be
   */
  public void requirePossible(StanceConditions how) throws BadInput {
    List<Problem> problems =
        new ArrayList<>(new MarkHeights(landmarks, limits).problems(how.sheet()));
    for (Offset offset : offsets) {
      if (offset.kind() == LoadLineMethod.VERTICAL && isOwnOrOnly(offset)) {
        far(how, offset).ifPresent(problems::add);
      }
    }
    OptionalDouble apartMm = apartMm(standing);
    if (apartMm.isPresent() && isImpossible(LimitedQuantity.STANCE_WIDTH, apartMm.getAsDouble())) {
      problems.add(
          impossible(
              how,
              LoadLineProblem.FEET_APART,
              LimitedQuantity.STANCE_WIDTH,
              Argument.of(apartMm.getAsDouble(), Unit.MM)));
    }
    how.prosthetic().forEach(side -> share(how, side).ifPresent(problems::add));
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  /** How far the centres of pressure under both feet lie apart, mm; empty unless both are known. */
  public static OptionalDouble apartMm(Standing standing) {
    Optional<MeanLoad> left = standing.load(LoadLineOwner.LEFT_FOOT);
    Optional<MeanLoad> right = standing.load(LoadLineOwner.RIGHT_FOOT);
    Optional<Estimate> leftMm = left.flatMap(MeanLoad::copRightMm);
    Optional<Estimate> rightMm = right.flatMap(MeanLoad::copRightMm);
    return leftMm.isPresent() && rightMm.isPresent()
        ? OptionalDouble.of(rightMm.get().value() - leftMm.get().value())
        : OptionalDouble.empty();
  }

  /** Where a foot's own line is not known, the whole body's must do. */
  private boolean isOwnOrOnly(Offset offset) {
    LoadLineOwner own = LoadLineOwner.foot(offset.side());
    return offset.of() == own || standing.load(own).isEmpty();
  }

  private Optional<Problem> far(StanceConditions how, Offset offset) {
    return isImpossible(quantity(offset), offset.mm().value())
        ? Optional.of(
            impossible(
                how,
                LoadLineProblem.FAR_FROM_LANDMARK,
                quantity(offset),
                Argument.text(offset.landmark()),
                Argument.term(offset.plane()),
                Argument.of(offset.mm().value(), Unit.MM)))
        : Optional.empty();
  }

  private Optional<Problem> share(StanceConditions how, Side side) {
    return Optional.ofNullable(standing.share().get(side))
        .map(share -> 100 * share.value())
        .filter(percent -> percent < limits.of(LimitedQuantity.LOAD_SHARE).refuseBelow())
        .map(
            percent ->
                impossible(
                    how,
                    LoadLineProblem.SHARE_IMPOSSIBLE,
                    LimitedQuantity.LOAD_SHARE,
                    Argument.term(side),
                    Argument.of(percent, Unit.PERCENT)));
  }

  private Problem impossible(
      StanceConditions how, LoadLineProblem topic, LimitedQuantity limited, Argument... found) {
    List<Argument> arguments = new ArrayList<>(List.of(found));
    Bounds bounds = limits.of(limited);
    arguments.add(Argument.of(bounds.refuseBelow(), limited.unit()));
    arguments.add(Argument.of(bounds.refuseAbove(), limited.unit()));
    return new Problem(how.sheet(), topic, arguments);
  }

  private boolean isImpossible(LimitedQuantity quantity, double value) {
    return limits.of(quantity).isImpossible(value);
  }

  private LimitedQuantity quantity(Offset offset) {
    LandmarkKind kind =
        landmarks.stream()
            .filter(l -> l.side() == offset.side() && l.name().equals(offset.landmark()))
            .map(Landmark::kind)
            .findFirst()
            .orElse(LandmarkKind.OTHER);
    return LimitedQuantity.of(offset.plane(), kind, prostheticKnee);
  }

  /**
   * What can hardly be: an offset, a mark's height, or a prosthesis's share of the load.
   *
   * @param prosthetic the prosthetic sides
   * @param recording the recording's name
   */
  public List<Question> questions(List<Side> prosthetic, String recording) {
    List<Question> questions = new ArrayList<>(new MarkHeights(landmarks, limits).questions());
    for (Offset offset : offsets) {
      boolean own = offset.of() == LoadLineOwner.foot(offset.side());
      if (own
          && offset.kind() == LoadLineMethod.VERTICAL
          && limits.of(quantity(offset)).isOdd(offset.mm().value())) {
        questions.add(odd(offset, recording));
      }
    }
    if (prosthetic.size() == 1) {
      oddShare(prosthetic.get(0)).ifPresent(questions::add);
    }
    return List.copyOf(questions);
  }

  private Question odd(Offset offset, String recording) {
    double mm = offset.mm().value();
    boolean behindKnee =
        quantity(offset) == LimitedQuantity.SAGITTAL_PROSTHETIC_KNEE
            && offset.plane() == Plane.SAGITTAL
            && mm < 0;
    Bounds bounds = limits.of(quantity(offset));
    return Question.of(
        behindKnee ? LoadLineQuestion.BEHIND_KNEE : LoadLineQuestion.ODD_OFFSET,
        answer(offset),
        Argument.text(offset.landmark()),
        Argument.term(offset.plane()),
        Argument.of(mm, Unit.MM),
        Argument.of(bounds.askBelow(), Unit.MM),
        Argument.of(bounds.askAbove(), Unit.MM),
        Argument.text(recording));
  }

  /** Whether a question's last argument is the recording that it is asked of. */
  public static boolean namesRecording(Question question) {
    return question.topic() == LoadLineQuestion.BEHIND_KNEE
        || question.topic() == LoadLineQuestion.ODD_OFFSET;
  }

  private static String answer(Offset offset) {
    return offset.landmark()
        + " "
        + (offset.side().lastPart() + " " + offset.plane().lastPart()).toLowerCase(Locale.ROOT);
  }

  private Optional<Question> oddShare(Side side) {
    Bounds bounds = limits.of(LimitedQuantity.LOAD_SHARE);
    return Optional.ofNullable(standing.share().get(side))
        .map(share -> 100 * share.value())
        .filter(bounds::isOdd)
        .map(
            percent ->
                Question.of(
                    LoadLineQuestion.ODD_SHARE,
                    "load share",
                    Argument.term(side),
                    Argument.of(percent, Unit.PERCENT),
                    Argument.of(bounds.askBelow(), Unit.PERCENT),
                    Argument.of(bounds.askAbove(), Unit.PERCENT)));
  }
}
