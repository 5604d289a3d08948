package caryatid.samples;

/**
 * An invented person, and how they stand.
 *
 * @param massKg with prosthesis and what is worn, kg
 * @param foreAndAft sway of the whole body's centre of pressure, fore and aft
 * @param sideways the same, sideways: load shifted from foot to foot
 * @param rightShare long-run mean of the share of the load on the right foot, 0 to 1
 * @param left the left foot
 * @param right the right foot
 */
public record Person(
    double massKg,
    Sway foreAndAft,
    Sway sideways,
    double rightShare,
    Foothold left,
    Foothold right) {

  /** The weight, N (standard gravity, CGPM 1901). */
  public double weightN() {
    return massKg * 9.80665;
  }

  /** The same person on another try, both feet a little elsewhere. */
  public Person movedBy(double rightMm, double anteriorMm) {
    return new Person(
        massKg,
        foreAndAft,
        sideways,
        rightShare,
        left.movedBy(rightMm, anteriorMm),
        right.movedBy(rightMm, anteriorMm));
  }

  /** The whole body's long-run mean of the centre of pressure, to the right, mm. */
  public double rightMm() {
    return rightShare * right.rightMm() + (1 - rightShare) * left.rightMm();
  }

  /** The whole body's long-run mean of the centre of pressure, anterior, mm. */
  public double anteriorMm() {
    return rightShare * right.anteriorMm() + (1 - rightShare) * left.anteriorMm();
  }
}
