package caryatid.recording.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Time of the day ({@code 10:15:01.250}, {@code 9:15:01 AM}), or ISO 8601 date and time ({@code
 * 2026-03-04T10:15:01.250+01:00}); the offset does not matter for differences and is ignored.
 */
final class TimeOfDayParser {
  private static final double DAY_S = 86_400;

  /** A date in figures; a time; AM or PM; an offset. */
  private static final Pattern CLOCK =
      Pattern.compile(
          "(?:(\\d{4}-\\d{2}-\\d{2})[T ]|(\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}),? )?"
              + "(\\d{1,2}):([0-5]\\d):([0-5]\\d(?:[.,]\\d+)?)"
              + "(?: ?([ap])\\.?m\\.?)?(?:Z|[+-]\\d{2}:?\\d{2})?",
          Pattern.CASE_INSENSITIVE);

  private double lastS = Double.NEGATIVE_INFINITY;
  private double daysS;
  private long firstDay = Long.MIN_VALUE;

  /** Whether a cell is such a time. */
  static boolean is(String cell) {
    return new TimeOfDayParser().seconds(cell).isPresent();
  }

  /**
   * Seconds of a cell since the first one's midnight; empty if it is no such time. Times without a
   * date, or with one whose days and months may be exchanged, have passed midnight where they fall
   * back by half a day or more.
   */
  OptionalDouble seconds(String cell) {
    Matcher clock = CLOCK.matcher(cell);
    if (!clock.matches()) {
      return OptionalDouble.empty();
    }
    OptionalInt hour = hour(Integer.parseInt(clock.group(3)), Optional.ofNullable(clock.group(6)));
    if (hour.isEmpty()) {
      return OptionalDouble.empty();
    }
    double ofDay =
        hour.getAsInt() * 3600.0
            + Integer.parseInt(clock.group(4)) * 60.0
            + Double.parseDouble(clock.group(5).replace(',', '.'));
    return clock.group(1) == null
        ? OptionalDouble.of(afterMidnight(ofDay))
        : dated(clock.group(1), ofDay);
  }

  /** The hour from 0 to 23; empty if there is no such hour on this clock. */
  private static OptionalInt hour(int written, Optional<String> half) {
    if (half.isEmpty()) {
      return written <= 23 ? OptionalInt.of(written) : OptionalInt.empty();
    }
    boolean after = half.get().equalsIgnoreCase("p");
    return written >= 1 && written <= 12
        ? OptionalInt.of(written % 12 + (after ? 12 : 0))
        : OptionalInt.empty();
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
