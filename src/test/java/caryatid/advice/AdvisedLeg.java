package caryatid.advice;

import caryatid.advice.Situation.Circumstance;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.views.RecordAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** One leg, invented, of which an advice is asked; to be varied. */
public final class AdvisedLeg {
  public static final LandmarkInPlane KNEE =
      new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, KinematicsTest.KNEE);
  public static final LandmarkInPlane KNEE_FRONT =
      new LandmarkInPlane(Plane.FRONTAL, Side.RIGHT, KinematicsTest.KNEE);
  public static final LandmarkInPlane ANKLE_SIDE =
      new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, KinematicsTest.ANKLE);
  public static final Adjustment ANKLE =
      new Adjustment(ChangeKind.PLANTARFLEXION, 0, -8, 8, 0.5, OptionalDouble.of(2));
  public static final Adjustment FORWARD =
      new Adjustment(ChangeKind.FOOT_FORWARD, 0, -20, 20, 2, OptionalDouble.empty());
  public static final Adjustment ONCE_FORWARD =
      new Adjustment(ChangeKind.FOOT_FORWARD, 0, 0, 12, 12, OptionalDouble.empty());
  public static final Adjustment SOCKET_ONCE_BACK =
      new Adjustment(ChangeKind.SOCKET_FORWARD, 0, -12, 0, 12, OptionalDouble.empty());
  public static final Adjustment FLEXION =
      new Adjustment(ChangeKind.SOCKET_FLEXION, 5, 0, 10, 1, OptionalDouble.empty());

  public static Target target(LandmarkInPlane at, double mm, double tolerance) {
    return new Target(
        at,
        mm,
        tolerance,
        tolerance,
        "instructions (invented)",
        Target.MeantFor.FOOT,
        Optional.empty(),
        Optional.empty());
  }

  public static Offset offset(LandmarkInPlane at, double mm, double sd) {
    List<Contribution> doubts =
        List.of(
            new Contribution(
                new Source(Cause.REPEATABILITY, at.toString()), sd, 1, Double.POSITIVE_INFINITY),
            new Contribution(
                new Source(Cause.PLATE_ACCURACY, "plate"), 1, 1, Double.POSITIVE_INFINITY));
    return new Offset(
        at, LoadLineOwner.foot(Side.RIGHT), LoadLineMethod.VERTICAL, new Estimate(mm, doubts));
  }

  public static MeasuredState state(int name, double plantarflexion, double kneeMm) {
    return new MeasuredState(
        name,
        "plate",
        true,
        Map.of(ChangeKind.PLANTARFLEXION, plantarflexion),
        List.of(offset(KNEE, kneeMm, 2)));
  }

  final List<MeasuredState> states = new ArrayList<>();
  List<Target> targets = List.of(target(KNEE, 15, 10));
  List<Adjustment> adjustments = List.of(ANKLE);
  Set<Circumstance> circumstances = Set.of();
  List<Remark> causes = List.of();
  Extension extension = Extension.UNKNOWN;
  LegChain leg = KinematicsTest.leg(false, Side.RIGHT);

  /** A stand for each, with the line so far in front of the knee, and the ankle at 0. */
  public AdvisedLeg kneeAt(double... mm) {
    for (double each : mm) {
      states.add(state(states.size() + 1, 0, each));
    }
    return this;
  }

  /** A stand with other offsets. */
  public AdvisedLeg stands(Offset... offsets) {
    states.add(new MeasuredState(states.size() + 1, "plate", true, Map.of(), List.of(offsets)));
    return this;
  }

  /** The knee belongs to the prosthesis. */
  public AdvisedLeg prosthetic() {
    leg = KinematicsTest.leg(true, Side.RIGHT);
    return this;
  }

  /** The knee alone was marked. */
  public AdvisedLeg ankleNotMarked() {
    leg = new LegChain(Side.RIGHT, leg.prostheticKnee(), List.of(leg.landmarks().get(0)));
    return this;
  }

  public AdvisedLeg holds(Circumstance... all) {
    circumstances = Set.of(all);
    return this;
  }

  public AdvisedLeg asks(Target... all) {
    targets = List.of(all);
    return this;
  }

  public AdvisedLeg can(Adjustment... all) {
    adjustments = List.of(all);
    return this;
  }

  public AdvisedLeg after(Remark... plainCauses) {
    causes = List.of(plainCauses);
    return this;
  }

  public AdvisedLeg contracture(double deg, double socketFlexionDeg) {
    extension = new Extension(OptionalDouble.of(deg), OptionalDouble.of(socketFlexionDeg));
    return this;
  }

  public Advice advice() {
    return Advisor.advise(
        new Situation(leg, states, targets, adjustments, circumstances, causes, extension));
  }

  /** The same as a record's advice, without what the record adds. */
  public RecordAdvice ofRecord() {
    return new RecordAdvice(
        Side.RIGHT,
        leg.prostheticKnee(),
        Optional.empty(),
        advice(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }
}
