package caryatid.recording.workbook;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Dates and times as spreadsheets keep them, in days (ISO/IEC 29500-1, Dates and Times), as text of
 * ISO 8601. To the microsecond, which is what a day's number of today resolves.
 */
final class SerialDate {
  private static final double DAY_MICROS = 86_400e6;

  /** 9999-12-31. */
  private static final double LAST_DAY = 2_958_466;

  /** Day 60 is 29 February 1900, which there was not: days before count from one day later. */
  private static final int NO_DAY = 60;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss.SSSSSS", Locale.ROOT);

  private static final DateTimeFormatter DATE_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss.SSSSSS", Locale.ROOT);

  private final boolean from1904;

  /**
   * @param from1904 whether days count from 1904-01-01 and not from the end of 1899
   */
  SerialDate(boolean from1904) {
    this.from1904 = from1904;
  }

  /**
   * A number of days as text: a time below one day, else a date, with its time where that is shown
   * or is not midnight. What is no such number stays as it is, marked so that it is no number.
   */
  String text(String number, CellStyles.ShownAs shown) {
    double days = days(number);
    if (!(days >= 0 && days < LAST_DAY)) {
      return "#" + number;
    }
    long micros = Math.round(days * DAY_MICROS);
    long day = Math.floorDiv(micros, (long) DAY_MICROS);
    LocalDateTime at =
        start(day).atStartOfDay().plusNanos(Math.floorMod(micros, (long) DAY_MICROS) * 1000);
    if (day == 0) {
      return TIME.format(at);
    }
    boolean midnight = micros % (long) DAY_MICROS == 0;
    return shown == CellStyles.ShownAs.DATE && midnight
        ? at.toLocalDate().toString()
        : DATE_TIME.format(at);
  }

  private static double days(String number) {
    try {
      return Double.parseDouble(number);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private LocalDate start(long day) {
    if (from1904) {
      return LocalDate.of(1904, 1, 1).plusDays(day);
    }
    return LocalDate.of(1899, 12, day < NO_DAY ? 31 : 30).plusDays(day);
  }
}
