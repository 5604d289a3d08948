package caryatid.remark;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A date and time as every text shows it, in any language: {@code 2026-03-04 10:15 +01:00}. */
public final class TimeText {
  private static final DateTimeFormatter PATTERN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private TimeText() {}

  /** The same without the offset from UTC, where there is little room. */
  public static String brief(OffsetDateTime time) {
    return SHORT.format(time);
  }

  /** The text of a time, to the minute, with its offset from UTC. */
  public static String of(OffsetDateTime time) {
    return PATTERN.format(time);
  }
}
