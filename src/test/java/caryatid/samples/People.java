package caryatid.samples;

/**
 * Sway of invented people, set so that its size, speed, range and drift fall among those of 1,930
 * real stands of 60 s (open data set of Santos and Duarte 2016, PeerJ 4:e2648).
 */
final class People {
  /** What one foot's centre of pressure adds sideways of its own. */
  static final Sway UNDER_ONE_FOOT =
      Relaxation.smoothed(new Relaxation(0.5, 1).plus(new Relaxation(0.5, 8)), 0.06);

  private static final Sway POSTURE =
      new Relaxation(1.8, 3).plus(new Relaxation(2.2, 12)).plus(new Relaxation(2.2, 40));
  private static final Sway MUSCLE = Relaxation.smoothed(new Relaxation(0.6, 0.3), 0.06);

  private People() {}

  /** Sway fore and aft; size 1 makes a standard deviation of about 3.3 mm over 60 s. */
  static Sway foreAndAft(double size) {
    return Pendulum.published(POSTURE.times(size), MUSCLE.times(size));
  }

  /** Sway sideways; size 1 makes a standard deviation of about 1.7 mm over 60 s. */
  static Sway sideways(double size) {
    return Pendulum.published(POSTURE.times(0.5 * size), MUSCLE.times(0.6 * size));
  }
}
