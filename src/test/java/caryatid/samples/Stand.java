package caryatid.samples;

/**
 * One stand of a {@link Person}: what the floor does to either foot.
 *
 * <p>Sideways, the whole body's centre of pressure moves because load moves from foot to foot: the
 * share follows from the sway and the distance of the feet. Fore and aft, each foot's centre of
 * pressure makes its part of the sway. A foot's own centre of pressure is independent of its load,
 * and both are steady about known means, so its force-weighted long-run mean is the one of its
 * {@link Foothold} exactly. The horizontal force is the one the whole body's sway needs, shared
 * like the load, and a push of the feet against each other.
 *
 * @param rateHz sampling rate, Hz
 * @param person who stood, with this stand's own long-run means
 * @param left under the left foot
 * @param right under the right foot
 */
public record Stand(double rateHz, Person person, FootTrace left, FootTrace right) {
  private static final Sway BREATH = new Relaxation(0.0011, 0.3);
  private static final Sway TURN_NMM = Relaxation.smoothed(new Relaxation(400, 2), 0.06);
  private static final Sway PUSH_N = Relaxation.smoothed(new Relaxation(1, 5), 0.06);

  /** A stand that begins settled and ends standing. */
  public static Stand of(Person person, int samples, double rateHz, Noise noise) {
    double[] fore = person.foreAndAft().trace(samples, rateHz, noise.split());
    double[] side = person.sideways().trace(samples, rateHz, noise.split());
    double[] push = PUSH_N.trace(samples, rateHz, noise.split());
    double[] breath = BREATH.trace(samples, rateHz, noise.split());
    Body body =
        new Body(
            person,
            rateHz,
            fore,
            Inertia.forceN(fore, rateHz, person.massKg()),
            Inertia.forceN(side, rateHz, person.massKg()),
            push);
    FootTrace left = FootTrace.empty(samples);
    FootTrace right = FootTrace.empty(samples);
    for (int i = 0; i < samples; i++) {
      double weight = person.weightN() * (1 + breath[i]);
      right.upN()[i] = weight * share(person, side[i]);
      left.upN()[i] = weight - right.upN()[i];
    }
    body.under(person.left(), left, -1, noise.split());
    body.under(person.right(), right, 1, noise.split());
    return new Stand(rateHz, person, left, right);
  }

  private static double share(Person person, double sideMm) {
    double apartMm = person.right().rightMm() - person.left().rightMm();
    return StrictMath.min(1, StrictMath.max(0, person.rightShare() + sideMm / apartMm));
  }

  /** Both feet as one. */
  public FootTrace whole() {
    return left.with(right);
  }

  /**
   * What both feet share: sway of the whole body, the force it needs, the push between the feet.
   */
  private record Body(
      Person person, double rateHz, double[] fore, double[] foreN, double[] sideN, double[] push) {

    /** Fills in all but the vertical force. */
    void under(Foothold foot, FootTrace trace, int sense, Noise noise) {
      double[] own = foot.own().trace(trace.size(), rateHz, noise.split());
      double[] turn = TURN_NMM.trace(trace.size(), rateHz, noise.split());
      for (int i = 0; i < trace.size(); i++) {
        double share = trace.upN()[i] / person.weightN();
        trace.rightMm()[i] = foot.rightMm() + own[i];
        trace.anteriorMm()[i] = foot.anteriorMm() + foot.follows() * fore[i];
        trace.rightN()[i] = foot.pushRightN() + sense * push[i] + share * sideN[i];
        trace.anteriorN()[i] = foot.pushAnteriorN() + sense * push[i] + share * foreN[i];
        trace.turnNmm()[i] = turn[i];
      }
    }
  }
}
