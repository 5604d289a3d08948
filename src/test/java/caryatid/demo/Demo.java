package caryatid.demo;

import caryatid.alignment.AlignmentState;
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
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.UnjudgedTarget;
import caryatid.loadline.Verdict;
import caryatid.recording.model.Recording;
import caryatid.remark.Remark;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.Notes;
import caryatid.sheet.ProstheticSide;
import caryatid.standing.PercentileRank;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Quantiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Invented results for tests of drawings and reports, put together by arithmetic: nobody stood
 * here. Coordinates in the person's frame, mm.
 */
public final class Demo {
  final Side side;
  ProstheticSide sides;
  boolean twoPlates;
  List<PercentileRank> placements = List.of();
  String wearer = "DEMO-7";
  String shoe = "demo shoe";
  AmputationLevel level = AmputationLevel.TRANSTIBIAL;
  double lineRightMm;
  double lineAnteriorMm = 60;
  OptionalDouble leanAnterior = OptionalDouble.of(0.02);
  Notes notes = DemoStand.blankNotes();
  final List<Landmark> landmarks = new ArrayList<>();
  final List<Target> targets = new ArrayList<>();
  final List<Remark> standRemarks = new ArrayList<>();
  private final List<Remark> stateRemarks = new ArrayList<>();

  private Demo(Side side) {
    this.side = side;
    this.sides = side == Side.LEFT ? ProstheticSide.LEFT : ProstheticSide.RIGHT;
    this.lineRightMm = 80 * side.lateral();
  }

  /** The prosthetic side. */
  public Side side() {
    return side;
  }

  /** Without landmarks or targets. */
  public static Demo empty(Side side) {
    return new Demo(side);
  }

