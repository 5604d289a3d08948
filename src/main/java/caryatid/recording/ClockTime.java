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

  private double lastS = Double.NEGATIVE_INFINITY;
  private double daysS;
  private long firstDay = Long.MIN_VALUE;

  /** Whether a cell is such a time. */
  static boolean is(String cell) {
    return new ClockTime().seconds(cell).isPresent();
  }

  /**
   * Seconds of a cell since the first one's midnight; empty if it is no such time. Times without a
   * date that fall back by half a day or more have passed midnight.
   */
  OptionalDouble seconds(String cell) {
    Matcher clock = CLOCK.matcher(cell);
    if (!clock.matches() || Integer.parseInt(clock.group(2)) > 23) {
      return OptionalDouble.empty();
    }
    double ofDay =
        Integer.parseInt(clock.group(2)) * 3600.0
            + Integer.parseInt(clock.group(3)) * 60.0
            + Double.parseDouble(clock.group(4).replace(',', '.'));
    return clock.group(1) == null
        ? OptionalDouble.of(afterMidnight(ofDay))
        : dated(clock.group(1), ofDay);
  }

  private double afterMidnight(double ofDay) {
    daysS += lastS - ofDay >= DAY_S / 2 ? DAY_S : 0;
    lastS = ofDay;
    return daysS + ofDay;
  }

  private OptionalDouble dated(String date, double ofDay) {
    try {
      long day = LocalDate.parse(date).toEpochDay();
      firstDay = firstDay == Long.MIN_VALUE ? day : firstDay;
      return OptionalDouble.of((day - firstDay) * DAY_S + ofDay);
    } catch (DateTimeException e) {
      return OptionalDouble.empty();
    }
  }
}
