package caryatid.recording.importer;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The day on which an export says that it was recorded. */
public final class ExportDate {
  private static final int LOOKED_AT = 4096;

  /** Other years are numbers of something else. */
  private static final int FIRST_YEAR = 1970;

  private static final int LAST_YEAR = 2100;

  /** As numbers, or with the month as a word. */
  private static final String DAY =
      "(?<![\\d./-])(?:(?<year>\\d{4})(?<mark>[-./])(?<month>\\d{1,2})\\k<mark>(?<day>\\d{1,2})"
          + "|(?<one>\\d{1,2})(?<same>[-./])(?<other>\\d{1,2})\\k<same>(?<last>\\d{4})"
          + "|(?<first>\\d{1,2})\\.?[ -](?:de )?(?<word>[^\\s\\d.;,:-]{3,12})\\.?[ -](?:de(?:l)? )?"
          + "(?<then>\\d{4})"
          + "|(?<name>[A-Za-z]{3,9})\\.? (?<count>\\d{1,2}), (?<of>\\d{4}))"
          + "(?![\\d/-]|\\.\\d)";

  private static final Pattern ANY = Pattern.compile(DAY);

  /** What is called a date alone is the recording's, whatever other dates there are. */
  private static final Pattern NAMED =
      Pattern.compile(
          "^\\W*(?:date|datum|fecha|recorded(?: on)?|measured(?: on)?|recording date|test"
              + " date|aufnahme|aufnahmedatum|messdatum|messung|date de (?:la )?mesure|fecha de"
              + " (?:la )?medici.{1,2}n)\\W+"
              + DAY,
          Pattern.CASE_INSENSITIVE | Pattern.MULTILINE);

  /** Lines with a date of something else, as of birth, of a program or of its printing. */
  private static final Pattern OF_ANOTHER =
      Pattern.compile(
          "birth|born|\\bdob\\b|geb(?:oren|urt|\\.|\\b)|naiss|n.{1,2}e? le\\b|nacimiento|nacid"
              + "|kalib|calib|.{1,2}talonn|version|software|logiciel|programm|firmware|licen[cs]"
              + "|lizenz|expir|valid|g.{1,2}ltig|print|gedruckt|imprim|impres|export",
          Pattern.CASE_INSENSITIVE);

  /**
   * How the months begin, in the languages of the exports; an accent may be read as two letters.
   */
  private static final List<Pattern> MONTHS =
      List.of(
          month("jan|ene"),
          month("feb|f.{1,2}v"),
          month("mar|m.{1,2}rz"),
          month("apr|avr|abr"),
          month("may|mai"),
          month("jun|juin"),
          month("jul|juil"),
          month("aug|ao.{1,2}t|ago"),
          month("sep"),
          month("oct|okt"),
          month("nov"),
          month("dec|dez|d.{1,2}c|dic"));

  private ExportDate() {}

  private static Pattern month(String begins) {
    return Pattern.compile("(?:" + begins + ").*", Pattern.CASE_INSENSITIVE);
  }

  /**
   * The days that the file may mean by the one date that it gives: two where day and month could be
   * either way round, none where it gives no date or several.
   *
   * @throws BadInput if the file cannot be read
   */
  public static Set<LocalDate> of(NamedBytes export) throws BadInput {
    try {
      Optional<WorkbookFile> workbook = WorkbookFile.of(export);
      byte[] first =
          workbook.isPresent() ? workbook.get().starts(LOOKED_AT) : export.readAtMost(LOOKED_AT);
      String start = new String(first, ISO_8859_1).replace("\0", "");
      Matcher named = NAMED.matcher(start);
      return named.find() ? days(named) : only(start);
    } catch (IOException e) {
      throw export.unreadable(e);
    }
  }

  /** The days of the one date in the text, however often it stands there. */
  private static Set<LocalDate> only(String text) {
    Set<Set<LocalDate>> all = new LinkedHashSet<>();
    text.lines()
        .filter(line -> !OF_ANOTHER.matcher(line).find())
        .forEach(line -> add(all, ANY.matcher(line)));
    return all.size() == 1 ? all.iterator().next() : Set.of();
  }

  private static void add(Set<Set<LocalDate>> all, Matcher dates) {
    while (dates.find()) {
      Set<LocalDate> days = days(dates);
      if (!days.isEmpty()) {
        all.add(days);
      }
    }
  }

  private static Set<LocalDate> days(Matcher date) {
    Set<LocalDate> days = new LinkedHashSet<>();
    if (date.group("year") != null) {
      add(days, number(date, "year"), number(date, "month"), number(date, "day"));
    } else if (date.group("last") != null) {
      add(days, number(date, "last"), number(date, "other"), number(date, "one"));
      add(days, number(date, "last"), number(date, "one"), number(date, "other"));
    } else if (date.group("then") != null) {
      add(days, number(date, "then"), month(date, "word"), number(date, "first"));
    } else {
      add(days, number(date, "of"), month(date, "name"), number(date, "count"));
    }
    return days;
  }

  private static int number(Matcher date, String group) {
    return Integer.parseInt(date.group(group));
  }

  /** The month of a word; 0, which is none, of any other word. */
  private static int month(Matcher date, String group) {
    String word = date.group(group);
    int month = MONTHS.size();
    while (month > 0 && !MONTHS.get(month - 1).matcher(word).matches()) {
      month--;
    }
    return month;
  }

  private static void add(Set<LocalDate> days, int year, int month, int day) {
    try {
      if (year >= FIRST_YEAR && year <= LAST_YEAR) {
        days.add(LocalDate.of(year, month, day));
      }
    } catch (DateTimeException e) {
      // The other way round it may be a day.
    }
  }
}
