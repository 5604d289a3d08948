package caryatid.chart;

import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The 95 % prediction ellipse of a centre of pressure, from its area and covariance. */
final class Ellipse {
  private static final int STEPS = 48;

  private Ellipse() {}

  static Optional<List<PersonPoint>> of(Standing standing, LoadLineOwner of) {
    Optional<Sway> sway = standing.sway().stream().filter(s -> s.of() == of).findFirst();
    Optional<Sway.BothDirections> both = sway.flatMap(Sway::both);
    Optional<PersonPoint> mean = standing.load(of).flatMap(PathMarks::mean);
    return both.isPresent() && mean.isPresent()
        ? outline(both.get(), sway.get().sdAnteriorMm(), mean.get())
        : Optional.empty();
  }

  /** The square root of the covariance matrix, by Cholesky, turns a circle into the ellipse. */
  private static Optional<List<PersonPoint>> outline(
      Sway.BothDirections sway, double sdAnteriorMm, PersonPoint mean) {
    double determinant =
        sway.sdRightMm() * sway.sdRightMm() * sdAnteriorMm * sdAnteriorMm
            - sway.covarianceMm2() * sway.covarianceMm2();
    if (!(determinant > 0) || !(sway.sdRightMm() > 0)) {
      return Optional.empty();
    }
    double radius = Math.sqrt(sway.ellipseMm2() / (Math.PI * Math.sqrt(determinant)));
    double shear = sway.covarianceMm2() / sway.sdRightMm();
    double rest = Math.sqrt(determinant) / sway.sdRightMm();
    List<PersonPoint> outline = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      double across = radius * StrictMath.cos(2 * Math.PI * i / STEPS);
      double forward = radius * StrictMath.sin(2 * Math.PI * i / STEPS);
      outline.add(
          new PersonPoint(
              mean.acrossMm() + sway.sdRightMm() * across,
              mean.heightMm() + shear * across + rest * forward));
    }
    return Optional.of(outline);
  }
}
