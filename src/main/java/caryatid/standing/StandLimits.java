package caryatid.standing;

/**
 * The limits by which a stand is remarked or refused beside those of quiet standing, which {@link
 * Limits} holds with what "real stands" are. Each has its source.
 *
 * <p>"The 36" are the first, third and fifth run of twelve of 60 real stands of 60 s, "the other
 * 24" the rest of them (computed); all are of both feet of people without a prosthesis. "Single
 * feet" are 180 recordings of people with and without stroke, on foam and with eyes closed (public,
 * figures only, computed).
 */
final class StandLimits {
  // How much of the load

  /**
   * Below this share of the load, its line says little about a leg (common practice, no source).
   */
  static final double LITTLE_SHARE = 0.3;

  /** Above it, the other foot is hardly on the ground, or on the same plate (no source). */
  static final double NEARLY_WHOLE = 0.9;

  /** Plates that bear a smaller share beside the foot's do not bear the other foot (no source). */
  static final double OTHER_FOOT = 0.1;

  /** A larger difference of weight and body mass asks for a look (common practice, no source). */
  static final double MASS_DIFFERS = 0.05;

  /** Nobody who stands with a prosthesis weighs less, kg (common practice, no source). */
  static final double LEAST_BODY_KG = 10;

  /** A lighter whole body, or foot, is hardly that of a wearer, kg (no source). */
  static final double LIGHT_BODY_KG = 20;

  static final double LIGHT_FOOT_KG = 10;

  // How long and how often

  /** Fewer samples are no stretch (common practice, no source). */
  static final int FEWEST_SAMPLES = 10;

  /** Length and rate for stabilometry: Scoppa et al. 2013, Gait Posture 37:290-292. */
  static final double SHORT_S = 25;

  static final double LOW_HZ = 50;

  // How the force varies and leans

  /**
   * Standard deviation of the vertical force, as a fraction of its mean, above which a stand is not
   * plain any more: the whole body's is 0.0011 to 0.0033 in real standing and 0.13 in slow squats;
   * one foot's is at most 0.098 in 180 recordings of single feet. Between these and the limits a
   * person with a prosthesis may shift load, quickly or slowly.
   */
  static final double BODY_VARIES = 0.01;

  static final double FOOT_VARIES = 0.098;

  /** The same of one foot without its slow changes: the largest of single feet. */
  static final double FOOT_VARIES_QUICKLY = 0.047;

  /** Horizontal over vertical force; one foot's leans by 4 deg, 0.07, in real standing. */
  static final double MUCH_LEAN = 0.12;

  /**
   * Quick movement of the horizontal force, over the vertical one, over that of the centre of
   * pressure, per mm (see {@link QuickPush}). Fore and aft 0.0008 or more in every 2 s of the feet
   * of one real stand on two plates; a tenth of an invented one is at most 0.00015.
   */
  static final double PUSH_PER_MM = 0.0003;

  /**
   * The same sideways for one foot, whose centre of pressure hardly moves so: 0.0016 or more in 2 s
   * and 0.0030 or more in 5 s of the real stand; a tenth of an invented one is at most 0.00044.
   */
  static final double FOOT_PUSH_RIGHT_PER_MM = 0.0006;

  /**
   * Mean horizontal over vertical force of the whole body that is taken for the plate's own offset:
   * 0.3 deg, the smallest seen in real recordings under both feet, where it must be about zero.
   */
  static final double SHEAR_OFFSET = Math.toRadians(0.3);

  // How far and how fast the centre of pressure moves

  /** A tenth of the first percentile of real stands, medio-lateral 1.1 mm (see {@link Limits}). */
  static final double LITTLE_SD_MM = 0.1;

  /** The 99th percentile of real stands fore and aft (see {@link Limits}). */
  static final double MUCH_SD_MM = 17.6;

  /** Standard deviation fore and aft, mm: the largest of single feet. */
  static final double FOOT_SD_ANTERIOR_MM = 17.3;

  /** Drift that three in four real stands do not reach, mm (see {@link Limits}). */
  static final double DRIFT_MM = 8.9;

  /**
   * Smallest standard deviation, mm, over the root of the length, s. In any part of 5 to 60 s of
   * the 36 it is at least 0.220 fore and aft and 0.077 sideways. In a minute it is 1.48 mm fore and
   * aft, where the smallest of all 1,930 stands is 1.52 mm.
   */
  static final double LEAST_ANTERIOR_MM = 0.21;

  static final double LEAST_RIGHT_MM = 0.075;

  /** The limits of smallest sizes grow no further with the length, s (no source). */
  static final double LEAST_UP_TO_S = 50;

  /** Shorter parts may hold an unusually slow or quick moment, s (no source). */
  static final double SPEED_S = 20;

  /**
   * Speeds, mm/s, in 20 s of the 36: 2.68 to 38.0 fore and aft and 1.09 to 25.7 sideways; of the
   * other 24: 3.85 to 30.3 and 2.21 to 30.7.
   */
  static final double SLOWEST_ANTERIOR_MM_PER_S = 2.2;

  static final double SLOWEST_RIGHT_MM_PER_S = 0.9;

  static final double FASTEST_ANTERIOR_MM_PER_S = 40;

  static final double FASTEST_RIGHT_MM_PER_S = 31;

  /** Speed fore and aft over that sideways: 0.41 to 6.6 in any 5 s; single feet 2.2 and 2.7. */
  static final double LEAST_RATIO = 0.3;

  static final double MOST_RATIO = 10;

  private StandLimits() {}
}
