package caryatid.calibration;

import caryatid.samples.Foothold;
import caryatid.samples.Noise;
import caryatid.samples.Person;
import caryatid.samples.Relaxation;
import caryatid.samples.Sway;

/**
 * A simulated wearer, prosthesis on the right, and where their load line truly runs.
 *
 * <p>From stand to stand the mean moves by a normal distribution whose standard deviation is the
 * wearer's own: log-normal about what the program assumes of a wearer it does not know, 6 mm fore
 * and aft and 4 mm sideways, in 90 of 100 wearers between half and twice that.
 *
 * @param person how they stand on average
 * @param betweenForeMm standard deviation between stands, fore and aft, mm
 * @param betweenSideMm the same sideways, mm
 * @param kneeRightMm the knee's true place to the right, mm
 * @param kneeAnteriorMm the knee's true place anterior, mm
 */
record Wearer(
    Person person,
    double betweenForeMm,
    double betweenSideMm,
    double kneeRightMm,
    double kneeAnteriorMm) {
  static final double KNEE_UP_MM = 492;
  private static final Sway OWN =
      Relaxation.smoothed(new Relaxation(0.5, 1).plus(new Relaxation(0.5, 8)), 0.06);

  static Wearer draw(Family family, Noise noise) {
    Family.Swaying sway = family.draw(noise);
    double share = noise.between(0.35, 0.5);
    double follows = noise.between(0.5, 0.9);
    Foothold right = new Foothold(110, noise.between(-20, 20), follows, OWN, 9, -6);
    Foothold left =
        new Foothold(-115, noise.between(10, 40), (1 - share * follows) / (1 - share), OWN, -9, 6);
    double steadiness = StrictMath.exp(0.4 * noise.normal());
    return new Wearer(
        new Person(noise.between(55, 110), sway.fore(), sway.side(), share, left, right),
        6 * steadiness,
        4 * steadiness,
        right.rightMm() + noise.between(-20, 20),
        right.anteriorMm() - noise.between(0, 40));
  }

  /**
   * The wearer as they stand this time.
   *
   * @param away how far from their mean, sideways and fore and aft, in their own standard
   *     deviations
   * @param restless by what factor the clinic's wearers differ more from stand to stand
   */
  Person thisTime(double[] away, double restless) {
    return person.movedBy(restless * betweenSideMm * away[0], restless * betweenForeMm * away[1]);
  }

  /** The true sagittal offset of the prosthetic foot's line from the knee, mm anterior. */
  double sagittalMm() {
    return person.right().anteriorMm() - kneeAnteriorMm;
  }

  /** The true frontal offset, mm lateral. */
  double frontalMm() {
    return person.right().rightMm() - kneeRightMm;
  }
}
