package caryatid.demo;

import caryatid.alignment.Stand;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Moment;
import caryatid.loadline.MomentEffect;
import caryatid.loadline.Target;
import caryatid.recording.model.Provenance;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.Component;
import caryatid.sheet.Footwear;
import caryatid.sheet.Hands;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.standing.ForceInclination;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.PercentileRank;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Estimate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The two stands of {@link Numbered}. */
final class NumberedStand {
  private static final LoadLineOwner[] LINES = {
    LoadLineOwner.LEFT_FOOT, LoadLineOwner.RIGHT_FOOT, LoadLineOwner.WHOLE_BODY
  };
  private static final double[] RIGHT_MM = {-91.3, 87.6, 4.2, -93.9, 85.1, 6.7};
  private static final double[] ANTERIOR_MM = {33.1, 48.8, 40.4, 31.7, 50.2, 42.5};
  private static final double[] UP_N = {481, 331, 812, 460, 346, 806};

  private NumberedStand() {}

  /**
   * A stand.
   *
   * @param number 1 or 2
   */
  static Stand of(int number, List<Landmark> landmarks, List<Target> targets) {
    return new Stand(
        new Provenance("stand-" + number + ".csv", 100 + number, "a".repeat(128)),
        new Provenance("sheet.yaml", 103, "b".repeat(128)),
        Optional.empty(),
        trial(landmarks, targets),
        landmarks,
        standing(number),
        List.of(),
        moments(number),
        List.of());
  }

  private static Standing standing(int number) {
    List<MeanLoad> loads = new ArrayList<>();
    List<Sway> sways = new ArrayList<>();
    for (int line = 0; line < LINES.length; line++) {
      int k = 3 * (number - 1) + line;
      loads.add(load(LINES[line], k));
      sways.add(sway(LINES[line], OptionalDouble.empty(), 20 + k));
      sways.add(sway(LINES[line], OptionalDouble.of(10), k));
    }
    boolean first = number == 1;
    QuietStretch stretch =
        first
            ? new QuietStretch(
                125,
                3151,
                1.25,
                31.5,
                false,
                List.of(
                    new UnusedPart(0, 1.3, UnusedPart.Reason.SETTLING),
                    new UnusedPart(31.6, 33.8, UnusedPart.Reason.UNLOADED)))
            : new QuietStretch(138, 1471, 2.75, 29.4, true, List.of());
    List<PercentileRank> placements =
        first
            ? List.of(
                new PercentileRank(PercentileRank.Measure.SD_ANTERIOR, 5.37, 22, 25),
                new PercentileRank(PercentileRank.Measure.MEAN_SPEED, 17.26, 48, 53))
            : List.of();
    Map<Side, Estimate> share =
        first
            ? Map.of(Side.RIGHT, share(0.412, 0.011, 1), Side.LEFT, share(0.588, 0.012, 1))
            : Map.of(Side.RIGHT, share(0.436, 0.013, 2), Side.LEFT, share(0.564, 0.014, 2));
    return new Standing(stretch, first ? 100 : 50, loads, sways, placements, share, List.of());
  }

  private static Estimate share(double value, double u, int stand) {
    return DemoStand.estimate(value, u, 0, Cause.SWAY, "share " + stand);
  }

  private static MeanLoad load(LoadLineOwner of, int k) {
    return new MeanLoad(
        of,
        Optional.of(DemoStand.estimate(RIGHT_MM[k], 0.5 + 0.1 * k, 0, Cause.SWAY, "right " + k)),
        DemoStand.estimate(ANTERIOR_MM[k], 2.1 + 0.2 * k, 0, Cause.SWAY, "anterior " + k),
        Optional.of(DemoStand.estimate(UP_N[k], 3.3 + 0.4 * k, 0, Cause.SWAY, "up " + k)),
        Optional.of(
            new ForceInclination(
                DemoStand.estimate(0.011 + 0.001 * k, 0.002, 0, Cause.LEVEL, "level"),
                DemoStand.estimate(0.021 + 0.002 * k, 0.003, 0, Cause.LEVEL, "level"))));
  }

  private static Sway sway(LoadLineOwner of, OptionalDouble lowPassHz, int k) {
    return Sways.of(
        of,
        lowPassHz,
        2.1 + 0.3 * k,
        5.3 + 0.3 * k,
        14.1 + 0.7 * k,
        25.2 + 0.9 * k,
        301.5 + 11 * k,
        9.4 + 0.7 * k,
        193 + 17 * k,
        3.2 + 0.4 * k,
        0.31 + 0.02 * k,
        14.5 + k,
        12.5 + k);
  }

  /** About the knee by both lines, about the ankle by the vertical alone. */
  private static List<Moment> moments(int number) {
    double more = number - 1;
    return List.of(
        moment(
            "knee centre",
            LoadLineMethod.MEASURED_FORCE,
            newtonMetres(-3.2 - more, 0.7 + more / 5, "measured " + number),
            Optional.of(Estimate.exact(-0.038)),
            MomentEffect.TOO_SMALL_TO_TELL),
        moment(
            "knee centre",
            LoadLineMethod.VERTICAL,
            newtonMetres(-4.4 - more, 0.9 + more / 5, "vertical " + number),
            Optional.of(Estimate.exact(-0.053 - more / 100)),
            MomentEffect.BENDS_THE_KNEE),
        moment(
            "ankle axis",
            LoadLineMethod.VERTICAL,
            newtonMetres(15.6 + more, 1.3 + more / 5, "ankle " + number),
            Optional.empty(),
            MomentEffect.DORSIFLEXES_THE_ANKLE));
  }

  private static Estimate newtonMetres(double value, double u, String of) {
    return DemoStand.estimate(value, u, 0, Cause.SWAY, of);
  }

  private static Moment moment(
      String landmark,
      LoadLineMethod kind,
      Estimate newtonMetres,
      Optional<Estimate> perKg,
      MomentEffect effect) {
    return new Moment(
        new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, landmark),
        kind,
        newtonMetres,
        perKg,
        effect);
  }

  private static TrialSheet trial(List<Landmark> landmarks, List<Target> targets) {
    return new TrialSheet(
        "DEMO-7",
        OffsetDateTime.parse("2026-03-04T10:15+01:00"),
        ProstheticSide.RIGHT,
        AmputationLevel.TRANSFEMORAL,
        OptionalDouble.of(83.6),
        new Stance.PlatePerFoot("left plate", "right plate"),
        Optional.of(new OtherFoot(OtherFoot.Ground.BLOCK, -2.2)),
        Hands.FREE,
        Optional.of(new KneeSetting(false, Optional.of("standing"))),
        Optional.of(AnkleAxis.RIGHT),
        new Footwear("walking shoe", 14.5),
        OptionalDouble.of(172.3),
        OptionalDouble.of(Math.toRadians(6.4)),
        OptionalDouble.of(9),
        List.of(new Component("foot", "demo foot", Optional.of("X1-0042"))),
        landmarks.stream().map(NumberedStand::entry).toList(),
        targets,
        List.of(),
        AssumedUncertainties.ASSUMED,
        DecisionRule.USUAL,
        GeometryLimits.USUAL,
        List.of(),
        DemoStand.fullNotes());
  }

  private static LandmarkEntry entry(Landmark landmark) {
    return new LandmarkEntry(
        landmark.name(),
        landmark.kind(),
        landmark.side(),
        Optional.of(new LandmarkEntry.MeasuredDistance(1, Optional.empty(), false, 3)),
        Optional.of(new LandmarkEntry.MeasuredDistance(2, Optional.empty(), false, 3)),
        landmark.heightMm(),
        landmark.definition());
  }
}
