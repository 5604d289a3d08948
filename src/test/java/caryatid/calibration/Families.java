package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Pendulum;
import caryatid.samples.Relaxation;
import caryatid.samples.Sway;
import java.util.List;

/**
 * The families. The program's estimator and its defaults were chosen on {@link #CHOSEN_ON}. {@link
 * #LOOKED_AT} were run afterwards, and once looked at count as known; {@link #HELD_BACK} were first
 * run when everything was fixed.
 */
final class Families {
  private static final double SMOOTH_S = 0.06;

  private Families() {}

  /** Relaxations of fixed times from 0.3 to 40 s in varying strength. */
  static final Family RELAXATIONS =
      Family.of(
          "relaxations 0.3 to 40 s",
          (sdMm, noise) ->
              mixture(
                  sdMm,
                  new double[] {0.3, 1, 3, 10, 40},
                  weights(noise, 0.05, 0.25, 0.3, 0.22, 0.18)));

  /** The published pendulum, its gains and its wandering varied. */
  static final Family PENDULUM = Family.of("pendulum with delayed feedback", Families::pendulum);

  /** Three to six relaxations of any times from 0.3 to 40 s. */
  static final Family ANY_RELAXATIONS =
      Family.of("relaxations of any times", Families::anyRelaxations);

  /** A damped oscillation and a slow relaxation. */
  static final Family OSCILLATION = Family.of("second-order autoregression", Families::oscillation);

  /** A pendulum whose muscles switch on and off. */
  static final Family INTERMITTENT =
      Family.of("pendulum with intermittent feedback", Families::intermittent);

  /** Drift slower than any recording. */
  static final Family DRIFT = Family.of("drift of 60 to 120 s", Families::drift);

  /** A spectrum that falls as a power of the frequency. */
  static final Family POWER_LAW = Family.of("power-law spectrum", Families::powerLaw);

  /** Postures that are kept and exchanged. */
  static final Family POSTURES = Family.of("postures kept 5 to 30 s", Families::postures);

  /** A random walk within bounds. */
  static final Family FREE_WITHIN = Family.of("free within bounds", Families::freeWithin);

  /** Breathing and slow waves. */
  static final Family WAVES = Family.of("breathing and slow waves", Families::waves);

  /** Sudden moves that fade. */
  static final Family PUSHES = Family.of("moves that fade", Families::pushes);

  /** Now steadier, now less steady. */
  static final Family UNSTEADY = Family.of("sway that swells and ebbs", Families::unsteady);

  /** Fast trembling, a slow posture and few moves between. */
  static final Family TREMBLING = Family.of("trembling and slow leaning", Families::trembling);

  /** Leaning to one level after another, with waves about it. */
  static final Family LEANING = Family.of("leaning to and fro with waves", Families::leaning);

  /** A power-law spectrum whose size swells and ebbs. */
  static final Family RESTLESS = Family.of("power law that swells and ebbs", Families::restless);

  /** Made before the pooled spread between stands was first run; see docs/calibration.md. */
  static final List<Family> FROZEN = List.of(TREMBLING, LEANING, RESTLESS);

  static final List<Family> CHOSEN_ON = List.of(RELAXATIONS, PENDULUM);
  static final List<Family> LOOKED_AT =
      List.of(ANY_RELAXATIONS, OSCILLATION, INTERMITTENT, DRIFT, POWER_LAW, POSTURES, FREE_WITHIN);
  static final List<Family> HELD_BACK = List.of(WAVES, PUSHES, UNSTEADY);

  /** Relaxations with given times and shares of the variance, smoothed as a body smooths. */
  static Sway mixture(double sdMm, double[] timesS, double[] shares) {
    Sway sum = new Relaxation(sdMm * StrictMath.sqrt(shares[0]), timesS[0]);
    for (int i = 1; i < timesS.length; i++) {
      sum = sum.plus(new Relaxation(sdMm * StrictMath.sqrt(shares[i]), timesS[i]));
    }
    return Relaxation.smoothed(sum, SMOOTH_S);
  }

  /** Shares about given ones, each varied by a factor, that sum to 1. */
  private static double[] weights(Noise noise, double... about) {
    double[] shares = new double[about.length];
    double sum = 0;
    for (int i = 0; i < about.length; i++) {
      shares[i] = about[i] * StrictMath.exp(0.5 * noise.normal());
      sum += shares[i];
    }
    for (int i = 0; i < about.length; i++) {
      shares[i] /= sum;
    }
    return shares;
  }

