package caryatid.calibration;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.StanceConditions;
import caryatid.loadline.Target;
import caryatid.loadline.UseLimits;
import caryatid.recording.model.MeasuringLine;
import caryatid.remark.Place;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.Footwear;
import caryatid.sheet.Hands;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.Notes;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Stance;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The trial sheet of a simulated fitting. */
final class Sheet {
  static final String KNEE = "knee centre";
  static final List<MeasuringLine> LINES =
      List.of(
          new MeasuringLine("rear", MeasuringLine.Sense.FORWARD, -300, Clinic.REGISTRATION_MM),
          new MeasuringLine("midline", MeasuringLine.Sense.RIGHTWARD, 0, Clinic.REGISTRATION_MM));
  private static final Optional<String> NOTHING = Optional.empty();

  private Sheet() {}

  /** With the knee where it was marked, mm in the person's frame. */
  static TrialSheet of(Clinic clinic, double rightMm, double anteriorMm, List<Target> targets) {
    return of(clinic, List.of(knee(rightMm, anteriorMm)), targets);
  }

  /** With landmarks and targets. */
  static TrialSheet of(Clinic clinic, List<LandmarkEntry> landmarks, List<Target> targets) {
    return new TrialSheet(
        "S1",
        OffsetDateTime.parse("2026-03-04T10:15+01:00"),
        ProstheticSide.RIGHT,
        AmputationLevel.TRANSTIBIAL,
        OptionalDouble.empty(),
        stance(clinic),
        clinic.plates() == 1
            ? Optional.of(new OtherFoot(OtherFoot.Ground.BLOCK, 0))
            : Optional.empty(),
        Hands.FREE,
        Optional.empty(),
        Optional.empty(),
        new Footwear("barefoot", 0),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        landmarks,
        targets,
        List.of(),
        Clinic.DOUBTS,
        DecisionRule.USUAL,
        GeometryLimits.USUAL,
        List.of(),
        new Notes(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING));
  }

  private static LandmarkEntry knee(double rightMm, double anteriorMm) {
    return new LandmarkEntry(
        KNEE,
        LandmarkKind.KNEE_CENTRE,
        Side.RIGHT,
        Optional.of(from("rear", anteriorMm + 300)),
        Optional.of(from("midline", rightMm)),
        Wearer.KNEE_UP_MM,
        NOTHING);
  }

  /** A distance from a measuring line, marked as well as the clinic marks. */
  static LandmarkEntry.MeasuredDistance from(String line, double mm) {
    return new LandmarkEntry.MeasuredDistance(mm, Optional.of(line), false, Clinic.MARKING_MM);
  }

  static Stance stance(Clinic clinic) {
    return clinic.plates() == 1
        ? new Stance.ProstheticFootOnPlate(Optional.empty())
        : new Stance.PlatePerFoot(Measured.LEFT_PLATE, Measured.RIGHT_PLATE);
  }

  static StanceConditions circumstances(Clinic clinic) {
    return new StanceConditions(
        Place.of("simulated"),
        stance(clinic),
        List.of(Side.RIGHT),
        false,
        false,
        false,
        false,
        false,
        clinic.plates() == 1 ? OptionalDouble.of(0) : OptionalDouble.empty(),
        OptionalDouble.empty(),
        Clinic.DOUBTS,
        UseLimits.USUAL);
  }

  /** A target whose tolerance is as wide on either side. */
  static Target target(Plane plane, double recommendedMm, double toleranceMm) {
    return new Target(
        new LandmarkInPlane(plane, Side.RIGHT, KNEE),
        recommendedMm,
        toleranceMm,
        toleranceMm,
        "simulated",
        Target.MeantFor.FOOT,
        NOTHING,
        Optional.empty());
  }
}
