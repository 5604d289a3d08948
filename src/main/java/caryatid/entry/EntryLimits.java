package caryatid.entry;

/** The limits beyond which numbers of an entry are asked about or refused, each with its source. */
final class EntryLimits {
  /** A landmark that is measured from the ground is mostly higher, mm (no source). */
  static final double LOW_LANDMARK_MM = 200;

  /** Legs hardly differ by more, mm (common practice, no source). */
  static final double LEGS_DIFFER_MM = 60;

  /** Legs cannot differ by more, mm (common practice, no source). */
  static final double MOST_LEGS_DIFFER_MM = 300;

  /** A setting hardly differs by more from what is recommended (common practice, no source). */
  static final double FAR_FROM_RECOMMENDED_DEG = 15;

  /** The same in mm (common practice, no source). */
  static final double FAR_FROM_RECOMMENDED_MM = 50;

  private EntryLimits() {}
}
