package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import caryatid.standing.Sway;

/**
 * How far the body sways in a plane, as the centre of pressure shows it.
 *
 * @param sdMm standard deviation, mm
 * @param degreesOfFreedom how well that is known
 */
record BodySway(double sdMm, double degreesOfFreedom) {
  /**
   * The whole body's swing where it was recorded, else what the line's own foot shows of it: fore
   * and aft a part. Sideways one foot's centre of pressure hardly moves, because sideways the body
   * swings by loading the other foot. There it is taken to swing as far as this foot's point moves
   * fore and aft: bodies swing sideways 0.7 times as far as fore and aft (medians of 1,930 real
   * stands of the same data set, 5.3 and 7.4 mm), and one foot shows a part of that only.
   *
   * <p>The body's own is known to N degrees of freedom, the effective size that the stretch shows
   * for its mean. N is about twice what there is, and a variance has about twice as many
   * independent samples as a mean, because squares forget in half the time (first-order process).
   * What is concluded from one foot is known less well, by its relative uncertainty (JCGM 100:2008,
   * G.4.2).
   *
   * @throws java.util.NoSuchElementException for the frontal plane of a plate that measures fore
   *     and aft only
   */
  static BodySway of(Standing standing, LoadLineOwner line, Plane plane) {
    boolean whole = standing.load(LoadLineOwner.WHOLE_BODY).isPresent();
    Sway sway = sway(standing, whole ? LoadLineOwner.WHOLE_BODY : line);
    BodySway anterior = new BodySway(sway.sdAnteriorMm(), sway.effectiveAnterior());
    if (plane == Plane.SAGITTAL) {
      return whole
          ? anterior
          : new BodySway(anterior.sdMm / UseLimits.SHOWS, anterior.degreesOfFreedom)
              .concluded(UseLimits.FOLLOWS);
    }
    Sway.BothDirections both = sway.both().orElseThrow();
    BodySway right = new BodySway(both.sdRightMm(), both.effectiveRight());
    if (whole) {
      return right;
    }
    return (right.sdMm > anterior.sdMm ? right : anterior).concluded(UseLimits.FOLLOWS_SIDEWAYS);
  }

  private static Sway sway(Standing standing, LoadLineOwner of) {
    return standing.sway().stream().filter(s -> s.of() == of).findFirst().orElseThrow();
  }

  /** This swing where it stands for another one, to a relative standard uncertainty. */
  private BodySway concluded(double relative) {
    return new BodySway(sdMm, 1 / (1 / degreesOfFreedom + 2 * relative * relative));
  }
}
