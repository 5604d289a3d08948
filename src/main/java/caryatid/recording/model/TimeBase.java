package caryatid.recording.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a recording's times come from, as far as a description states it.
 *
 * @param column the column of times
 * @param unit its unit
 * @param rateHz sampling rate, Hz, above 0; for files without a column of times
 */
public record TimeBase(Optional<String> column, Optional<TimeUnit> unit, OptionalDouble rateHz) {
  /** Rates at which force plates are sampled, Hz (common practice, no source). */
  public static final double SLOWEST_HZ = 10;

  public static final double FASTEST_HZ = 10_000;

  /** Nothing stated. */
  public static final TimeBase UNSTATED =
      new TimeBase(Optional.empty(), Optional.empty(), OptionalDouble.empty());
}
