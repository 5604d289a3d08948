package caryatid.clinic;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A standard uncertainty that the clinic measured of itself.
 *
 * @param kind of what
 * @param by initials of whose hand it is
 * @param day when
 * @param value of a mark in mm, of a turn in degrees; from 0 to 100
 * @param degreesOfFreedom how well it is known, above 0 and at most 1,000,000
 */
public record MeasuredDoubt(
    What kind, String by, LocalDate day, BigDecimal value, BigDecimal degreesOfFreedom) {
  /** Largest value, in its unit, as in a trial sheet's marking. */
  static final int MOST = 100;

  /** Largest turn, degrees, as in a trial sheet. */
  static final int MOST_TURN_DEG = 45;

  /** Largest degrees of freedom, as in a trial sheet. */
  static final int MOST_DEGREES = 1_000_000;

  /** What it is of. */
  public enum What {
    /** Of marking a landmark, mm. */
    HAND("hand"),
    /** Of the turn of the feet on the plate, degrees. */
    TURN("turn");

    private final String word;

    What(String word) {
      this.word = word;
    }

    /** As the clinic's file holds it. */
    String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public MeasuredDoubt {
    boolean tooLarge =
        value.compareTo(BigDecimal.valueOf(MOST)) > 0
            || degreesOfFreedom.compareTo(BigDecimal.valueOf(MOST_DEGREES)) > 0;
    if (value.signum() < 0 || degreesOfFreedom.signum() <= 0 || tooLarge) {
      throw new IllegalArgumentException(value + ", " + degreesOfFreedom);
    }
  }
}
