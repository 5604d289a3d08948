package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.geometry.Plane;
import caryatid.loadline.LandmarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pale outline of foot, shank and thigh behind the numbers, built from the marked joints. What
 * is not marked is placed by proportions of stature (Drillis and Contini 1966; Winter, Biomechanics
 * and Motor Control of Human Movement, fig. 4.1). It only shows what is meant; nothing is measured
 * from it.
 */
final class LegOutline {
  private static final double ANKLE = 0.039;
  private static final double KNEE = 0.285;
  private static final double HIP = 0.530;
  private static final double FOOT_LENGTH = 0.152;
  private static final double FOOT_BREADTH = 0.055;

  /** Half-widths as a fraction of stature: our own choice, for looks. */
  private static final double ANKLE_HALF = 0.019;

  private static final double KNEE_HALF = 0.031;
  private static final double HIP_HALF = 0.043;

  /** Beyond these, joints lie where no leg has them, and there is nothing to draw. */
  private static final double SMALLEST_MM = 800;

  private static final double TALLEST_MM = 2600;

  private final Leg leg;
  private final double stature;
  private final PersonPoint ankle;
  private final PersonPoint knee;

  private LegOutline(Leg leg, double stature) {
    this.leg = leg;
    this.stature = stature;
    Optional<PersonPoint> markedKnee = place(LandmarkKind.KNEE_CENTRE);
    this.ankle =
        place(LandmarkKind.ANKLE_AXIS)
            .orElse(
                new PersonPoint(
                    markedKnee.map(PersonPoint::acrossMm).orElse(anyAcross()), ANKLE * stature));
    this.knee = markedKnee.orElse(new PersonPoint(ankle.acrossMm(), KNEE * stature));
  }

  /** Shapes from back to front; none where no joint is marked. */
  static List<List<PersonPoint>> of(Leg leg) {
    return stature(leg).map(s -> new LegOutline(leg, s).shapes()).orElse(List.of());
  }

  private static Optional<Double> stature(Leg leg) {
    return leg.at(LandmarkKind.HIP)
        .map(l -> l.heightMm() / HIP)
        .or(() -> leg.at(LandmarkKind.KNEE_CENTRE).map(l -> l.heightMm() / KNEE))
        .or(() -> leg.at(LandmarkKind.ANKLE_AXIS).map(l -> l.heightMm() / ANKLE))
        .filter(s -> s > SMALLEST_MM && s < TALLEST_MM);
  }

  private Optional<PersonPoint> place(LandmarkKind kind) {
    return leg.at(kind).map(l -> new PersonPoint(l.acrossMm(), l.heightMm()));
  }

  private double anyAcross() {
    return leg.levels().get(0).acrossMm();
  }

  private List<List<PersonPoint>> shapes() {
    List<List<PersonPoint>> shapes = new ArrayList<>();
    place(LandmarkKind.HIP)
        .ifPresent(
            hip ->
                shapes.add(
                    LimbOutline.between(knee, KNEE_HALF * stature, hip, HIP_HALF * stature)));
    shapes.add(LimbOutline.between(ankle, ANKLE_HALF * stature, knee, KNEE_HALF * stature));
    shapes.add(leg.view().plane() == Plane.SAGITTAL ? footFromTheSide() : footFromTheFront());
    return shapes;
  }

  private List<PersonPoint> footFromTheSide() {
    double[][] fractions = {
      {-0.26, 0},
      {-0.30, 0.09},
      {-0.26, 0.28},
      {-0.13, 0.38},
      {0.12, 0.38},
      {0.36, 0.21},
      {0.62, 0.11},
      {0.73, 0.06},
      {0.72, 0}
    };
    return foot(fractions, FOOT_LENGTH * stature);
  }

  private List<PersonPoint> footFromTheFront() {
    double[][] fractions = {
      {-0.5, 0},
      {-0.52, 0.28},
      {-0.33, 0.75},
      {-0.22, 1.1},
      {0.22, 1.1},
      {0.33, 0.75},
      {0.52, 0.28},
      {0.5, 0}
    };
    return foot(fractions, FOOT_BREADTH * stature);
  }

  private List<PersonPoint> foot(double[][] fractions, double length) {
    List<PersonPoint> foot = new ArrayList<>();
    for (double[] f : fractions) {
      double forward = leg.view().sign() * f[0] * length;
      foot.add(new PersonPoint(ankle.acrossMm() + forward, f[1] * length));
    }
    return LimbOutline.rounded(foot).stream()
        .map(place -> new PersonPoint(place.acrossMm(), Math.max(0, place.heightMm())))
        .toList();
  }
}