  /** A transtibial wearer with ankle and knee marked and a target for each plane. */
  public static Demo transtibial(Side side) {
    return empty(side)
        .landmark("ankle axis", LandmarkKind.ANKLE_AXIS, 0, 72, 82, 3)
        .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 42, 85, 492, 4)
        .target(Plane.SAGITTAL, "ankle axis", 50, 10, 10)
        .target(Plane.SAGITTAL, "knee centre", 15, 10, 10)
        .target(Plane.FRONTAL, "knee centre", 0, 5, 10);
  }

  /** A transfemoral wearer with four landmarks, each with targets in both planes. */
  public static Demo transfemoral(Side side) {
    Demo demo = transtibial(side).level(AmputationLevel.TRANSFEMORAL);
    return demo.landmark(
            "socket reference point", LandmarkKind.SOCKET_REFERENCE_POINT, 60, 92, 700, 5)
        .landmark("hip", LandmarkKind.HIP, 68, 96, 905, 10)
        .target(Plane.FRONTAL, "ankle axis", 2, 8, 8)
        .target(Plane.SAGITTAL, "socket reference point", 0, 20, 20)
        .target(Plane.FRONTAL, "socket reference point", -5, 15, 15)
        .target(Plane.SAGITTAL, "hip", -10, 20, 20)
        .target(Plane.FRONTAL, "hip", -10, 20, 20);
  }

  /** Marks a point: anterior of the origin, sideways towards the wearer's own side, up. */
  public Demo landmark(
      String name, LandmarkKind kind, double anterior, double lateral, double up, double marking) {
    landmarks.add(
        new Landmark(
            name,
            kind,
            side,
            Optional.of(coordinate(lateral * side.lateral(), name + " sideways", marking)),
            Optional.of(coordinate(anterior, name + " forward", marking)),
            up,
            Optional.empty()));
    return this;
  }

  private static Coordinate coordinate(double mm, String of, double marking) {
    return new Coordinate(
        mm,
        List.of(
            DemoStand.contribution(Cause.MARKING, of, marking, Double.POSITIVE_INFINITY),
            DemoStand.contribution(Cause.REGISTRATION, "ruler", 1, 12)));
  }

  public Demo target(Plane plane, String landmark, double mm, double below, double above) {
    targets.add(
        new Target(
            new LandmarkInPlane(plane, side, landmark),
            mm,
            below,
            above,
            "Demo instructions, page 12",
            Target.MeantFor.FOOT,
            Optional.of("in shoes"),
            Optional.empty()));
    return this;
  }

  /** Where the load line runs: sideways towards the wearer's own side, and anterior. */
  public Demo line(double lateral, double anterior) {
    lineRightMm = lateral * side.lateral();
    lineAnteriorMm = anterior;
    return this;
  }

  /** A prosthesis on either side; the landmarks stay on one. */
  public Demo bothSides() {
    sides = ProstheticSide.BOTH;
    return this;
  }

  /** Where the sway lies among other people's. */
  public Demo placements(PercentileRank... placed) {
    placements = List.of(placed);
    return this;
  }

  /** A plate under each foot, so that the whole body's line is known as well. */
  public Demo twoPlates() {
    twoPlates = true;
    return this;
  }

  public Demo level(AmputationLevel is) {
    level = is;
    return this;
  }

  public Demo withoutHorizontalForce() {
    leanAnterior = OptionalDouble.empty();
    return this;
  }

  public Demo wearer(String code) {
    wearer = code;
    return this;
  }

  public Demo shoe(String worn) {
    shoe = worn;
    return this;
  }

  public Demo notes() {
    notes = DemoStand.fullNotes();
    return this;
  }

  public Demo stateRemarks(Remark... remarks) {
    stateRemarks.addAll(List.of(remarks));
    return this;
  }

  public Demo remarks(Remark... remarks) {
    standRemarks.addAll(List.of(remarks));
    return this;
  }

  /** A recording about the demo's line. */
  public Recording recording() {
    return recording(0);
  }

  /** The same, shifted anteriorly, mm. */
  public Recording recording(double shiftMm) {
    return DemoRecording.of(this, shiftMm);
  }

  public Result result() {
    return resultOf(state(0));
  }

  public Result resultOf(AlignmentState state) {
    return new Result(Result.METHOD, "caryatid demo", state);
  }

  /** A state of stands whose lines are shifted anteriorly from the demo's own, mm. */
  public AlignmentState state(double... shiftsMm) {
    List<Stand> stands = new ArrayList<>();
    for (double shift : shiftsMm) {
      stands.add(new DemoStand(this).build(shift));
    }
    Stand mean = new DemoStand(this).build(DoubleStream.of(shiftsMm).average().orElse(0));
    List<StateOffset> offsets =
        mean.offsets().stream().map(o -> new StateOffset(o, 4, Optional.empty())).toList();
    return new AlignmentState(
        stands, offsets, findings(mean), List.<UnjudgedTarget>of(), stateRemarks);
  }

  private List<Finding> findings(Stand stand) {
    return targets.stream().map(target -> finding(target, stand)).toList();
  }

  private static Finding finding(Target target, Stand stand) {
    Offset offset =
        stand.offsets().stream()
            .filter(
                o ->
                    o.kind() == LoadLineMethod.VERTICAL
                        && o.plane() == target.plane()
                        && o.landmark().equals(target.landmark()))
            .findFirst()
            .orElseThrow();
    double u = offset.mm().standardUncertainty();
    double dof = offset.mm().degreesOfFreedom();
    double inside =
        Quantiles.below((target.highestMm() - offset.mm().value()) / u, dof)
            - Quantiles.below((target.lowestMm() - offset.mm().value()) / u, dof);
    boolean within =
        offset.mm().value() >= target.lowestMm() && offset.mm().value() <= target.highestMm();
    return new Finding(offset, target, inside, true, verdict(inside, within));
  }

  private static Verdict verdict(double inside, boolean within) {
    if (inside >= 0.95) {
      return Verdict.WITHIN;
    }
    if (inside <= 0.05) {
      return Verdict.OUTSIDE;
    }
    return within ? Verdict.INSIDE_TOO_CLOSE : Verdict.OUTSIDE_TOO_CLOSE;
  }
}
