package caryatid.entry;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a number in an entry may be; the same for forms, files and values. Ranges keep slips of the
 * pen out (a body mass of 8200 kg) and are no advice.
 *
 * @param lowest smallest value
 * @param highest largest value
 */
public record Range(double lowest, double highest) {
  public static final Range BODY_MASS_KG = new Range(1, 500);
  public static final Range MOBILITY_GRADE = new Range(0, 4);
  public static final Range SOCK_PLY = new Range(0, 30);

  /** By how much a joint lacks extension. */
  public static final Range CONTRACTURE_DEG = new Range(0, 90);

  public static final Range MINUTES = new Range(0, 1440);

  /** Also an angle or a torque: what an item is set to, in its own unit. */
  public static final Range SETTING = new Range(-2500, 2500);

  /** The smallest amount an item is changed by, and degrees for each turn of a screw. */
  public static final Range STEP = new Range(0.01, 100);

  public static final Range HEIGHT_MM = new Range(0, 2500);
  public static final Range OFFSET_MM = new Range(-2500, 2500);
  public static final Range SHORTENING_MM = new Range(0, 100);
  public static final Range LIFT_MM = new Range(0, 200);

  /** Of a shoe: heel thickness less forefoot sole thickness. */
  public static final Range EFFECTIVE_HEEL_MM = new Range(-200, 200);

  public static final Range HEEL_MM = new Range(0, 200);
  public static final Range PERCENT = new Range(0, 100);

  /** Comfort and pain; of a socket, its comfort score. */
  public static final Range SCORE = new Range(0, 10);

  public static final Range ENTRY = new Range(1, 1_000_000);
  public static final Range ENTRIES = new Range(0, 1_000_000);
  public static final Range ATTEMPTS = new Range(1, 100);
  public static final Range SUCCESSES = new Range(0, 100);

  /** Whether a value is in the range. */
  public boolean holds(double value) {
    return value >= lowest && value <= highest;
  }

  /** Refuses, by an {@link IllegalArgumentException}, what is outside. */
  void require(BigDecimal value) {
    if (!holds(value.doubleValue())) {
      throw new IllegalArgumentException(value + " is not from " + lowest + " to " + highest);
    }
  }

  void require(Optional<BigDecimal> value) {
    value.ifPresent(this::require);
  }

  void require(OptionalInt value) {
    value.ifPresent(v -> require(BigDecimal.valueOf(v)));
  }

  /** Refuses a lower end that is above the upper one, where both are there. */
  static void requireOrder(Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
    if (lower.isPresent() && upper.isPresent() && lower.get().compareTo(upper.get()) > 0) {
      throw new IllegalArgumentException(lower.get() + " is above " + upper.get());
    }
  }

  static Optional<BigDecimal> decimal(OptionalInt value) {
    return value.isPresent() ? Optional.of(BigDecimal.valueOf(value.getAsInt())) : Optional.empty();
  }
}
