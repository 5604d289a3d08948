package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.standing.LineOf;
import caryatid.standing.Standing;
import caryatid.standing.Sway;

/**
 * How far the body swings in a plane, as the centre of pressure shows it.
 *
 * @param sdMm standard deviation, mm
 * @param degreesOfFreedom how well that is known: the effective size N that the stretch shows for
 *     its mean. N is about twice what there is, and a variance has about twice as many independent
 *     samples as a mean, because squares forget in half the time (first-order process)
 */
record Swing(double sdMm, double degreesOfFreedom) {

  /**
   * The whole body's swing where it was recorded, else what the line's own foot shows of it. One
   * foot's centre of pressure hardly moves sideways, because sideways the body swings by loading
   * the other foot. There it is taken to swing as far as this foot's point moves fore and aft:
   * bodies swing sideways 0.7 times as far as fore and aft (medians of 1,930 real stands, 5.3 and
   * 7.4 mm; open data set of Santos and Duarte 2016, PeerJ 4:e2648), and one foot shows a part of
   * that only.
   */
  static Swing of(Standing standing, LineOf line, Plane plane) {
    LineOf best = standing.load(LineOf.WHOLE_BODY).isPresent() ? LineOf.WHOLE_BODY : line;
    Sway sway = standing.sway().stream().filter(s -> s.of() == best).findFirst().orElseThrow();
    Swing anterior = new Swing(sway.sdAnteriorMm(), sway.effectiveAnterior());
    Swing right = new Swing(sway.sdRightMm(), sway.effectiveRight());
    boolean sideways = best == LineOf.WHOLE_BODY || right.sdMm > anterior.sdMm;
    return plane == Plane.FRONTAL && sideways ? right : anterior;
  }
}
