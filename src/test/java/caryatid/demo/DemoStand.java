package caryatid.demo;

import caryatid.alignment.Stand;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.Coordinate;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Moment;
import caryatid.loadline.MomentEffect;
import caryatid.loadline.Offset;
import caryatid.recording.model.Provenance;
import caryatid.remark.Remark;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.Component;
import caryatid.sheet.Footwear;
import caryatid.sheet.Hands;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.Notes;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.TrialSheet;
import caryatid.standing.ForceInclination;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** One invented stand, put together by arithmetic from where the line and the landmarks are. */
final class DemoStand {
  private final Demo demo;

  DemoStand(Demo demo) {
    this.demo = demo;
  }

  Stand build(double shiftMm) {
    Optional<ForceInclination> lean =
        demo.leanAnterior.isPresent()
            ? Optional.of(
                new ForceInclination(
                    estimate(0.01, 0.002, 0, Cause.LEVEL, "level"),
                    estimate(demo.leanAnterior.getAsDouble(), 0.002, 0, Cause.LEVEL, "level")))
            : Optional.empty();
    MeanLoad load =
        new MeanLoad(
            LoadLineOwner.foot(demo.side),
            Optional.of(cop(demo.lineRightMm, "right")),
            cop(demo.lineAnteriorMm + shiftMm, "anterior"),
            Optional.of(estimate(398, 3, 7, Cause.SWAY, "force")),
            lean);
    return new Stand(
        source("demo-stand.csv", 'a'),
        source("demo-sheet.yaml", 'b'),
        Optional.of(source("demo-plate.yaml", 'c')),
        trial(),
        demo.landmarks,
        standing(demo.twoPlates ? withOthers(load) : List.of(load)),
        offsets(load),
        moments(load),
        demo.standRemarks);
  }

  private static Provenance source(String name, char digit) {
    return new Provenance(name, 123_456, String.valueOf(digit).repeat(128));
  }

  private static Estimate cop(double mm, String of) {
    return estimate(mm, 1.6, 7, Cause.SWAY, of)
        .with(contribution(Cause.PLATE_ACCURACY, "plate 1 " + of, 1.0, Double.POSITIVE_INFINITY));
  }

  static Estimate estimate(double value, double u, double dof, Cause cause, String of) {
    return Estimate.exact(value)
        .with(contribution(cause, of, u, dof > 0 ? dof : Double.POSITIVE_INFINITY));
  }

  static Contribution contribution(Cause cause, String of, double u, double dof) {
    return new Contribution(new Source(cause, of), u, 1, dof);
  }

  /** The other foot stands as far out as the own one, and bears as much. */
  private List<MeanLoad> withOthers(MeanLoad own) {
    MeanLoad other =
        new MeanLoad(
            LoadLineOwner.foot(demo.side.other()),
            own.copRightMm().map(right -> right.times(-1.1)),
            own.copAnteriorMm(),
            own.upN(),
            own.lean());
    MeanLoad both =
        new MeanLoad(
            LoadLineOwner.WHOLE_BODY,
            Optional.of(cop(-0.05 * demo.lineRightMm, "right")),
            own.copAnteriorMm(),
            own.upN().map(n -> n.times(2)),
            own.lean());
    return List.of(own, other, both);
  }

  private Standing standing(List<MeanLoad> loads) {
    QuietStretch stretch =
        new QuietStretch(
            150,
            1950,
            1.5,
            19.5,
            false,
            List.of(
                new UnusedPart(0, 1.5, UnusedPart.Reason.SETTLING),
                new UnusedPart(19.5, 20, UnusedPart.Reason.UNLOADED)));
    List<Sway> sways = loads.stream().map(load -> sway(load.of())).toList();
    Map<Side, Estimate> share = Map.of(demo.side, estimate(0.495, 0.004, 7, Cause.SWAY, "share"));
    return new Standing(stretch, 100, loads, sways, demo.placements, share, List.<Remark>of());
  }

  private static Sway sway(LoadLineOwner of) {
    return Sways.of(
        of, OptionalDouble.empty(), 3.1, 5.2, 14.2, 24.8, 190.5, 10.58, 301.2, 1.4, 0.31, 14, 12);
  }

  private List<Offset> offsets(MeanLoad load) {
    List<Offset> offsets = new ArrayList<>();
    for (Landmark landmark : demo.landmarks) {
      for (Plane plane : Plane.values()) {
        if (landmark.in(plane).isPresent()) {
          offsets.add(offset(plane, landmark, load, LoadLineMethod.VERTICAL));
          load.lean()
              .ifPresent(
                  l -> offsets.add(offset(plane, landmark, load, LoadLineMethod.MEASURED_FORCE)));
        }
      }
    }
    return offsets;
  }

