package caryatid.samples;

/**
 * How one foot stands, in the person's frame.
 *
 * @param rightMm long-run mean of its centre of pressure to the right of the origin, mm
 * @param anteriorMm long-run mean anterior to the origin, mm
 * @param follows how much of the body's fore-and-aft sway this foot's centre of pressure makes; a
 *     prosthetic foot has no muscles and makes less
 * @param own sway sideways under this foot alone
 * @param pushRightN mean horizontal force of the floor on it, to the right, N; the other foot's is
 *     the opposite
 * @param pushAnteriorN the same, anterior, N
 */
public record Foothold(
    double rightMm,
    double anteriorMm,
    double follows,
    Sway own,
    double pushRightN,
    double pushAnteriorN) {

  /** The same foot set down, or loaded, a little elsewhere. */
  Foothold movedBy(double rightByMm, double anteriorByMm) {
    return new Foothold(
        rightMm + rightByMm, anteriorMm + anteriorByMm, follows, own, pushRightN, pushAnteriorN);
  }
}
