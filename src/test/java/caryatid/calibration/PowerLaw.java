package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Sway without any time of its own: its spectrum falls as a power of the frequency, gently below a
 * corner and steeply above. It is put together from harmonics of a period of at least five minutes,
 * each with an amplitude and a phase by chance; there is none at frequency 0, so its long-run mean
 * is 0.
 *
 * @param sdMm long-run standard deviation, mm
 * @param slow exponent of the spectral density below the corner, 0 to 2
 * @param cornerHz where it gets steep, Hz
 * @param steep exponent above
 */
record PowerLaw(double sdMm, double slow, double cornerHz, double steep) implements Sway {
  private static final double PERIOD_S = 300;

  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    int points = Integer.highestOneBit((int) (PERIOD_S * rateHz)) * 2;
    double variance = 0;
    Complex[] harmonics = new Complex[points];
    java.util.Arrays.fill(harmonics, Complex.ZERO);
    for (int k = 1; k < points / 2; k++) {
      double density = density(k * rateHz / points);
      variance += density;
      double amplitude = StrictMath.sqrt(density / 2);
      harmonics[k] = new Complex(amplitude * noise.normal(), amplitude * noise.normal());
    }
    double scale = sdMm * points / StrictMath.sqrt(variance);
    Complex[] sway =
        new FastFourierTransformer(DftNormalization.STANDARD)
            .transform(harmonics, TransformType.INVERSE);
    double[] trace = new double[samples];
    for (int i = 0; i < samples; i++) {
      trace[i] = StrictMath.sqrt(2) * scale * sway[i].getReal();
    }
    return trace;
  }

  /** Spectral density, in any unit; continuous at the corner. */
  private double density(double hz) {
    return StrictMath.pow(hz / cornerHz, hz < cornerHz ? -slow : -steep);
  }
}
