package caryatid.loadline;

import caryatid.demo.Sways;
import caryatid.geometry.Side;
import caryatid.remark.Place;
import caryatid.standing.ForceInclination;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Stands and landmarks for tests; invented unless a test says otherwise. */
public final class Legs {
  /** Nothing doubted but what a test adds. */
  public static final AssumedUncertainties NONE =
      new AssumedUncertainties(0, 0, 0, 0, 1e12, 0, 0, 1);

  private Legs() {}

  /** A landmark with exact marks. */
  public static Landmark mark(
      LandmarkKind kind, Side side, double rightMm, double anteriorMm, double heightMm) {
    return new Landmark(
        kind.name(),
        kind,
        side,
        Optional.of(new Coordinate(rightMm, List.of())),
        Optional.of(new Coordinate(anteriorMm, List.of())),
        heightMm,
        Optional.empty());
  }

  /** A mean load whose centre of pressure is known to a standard uncertainty. */
  public static MeanLoad load(
      LoadLineOwner of,
      double rightMm,
      double anteriorMm,
      double upN,
      double uMm,
      Optional<ForceInclination> lean) {
    return new MeanLoad(
        of,
        Optional.of(sway(rightMm, uMm, of + " right")),
        sway(anteriorMm, uMm, of + " anterior"),
        Optional.of(Estimate.exact(upN)),
        lean);
  }

  /** An exact lean. */
  public static Optional<ForceInclination> lean(double rightPerUp, double anteriorPerUp) {
    return Optional.of(
        new ForceInclination(Estimate.exact(rightPerUp), Estimate.exact(anteriorPerUp)));
  }

  private static Estimate sway(double mm, double uMm, String of) {
    return Estimate.exact(mm)
        .with(new Contribution(new Source(Cause.SWAY, of), uMm, 1, Double.POSITIVE_INFINITY));
  }

  /** A stand of these loads, a minute long. */
  public static Standing standing(MeanLoad... loads) {
    return new Standing(
        new QuietStretch(0, 6000, 0, 59.99, false, List.of()),
        100,
        List.of(loads),
        Stream.of(loads).map(l -> sway(l.of())).toList(),
        List.of(),
        Map.of(),
        List.of());
  }

  private static Sway sway(LoadLineOwner of) {
    return Sways.of(of, OptionalDouble.empty(), 3, 5, 12, 20, 400, 6.7, 280, 0, 0.2, 20, 15);
  }

  /** A right prosthesis with a knee, its foot alone on the plate. */
  public static StanceConditions rightFoot(AssumedUncertainties doubts) {
    return how(new Stance.ProstheticFootOnPlate(Optional.empty()), doubts, Side.RIGHT);
  }

  /** The right foot of a wearer of a stated mass, kg. */
  static StanceConditions rightFootOf(double massKg) {
    Stance stance = new Stance.ProstheticFootOnPlate(Optional.empty());
    return how(stance, NONE, OptionalDouble.of(massKg), Side.RIGHT);
  }

  /** Free, level, unlocked, of unknown mass. */
  public static StanceConditions how(
      Stance stance, AssumedUncertainties doubts, Side... prosthetic) {
    return how(stance, doubts, OptionalDouble.empty(), prosthetic);
  }

  private static StanceConditions how(
      Stance stance, AssumedUncertainties doubts, OptionalDouble massKg, Side... prosthetic) {
    return new StanceConditions(
        Place.of("sheet.yaml"),
        stance,
        List.of(prosthetic),
        true,
        false,
        false,
        false,
        false,
        OptionalDouble.empty(),
        massKg,
        doubts,
        UseLimits.USUAL);
  }

  /** A target for a foot's own line. */
  public static Target target(
      caryatid.geometry.Plane plane, LandmarkKind kind, double mm, double below, double above) {
    return new Target(
        new LandmarkInPlane(plane, Side.RIGHT, kind.name()),
        mm,
        below,
        above,
        "invented",
        Target.MeantFor.FOOT,
        Optional.empty(),
        Optional.empty());
  }
}
