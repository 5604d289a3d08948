package caryatid.calibration;

import caryatid.samples.Noise;

/**
 * How one simulated wearer answers each screw: geometry times a factor that is drawn for each screw
 * by itself. Of 100 screws 85 have a factor from 0.3 to 2 (evenly by its logarithm), 10 have 0, and
 * 5 are reversed, by -0.3 to -1. Besides, each offset answers by 15 % (standard deviation) more or
 * less than that, and one that geometry leaves alone moves by 5 % of the screw's largest slope.
 *
 * @param mm what one unit of each screw does to each offset, mm
 */
record Responses(double[][] mm) {
  static Responses draw(Noise noise) {
    double[][] mm = new double[Screw.values().length][AlignedWearer.WHERE.size()];
    for (Screw screw : Screw.values()) {
      double factor = factor(noise);
      for (int offset = 0; offset < mm[0].length; offset++) {
        double apart = noise.normal();
        double slope = screw.slope(offset);
        mm[screw.ordinal()][offset] =
            slope == 0 ? 0.05 * apart * screw.steepest() : factor * (1 + 0.15 * apart) * slope;
      }
    }
    return new Responses(mm);
  }

  private static double factor(Noise noise) {
    double which = noise.even();
    double size = noise.even();
    if (which < 0.85) {
      return logEven(0.3, 2, size);
    }
    return which < 0.95 ? 0 : -logEven(0.3, 1, size);
  }

  private static double logEven(double low, double high, double part) {
    return low * StrictMath.exp(part * StrictMath.log(high / low));
  }

  /** What settings do to an offset, mm. */
  double sum(double[] settings, int offset) {
    double sum = 0;
    for (int screw = 0; screw < settings.length; screw++) {
      sum += settings[screw] * mm[screw][offset];
    }
    return sum;
  }
}
