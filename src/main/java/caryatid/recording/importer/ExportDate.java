package caryatid.recording.importer;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The day on which an export says that it was recorded. */
public final class ExportDate {
  private static final int LOOKED_AT = 4096;

  /** What stands for something else, such as a date of birth, is not taken for it. */
  private static final Pattern DATE =
      Pattern.compile(
          "^\\W*(?:date|datum|fecha|recorded(?: on)?|measured(?: on)?|recording date|test"
              + " date|aufnahmedatum|messdatum|date de (?:la )?mesure|fecha de (?:la"
              + " )?medici.{1,2}n)\\W+"
              + "(?:(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})|(\\d{1,2})[-./](\\d{1,2})[-./](\\d{4}))"
              + "(?!\\d)",
          Pattern.CASE_INSENSITIVE | Pattern.MULTILINE);

  private ExportDate() {}

  /**
   * The days that a line above the table may mean: two where day and month could be either way
   * round, none where no line says a date.
   *
   * @throws BadInput if the file cannot be read
   */
  public static Set<LocalDate> of(NamedBytes export) throws BadInput {
    try {
      String start = new String(export.readAtMost(LOOKED_AT), ISO_8859_1).replace("\0", "");
      Matcher date = DATE.matcher(start);
      return date.find() ? days(date) : Set.of();
    } catch (IOException e) {
      throw export.unreadable(e);
    }
  }

  private static Set<LocalDate> days(Matcher date) {
    Set<LocalDate> days = new LinkedHashSet<>();
    if (date.group(1) != null) {
      add(days, number(date, 1), number(date, 2), number(date, 3));
    } else {
      add(days, number(date, 6), number(date, 5), number(date, 4));
      add(days, number(date, 6), number(date, 4), number(date, 5));
    }
    return days;
  }

  private static int number(Matcher date, int group) {
    return Integer.parseInt(date.group(group));
  }

  private static void add(Set<LocalDate> days, int year, int month, int day) {
    try {
      days.add(LocalDate.of(year, month, day));
    } catch (DateTimeException e) {
      // The other way round it may be a day.
    }
  }
}
