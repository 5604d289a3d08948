package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether what was marked and measured proves that the prosthetic side is the one that the sheet
 * says, and that each plate is where its description says. What is not proven is asked.
 */
public final class WhichLeg {
  private WhichLeg() {}

  /**
   * The question which side the prosthesis is on; empty where the marks prove it, with two
   * prostheses, and where both feet stood on one plate, where the line is the same for either side.
   */
  public static Optional<Question> side(
      Standing standing, List<Landmark> landmarks, Stance stance, List<Side> prosthetic) {
    if (prosthetic.size() != 1 || stance instanceof Stance.BothFeetOnOnePlate) {
      return Optional.empty();
    }
    Side side = prosthetic.get(0);
    boolean proven =
        stance instanceof Stance.PlatePerFoot
            ? landmarks.stream().anyMatch(l -> isNearer(standing, l, side))
            : isBorderLateral(landmarks, side);
    return proven
        ? Optional.empty()
        : Optional.of(
            Question.of(
                stance instanceof Stance.PlatePerFoot
                    ? LoadLineQuestion.SIDE_UNPROVEN
                    : LoadLineQuestion.SIDE_UNPROVEN_BY_BORDER,
                "side " + side.lastPart().toLowerCase(Locale.ROOT),
                Argument.term(side)));
  }

  /** Whether a mark is nearer to its own foot than to the other one, sideways. */
  private static boolean isNearer(Standing standing, Landmark mark, Side side) {
    OptionalDouble own = aside(standing, mark, LoadLineOwner.foot(side));
    OptionalDouble other = aside(standing, mark, LoadLineOwner.foot(side.other()));
    return own.isPresent() && other.isPresent() && own.getAsDouble() < other.getAsDouble();
  }

  private static OptionalDouble aside(Standing standing, Landmark mark, LoadLineOwner of) {
    Optional<Estimate> copMm = standing.load(of).flatMap(MeanLoad::copRightMm);
    return copMm.isPresent() && mark.rightMm().isPresent()
        ? OptionalDouble.of(Math.abs(copMm.get().value() - mark.rightMm().get().mm()))
        : OptionalDouble.empty();
  }

  /** The patella's outer border lies lateral of the knee's centre. */
  private static boolean isBorderLateral(List<Landmark> landmarks, Side side) {
    OptionalDouble border = rightward(landmarks, LandmarkKind.OUTER_PATELLAR_BORDER);
    OptionalDouble knee = rightward(landmarks, LandmarkKind.KNEE_CENTRE);
    return border.isPresent()
        && knee.isPresent()
        && side.lateral() * (border.getAsDouble() - knee.getAsDouble()) > 0;
  }

  private static OptionalDouble rightward(List<Landmark> landmarks, LandmarkKind kind) {
    return landmarks.stream()
        .filter(l -> l.kind() == kind)
        .flatMap(l -> l.in(Plane.FRONTAL).stream())
        .mapToDouble(Coordinate::mm)
        .findFirst();
  }

  /**
   * The questions of the distance between two feet on two plates.
   *
   * @param statedMm the stance width that the sheet says
   * @param marked whether a mark lies beside its foot
   * @param platesApartMm how far the export's zero of the right foot's plate lies to the right of
   *     the left one's, mm; empty where that is not known
   */
  public static List<Question> plates(
      Standing standing,
      OptionalDouble statedMm,
      boolean marked,
      OptionalDouble platesApartMm,
      GeometryLimits limits) {
    OptionalDouble apart = GeometryCheck.apartMm(standing);
    if (apart.isEmpty()) {
      return List.of();
    }
    double apartMm = apart.getAsDouble();
    Bounds bounds = limits.of(LimitedQuantity.STANCE_WIDTH);
    if (bounds.isOdd(apartMm)) {
      return List.of(
          Question.of(
              LoadLineQuestion.FEET_APART,
              "feet apart",
              mm(apartMm),
              mm(bounds.askBelow()),
              mm(bounds.askAbove())));
    }
    List<Question> questions = new ArrayList<>();
    if (!isPlausible(apartMm, statedMm, bounds)) {
      questions.add(
          Question.of(
              LoadLineQuestion.FEET_OTHERWISE_APART,
              "plates",
              mm(apartMm),
              mm(statedMm.orElse(apartMm))));
    } else if (platesApartMm.isPresent()) {
      double exchangedMm = 2 * platesApartMm.getAsDouble() - apartMm;
      boolean told = marked && Math.abs(exchangedMm - apartMm) > UseLimits.MARKS_TELL_MM;
      if (isPlausible(exchangedMm, statedMm, bounds) && !told) {
        questions.add(
            Question.of(LoadLineQuestion.PLATES_UNPROVEN, "plates", mm(apartMm), mm(exchangedMm)));
      }
    }
    return questions;
  }

  private static boolean isPlausible(double apartMm, OptionalDouble statedMm, Bounds bounds) {
    return statedMm.isPresent()
        ? Math.abs(apartMm - statedMm.getAsDouble()) <= UseLimits.WIDTH_DIFFERS_MM
        : !bounds.isOdd(apartMm);
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
