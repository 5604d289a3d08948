package caryatid.recording;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Time of the day ({@code 10:15:01.250}), or ISO 8601 date and time ({@code
 * 2026-03-04T10:15:01.250+01:00}); the offset is not needed for differences and left out of them.
 */
final class ClockTime {
  private static final double DAY_S = 86_400;
  private static final Pattern CLOCK =
      Pattern.compile(
          "(?:(\\d{4}-\\d{2}-\\d{2})[T ])?(\\d{1,2}):([0-5]\\d):([0-5]\\d(?:[.,]\\d+)?)(?:Z|[+-]\\d{2}:?\\d{2})?");

  private ClockTime() {}

  /** Seconds since midnight, or since 1970-01-01 with a date; empty if the cell is no such time. */
  static OptionalDouble seconds(String cell) {
    Matcher clock = CLOCK.matcher(cell);
    if (!clock.matches() || Integer.parseInt(clock.group(2)) > 23) {
      return OptionalDouble.empty();
    }
    try {
      double days = clock.group(1) == null ? 0 : LocalDate.parse(clock.group(1)).toEpochDay();
      return OptionalDouble.of(
          days * DAY_S
              + Integer.parseInt(clock.group(2)) * 3600.0
              + Integer.parseInt(clock.group(3)) * 60.0
              + Double.parseDouble(clock.group(4).replace(',', '.')));
    } catch (DateTimeException e) {
      return OptionalDouble.empty();
    }
  }
}
