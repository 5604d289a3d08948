package caryatid.clinic;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A standard uncertainty that the clinic measured of itself.
 *
 * @param kind of what
 * @param by initials of whose hand it is
 * @param day when
 * @param value of a mark in mm, of a turn in degrees; not negative
 * @param degreesOfFreedom how well it is known, above 0
 */
public record MeasuredDoubt(
    What kind, String by, LocalDate day, BigDecimal value, BigDecimal degreesOfFreedom) {
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
    if (value.signum() < 0 || degreesOfFreedom.signum() <= 0) {
      throw new IllegalArgumentException(value + ", " + degreesOfFreedom);
    }
  }
}
