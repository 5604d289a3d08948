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
  /** Nothing stated. */
  public static final TimeBase UNSTATED =
      new TimeBase(Optional.empty(), Optional.empty(), OptionalDouble.empty());
}
