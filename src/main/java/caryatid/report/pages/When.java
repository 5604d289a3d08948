package caryatid.report.pages;

import caryatid.entry.Entry;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When an entry was made, as reports write it. */
final class When {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter WHOLE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  private When() {}

  static String day(Entry entry) {
    return DAY.format(entry.at());
  }

  static String time(Entry entry) {
    return TIME.format(entry.at());
  }

  static String moment(Entry entry) {
    return WHOLE.format(entry.at());
  }

  static String of(Entry entry) {
    return moment(entry) + ", " + entry.by();
  }
}
