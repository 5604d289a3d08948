package caryatid.report.pages;

import caryatid.entry.Entry;
import caryatid.remark.TimeText;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When an entry was made, as reports write it. */
final class EntryTimes {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private EntryTimes() {}

  static String day(Entry entry) {
    return DAY.format(entry.at());
  }

  static String time(Entry entry) {
    return TIME.format(entry.at());
  }

  static String moment(Entry entry) {
    return TimeText.of(entry.at());
  }

  static String of(Entry entry) {
    return moment(entry) + ", " + entry.by();
  }
}
