package caryatid.samples;

/**
 * What the floor does to one foot, or to both together, sample by sample, in the person's frame.
 *
 * @param rightMm centre of pressure to the right, mm
 * @param anteriorMm centre of pressure anterior, mm
 * @param rightN force on the person to the right, N
 * @param anteriorN force on the person anterior, N
 * @param upN force on the person up, N
 * @param turnNmm free moment about the vertical through the centre of pressure, N mm
 */
public record FootTrace(
    double[] rightMm,
    double[] anteriorMm,
    double[] rightN,
    double[] anteriorN,
    double[] upN,
    double[] turnNmm) {

  static FootTrace empty(int samples) {
    return new FootTrace(
        new double[samples],
        new double[samples],
        new double[samples],
        new double[samples],
        new double[samples],
        new double[samples]);
  }

  public int size() {
    return upN.length;
  }

  /** Both feet as one: the force-weighted centre of pressure. The free moment is left 0. */
  FootTrace with(FootTrace other) {
    FootTrace both = empty(size());
    for (int i = 0; i < size(); i++) {
      double up = upN[i] + other.upN[i];
      both.upN[i] = up;
      both.rightN[i] = rightN[i] + other.rightN[i];
      both.anteriorN[i] = anteriorN[i] + other.anteriorN[i];
      both.rightMm[i] = (upN[i] * rightMm[i] + other.upN[i] * other.rightMm[i]) / up;
      both.anteriorMm[i] = (upN[i] * anteriorMm[i] + other.upN[i] * other.anteriorMm[i]) / up;
    }
    return both;
  }

  /** Force-weighted mean of a coordinate of the centre of pressure over samples from, up to to. */
  public double mean(double[] coordinateMm, int from, int to) {
    double moment = 0;
    double force = 0;
    for (int i = from; i < to; i++) {
      moment += upN[i] * coordinateMm[i];
      force += upN[i];
    }
    return moment / force;
  }

  /** Mean vertical force over samples from, up to to, N. */
  public double meanUpN(int from, int to) {
    double force = 0;
    for (int i = from; i < to; i++) {
      force += upN[i];
    }
    return force / (to - from);
  }
}