  private static Sway pendulum(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.3, 0.3, 0.2);
    Sway posture =
        new Relaxation(0.75 * sdMm * StrictMath.sqrt(w[0]), 3)
            .plus(new Relaxation(0.75 * sdMm * StrictMath.sqrt(w[1]), 12))
            .plus(new Relaxation(0.75 * sdMm * StrictMath.sqrt(w[2]), 40));
    double rough = 0.13 * sdMm * StrictMath.exp(0.3 * noise.normal());
    Sway muscle = Relaxation.smoothed(new Relaxation(rough, 0.3), SMOOTH_S);
    Pendulum published = Pendulum.published(posture, muscle);
    return new Pendulum(
        published.fallS2() * noise.between(0.9, 1.1),
        noise.between(1.3, 1.5),
        noise.between(0.38, 0.48),
        noise.between(0.14, 0.17),
        posture,
        muscle);
  }

  private static Sway anyRelaxations(double sdMm, Noise noise) {
    int count = 3 + (int) (4 * noise.even());
    double[] times = new double[count];
    double[] about = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = 0.3 * StrictMath.exp(noise.even() * StrictMath.log(40 / 0.3));
      about[i] = 1;
    }
    return mixture(sdMm, times, weights(noise, about));
  }

  private static Sway oscillation(double sdMm, Noise noise) {
    double slow = noise.between(0.3, 0.7);
    Sway fast =
        new Oscillation(
            sdMm * StrictMath.sqrt(1 - slow), noise.between(0.15, 0.5), noise.between(0.5, 2));
    return Relaxation.smoothed(
        fast.plus(new Relaxation(sdMm * StrictMath.sqrt(slow), noise.between(4, 20))), SMOOTH_S);
  }

  private static Sway intermittent(double sdMm, Noise noise) {
    Sway wandering =
        new Relaxation(0.5 * sdMm, noise.between(2, 8))
            .plus(new Relaxation(0.5 * sdMm, noise.between(10, 40)));
    Sway balancing = new IntermittentPendulum(0.33 * sdMm, noise.between(0.18, 0.22));
    return Relaxation.smoothed(balancing.plus(wandering), SMOOTH_S);
  }

  private static Sway powerLaw(double sdMm, Noise noise) {
    return new PowerLaw(
        sdMm, noise.between(0.5, 1.2), noise.between(0.25, 0.6), noise.between(2.8, 3.8));
  }

  private static Sway postures(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.35, 0.35, 0.3);
    Sway kept =
        Relaxation.smoothed(new Postures(sdMm * StrictMath.sqrt(w[0]), noise.between(5, 30)), 0.5);
    Sway about = mixture(sdMm, new double[] {1, 4}, new double[] {w[1], w[2]});
    return kept.plus(about);
  }

  private static Sway freeWithin(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.6, 0.4);
    Sway walk =
        Relaxation.smoothed(
            new FreeWithin(sdMm * StrictMath.sqrt(w[0]), noise.between(4, 25)), 0.1);
    Sway about = mixture(sdMm, new double[] {0.5, 2}, new double[] {0.6 * w[1], 0.4 * w[1]});
    return walk.plus(about);
  }

  private static Sway waves(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.08, 0.3, 0.62);
    Sway breath =
        new Waves(sdMm * StrictMath.sqrt(w[0]), noise.between(3, 5), noise.between(10, 30));
    Sway slow =
        new Waves(sdMm * StrictMath.sqrt(w[1]), noise.between(10, 35), noise.between(10, 60));
    Sway about =
        mixture(
            sdMm * StrictMath.sqrt(w[2]),
            new double[] {0.5, 3, noise.between(10, 40)},
            weights(noise, 0.15, 0.45, 0.4));
    return breath.plus(slow).plus(about);
  }

  private static Sway pushes(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.55, 0.45);
    Sway moves =
        new Pushes(sdMm * StrictMath.sqrt(w[0]), noise.between(2, 8), noise.between(3, 20));
    Sway about =
        mixture(
            sdMm * StrictMath.sqrt(w[1]),
            new double[] {0.5, 2, noise.between(5, 40)},
            weights(noise, 0.2, 0.4, 0.4));
    return Relaxation.smoothed(moves, 0.3).plus(about);
  }

  private static Sway unsteady(double sdMm, Noise noise) {
    Sway steady =
        mixture(sdMm, new double[] {0.5, 2, 8, 30}, weights(noise, 0.12, 0.33, 0.35, 0.2));
    return new Unsteady(steady, noise.between(0.2, 0.5), noise.between(3, 15));
  }

  private static Sway trembling(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.7, 0.3);
    Sway about =
        mixture(
            sdMm * StrictMath.sqrt(w[0]),
            new double[] {0.3, noise.between(2, 6), noise.between(15, 50)},
            weights(noise, 0.1, 0.5, 0.4));
    Sway moves =
        new Pushes(sdMm * StrictMath.sqrt(w[1]), noise.between(5, 15), noise.between(2, 8));
    return about.plus(Relaxation.smoothed(moves, 0.3));
  }

  private static Sway leaning(double sdMm, Noise noise) {
    double[] w = weights(noise, 0.35, 0.2, 0.45);
    Sway kept =
        Relaxation.smoothed(new Postures(sdMm * StrictMath.sqrt(w[0]), noise.between(8, 40)), 0.8);
    Sway slow = new Waves(sdMm * StrictMath.sqrt(w[1]), noise.between(6, 20), noise.between(8, 40));
    Sway about =
        mixture(
            sdMm * StrictMath.sqrt(w[2]),
            new double[] {0.5, 2, noise.between(4, 12)},
            weights(noise, 0.2, 0.4, 0.4));
    return kept.plus(slow).plus(about);
  }

  private static Sway restless(double sdMm, Noise noise) {
    return new Unsteady(powerLaw(sdMm, noise), noise.between(0.15, 0.4), noise.between(4, 20));
  }

  private static Sway drift(double sdMm, Noise noise) {
    return mixture(
        sdMm, new double[] {0.4, 2, noise.between(60, 120)}, weights(noise, 0.1, 0.45, 0.45));
  }
}
