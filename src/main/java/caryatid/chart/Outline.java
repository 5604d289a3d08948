package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.mark.Scale.Place;
import caryatid.geometry.Plane;
import caryatid.loadline.LandmarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The quiet outline of foot, shank and thigh behind the numbers, built from the marked joints. What
 * is not marked is placed by proportions of stature (Drillis and Contini 1966; Winter, Biomechanics
 * and Motor Control of Human Movement, fig. 4.1). It only shows what is meant; nothing is measured
 * from it.
 */
final class Outline {
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
  private final Place ankle;
  private final Place knee;

  private Outline(Leg leg, double stature) {
    this.leg = leg;
    this.stature = stature;
    Optional<Place> markedKnee = place(LandmarkKind.KNEE_CENTRE);
    this.ankle =
        place(LandmarkKind.ANKLE_AXIS)
            .orElse(
                new Place(markedKnee.map(Place::acrossMm).orElse(anyAcross()), ANKLE * stature));
    this.knee = markedKnee.orElse(new Place(ankle.acrossMm(), KNEE * stature));
  }

  /** Shapes from back to front; none where no joint is marked. */
  static List<List<Place>> of(Leg leg) {
    return stature(leg).map(s -> new Outline(leg, s).shapes()).orElse(List.of());
  }

  private static Optional<Double> stature(Leg leg) {
    return leg.at(LandmarkKind.HIP)
        .map(l -> l.heightMm() / HIP)
        .or(() -> leg.at(LandmarkKind.KNEE_CENTRE).map(l -> l.heightMm() / KNEE))
        .or(() -> leg.at(LandmarkKind.ANKLE_AXIS).map(l -> l.heightMm() / ANKLE))
        .filter(s -> s > SMALLEST_MM && s < TALLEST_MM);
  }

  private Optional<Place> place(LandmarkKind kind) {
    return leg.at(kind).map(l -> new Place(l.acrossMm(), l.heightMm()));
  }

  private double anyAcross() {
    return leg.levels().get(0).acrossMm();
  }

  private List<List<Place>> shapes() {
    List<List<Place>> shapes = new ArrayList<>();
    place(LandmarkKind.HIP)
        .ifPresent(
            hip -> shapes.add(Limb.between(knee, KNEE_HALF * stature, hip, HIP_HALF * stature)));
    shapes.add(Limb.between(ankle, ANKLE_HALF * stature, knee, KNEE_HALF * stature));
    shapes.add(leg.view().plane() == Plane.SAGITTAL ? footFromTheSide() : footFromTheFront());
    return shapes;
  }

  private List<Place> footFromTheSide() {
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

  private List<Place> footFromTheFront() {
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

  private List<Place> foot(double[][] fractions, double length) {
    List<Place> foot = new ArrayList<>();
    for (double[] f : fractions) {
      double forward = leg.view().sign() * f[0] * length;
      foot.add(new Place(ankle.acrossMm() + forward, f[1] * length));
    }
    return Limb.rounded(foot).stream()
        .map(place -> new Place(place.acrossMm(), Math.max(0, place.heightMm())))
        .toList();
  }
}