  private Offset offset(Plane plane, Landmark landmark, MeanLoad load, LoadLineMethod kind) {
    boolean sagittal = plane == Plane.SAGITTAL;
    Estimate line = sagittal ? load.copAnteriorMm() : load.copRightMm().orElseThrow();
    if (kind == LoadLineMethod.MEASURED_FORCE) {
      ForceInclination lean = load.lean().orElseThrow();
      line = line.plus(landmark.heightMm(), sagittal ? lean.anteriorPerUp() : lean.rightPerUp());
    }
    Coordinate at = landmark.in(plane).orElseThrow();
    Estimate mm = line.plus(-1, new Estimate(at.mm(), at.doubts()));
    return new Offset(
        landmark.at(plane), load.of(), kind, sagittal ? mm : mm.times(landmark.side().lateral()));
  }

  /** About knee and ankle; in the frontal plane by the measured force alone. */
  private List<Moment> moments(MeanLoad load) {
    List<Moment> moments = new ArrayList<>();
    for (Landmark at : demo.landmarks) {
      if (at.kind() == LandmarkKind.KNEE_CENTRE || at.kind() == LandmarkKind.ANKLE_AXIS) {
        moments.add(moment(Plane.SAGITTAL, at, load, LoadLineMethod.VERTICAL));
        if (load.lean().isPresent()) {
          moments.add(moment(Plane.SAGITTAL, at, load, LoadLineMethod.MEASURED_FORCE));
        }
        if (demo.twoPlates) {
          moments.add(moment(Plane.FRONTAL, at, load, LoadLineMethod.MEASURED_FORCE));
        }
      }
    }
    return moments;
  }

  private Moment moment(Plane plane, Landmark at, MeanLoad load, LoadLineMethod kind) {
    return new Moment(
        at.at(plane),
        kind,
        offset(plane, at, load, kind).mm().times(0.398),
        Optional.empty(),
        MomentEffect.HOLDS_KNEE_AGAINST_EXTENSION_STOP);
  }

  private TrialSheet trial() {
    boolean knee = demo.level.prostheticKnee();
    return new TrialSheet(
        demo.wearer,
        OffsetDateTime.parse("2026-03-04T10:15+01:00"),
        demo.sides,
        demo.level,
        OptionalDouble.of(82),
        demo.twoPlates
            ? new Stance.PlatePerFoot(
                demo.side == Side.LEFT ? "own plate" : "other plate",
                demo.side == Side.LEFT ? "other plate" : "own plate")
            : new Stance.ProstheticFootOnPlate(Optional.of("plate 1")),
        Optional.of(new OtherFoot(OtherFoot.Ground.BLOCK, 0)),
        Hands.FREE,
        knee ? Optional.of(new KneeSetting(false, Optional.of("standing"))) : Optional.empty(),
        Optional.of(AnkleAxis.of(Set.copyOf(demo.sides.sides()))),
        new Footwear(demo.shoe, 10),
        OptionalDouble.of(160),
        OptionalDouble.of(Math.toRadians(6)),
        OptionalDouble.of(5),
        List.of(
            new Component("foot", "demo foot, size 27", Optional.of("X1-0042")),
            new Component("ankle unit", "demo ankle", Optional.empty())),
        demo.landmarks.stream().map(DemoStand::entry).toList(),
        demo.targets,
        List.of(),
        AssumedUncertainties.ASSUMED,
        DecisionRule.USUAL,
        GeometryLimits.USUAL,
        List.of(),
        demo.notes);
  }

  private static LandmarkEntry entry(Landmark landmark) {
    return new LandmarkEntry(
        landmark.name(),
        landmark.kind(),
        landmark.side(),
        landmark.anteriorMm().map(DemoStand::measured),
        landmark.rightMm().map(DemoStand::measured),
        landmark.heightMm(),
        landmark.definition());
  }

  private static LandmarkEntry.MeasuredDistance measured(Coordinate coordinate) {
    return new LandmarkEntry.MeasuredDistance(coordinate.mm(), Optional.empty(), false, 3);
  }

  static Notes blankNotes() {
    return new Notes(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Notes fullNotes() {
    return new Notes(
        Optional.of("heel wedge one step firmer; ankle plantarflexed by 1.5 degrees"),
        Optional.of("Line at the knee where it is wanted; ankle left as it is."),
        Optional.of("comfortable, 2 of 10"),
        Optional.of("no redness after 10 min"),
        Optional.of("gait smooth, wearer content"),
        Optional.of("check again in outdoor shoes"),
        Optional.of("AB"),
        Optional.of("prosthetist"));
  }
}
