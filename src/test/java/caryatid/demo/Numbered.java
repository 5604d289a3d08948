package caryatid.demo;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.UnjudgedTarget;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An invented result in which no two numbers are alike, so that a column that shows another one's
 * number is seen. Nothing in it was computed, and it need not make sense: a test that uses it says
 * what each number must become on the page.
 *
 * <p>Two stands of a right transfemoral prosthesis, a plate under each foot; three findings, a
 * target that nothing was found for, and an offset that no target is for.
 */
public final class Numbered {
  private static final List<Cause> CAUSES =
      List.of(
          Cause.SWAY,
          Cause.PLATE_ACCURACY,
          Cause.MARKING,
          Cause.REGISTRATION,
          Cause.LANDMARK_MOVEMENT,
          Cause.YAW,
          Cause.LEVEL,
          Cause.REPEATABILITY);

  private static final double[] ANKLE_PARTS = {1.1, 0.4, 2.3, 0.7, 1.6, 0.2, 0.9, 3.1};
  private static final double[] KNEE_PARTS = {1.3, 0.5, 2.7, 0.8, 1.9, 0.3, 1.2, 3.7};
  private static final double[] FRONTAL_PARTS = {1.4, 0.6, 2.9, 1.0, 2.1, 0.1, 1.5, 4.1};

  private Numbered() {}

  /** The result: one state. */
  public static Result result() {
    return new Result(Result.METHOD, "caryatid test", state());
  }

  /** The state. */
  public static AlignmentState state() {
    List<Finding> findings = findings();
    List<StateOffset> offsets = new ArrayList<>();
    offsets.add(
        new StateOffset(
            findings.get(0).offset(),
            8.4,
            Optional.of(
                new PrecisionHint(Cause.SWAY, 0.41, PrecisionHint.Remedy.REPEAT, 12.2, 6.6))));
    offsets.add(
        new StateOffset(
            findings.get(1).offset(),
            9.3,
            Optional.of(
                new PrecisionHint(
                    Cause.MARKING, 0.52, PrecisionHint.Remedy.MARK_BETTER, 13.1, 7.7))));
    offsets.add(new StateOffset(findings.get(2).offset(), 10.7, Optional.empty()));
    offsets.add(new StateOffset(hip(), 11.9, Optional.empty()));
    return new AlignmentState(
        List.of(stand(1), stand(2)), offsets, findings, List.of(withheld()), List.of());
  }

  private static List<Finding> findings() {
    return List.of(
        new Finding(
            offset(Plane.SAGITTAL, "ankle axis", 47.3, ANKLE_PARTS, 4),
            target(Plane.SAGITTAL, "ankle axis", 44, 7, 11, "ankle leaflet", "in shoes"),
            0.873,
            false,
            Verdict.INSIDE_TOO_CLOSE),
        new Finding(
            offset(Plane.SAGITTAL, "knee centre", -12.6, KNEE_PARTS, 7),
            target(Plane.SAGITTAL, "knee centre", -4, 5, 9, "knee leaflet", ""),
            0.031,
            true,
            Verdict.OUTSIDE),
        new Finding(
            offset(Plane.FRONTAL, "knee centre", 5.8, FRONTAL_PARTS, Double.POSITIVE_INFINITY),
            target(Plane.FRONTAL, "knee centre", 2, 3, 8, "another knee leaflet", ""),
            0.964,
            true,
            Verdict.WITHIN));
  }

  private static UnjudgedTarget withheld() {
    return new UnjudgedTarget(
        target(Plane.FRONTAL, "hip", -15, 12, 13, "hip leaflet", ""),
        Remark.of(LoadLineRemark.KNEE_NOT_MARKED, Argument.term(Side.RIGHT)));
  }

  /** Nothing recommends where the line should run past the hip in the sagittal plane. */
  private static Offset hip() {
    return new Offset(
        new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "hip"),
        caryatid.standing.LoadLineOwner.RIGHT_FOOT,
        LoadLineMethod.VERTICAL,
        Estimate.exact(-23.4).with(part(Cause.SWAY, "hip", 2.4, 10)));
  }

  /** A part for each cause; that of the measuring line is made of two, 0.6 and 0.8 of it. */
  private static Offset offset(
      Plane plane, String landmark, double mm, double[] parts, double degrees) {
    List<Contribution> contributions = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      Cause cause = CAUSES.get(i);
      if (cause == Cause.REGISTRATION) {
        contributions.add(part(cause, "one line", 0.6 * parts[i], degrees));
        contributions.add(part(cause, "other line", 0.8 * parts[i], degrees));
      } else {
        contributions.add(part(cause, "it", parts[i], degrees));
      }
    }
    return new Offset(
        new LandmarkInPlane(plane, Side.RIGHT, landmark),
        caryatid.standing.LoadLineOwner.RIGHT_FOOT,
        LoadLineMethod.VERTICAL,
        new Estimate(mm, contributions));
  }

  /** Half as sensitive to something twice as uncertain, and in the other sense. */
  private static Contribution part(Cause cause, String of, double mm, double degrees) {
    return new Contribution(new Source(cause, of), 2 * mm, -0.5, degrees);
  }

  private static Target target(
      Plane plane,
      String landmark,
      double mm,
      double below,
      double above,
      String source,
      String condition) {
    return new Target(
        new LandmarkInPlane(plane, Side.RIGHT, landmark),
        mm,
        below,
        above,
        source,
        Target.MeantFor.FOOT,
        Optional.of(condition).filter(c -> !c.isEmpty()),
        Optional.empty());
  }

  private static Stand stand(int number) {
    return NumberedStand.of(number, landmarks(), findings().stream().map(Finding::target).toList());
  }

  private static List<Landmark> landmarks() {
    return List.of(
        landmark("ankle axis", LandmarkKind.ANKLE_AXIS, 92, 1.5, 81, 2.5),
        landmark("knee centre", LandmarkKind.KNEE_CENTRE, 84, 41, 493, 3.5),
        landmark("hip", LandmarkKind.HIP, 99, 63, 905, 4.5));
  }

  private static Landmark landmark(
      String name,
      LandmarkKind kind,
      double rightMm,
      double anteriorMm,
      double heightMm,
      double uMm) {
    return new Landmark(
        name,
        kind,
        Side.RIGHT,
        Optional.of(coordinate(rightMm, 1.2 * uMm)),
        Optional.of(coordinate(anteriorMm, uMm)),
        heightMm,
        Optional.empty());
  }

  private static Coordinate coordinate(double mm, double uMm) {
    return new Coordinate(mm, List.of(part(Cause.MARKING, "mark", uMm, Double.POSITIVE_INFINITY)));
  }
}
