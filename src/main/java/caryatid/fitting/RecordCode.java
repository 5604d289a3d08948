package caryatid.fitting;

import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The code of a record, which is also the name of its folder; never a name or a date of birth.
 *
 * @param text letters a to z, digits and hyphens, beginning with a letter or digit, 40 at the most
 */
public record RecordCode(String text) {
  // Names that Windows keeps for devices, whatever follows a dot.
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");
  private static final Pattern LETTERS = Pattern.compile("[A-Za-z]{4,}");
  private static final Pattern DIGITS = Pattern.compile("\\d{8}|\\d{6}");
  private static final Pattern PARTED = Pattern.compile("(\\d{1,4})-(\\d{1,2})-(\\d{1,4})");

  /** Two or three letters and a year in which a wearer may be born. */
  private static final Pattern INITIALS_AND_YEAR =
      Pattern.compile(
          "(?<![A-Za-z])[A-Za-z]{2,3}-?(?:19\\d\\d|20[01]\\d)(?!\\d)"
              + "|(?<!\\d)(?:19\\d\\d|20[01]\\d)-?[A-Za-z]{2,3}(?![A-Za-z])");

  private static final Set<String> TRADE_WORDS =
      Set.of(
          "left",
          "right",
          "both",
          "prosthesis",
          "foot",
          "knee",
          "ankle",
          "hip",
          "spare",
          "links",
          "rechts",
          "beide",
          "prothese",
          "fuss",
          "knie",
          "huefte",
          "ersatz",
          "gauche",
          "droite",
          "droit",
          "pied",
          "genou",
          "cheville",
          "hanche",
          "izquierda",
          "izquierdo",
          "derecha",
          "derecho",
          "protesis",
          "pie",
          "rodilla",
          "tobillo",
          "cadera");

  /** What a code may look like. */
  enum Likeness {
    NAME,
    DATE
  }

  /**
   * @throws IllegalArgumentException if the text is no code
   */
  public RecordCode {
    if (!isCode(text)) {
      throw new IllegalArgumentException("record code: " + text);
    }
  }

  /**
   * The code a person typed.
   *
   * @throws BadInput if it is none
   */
  public static RecordCode of(String typed) throws BadInput {
    if (!isCode(typed)) {
      boolean device = DEVICES.contains(typed.toLowerCase(Locale.ROOT));
      RecordProblem what = device ? RecordProblem.DEVICE_NAME : RecordProblem.NOT_A_CODE;
      throw new BadInput(Problem.at(Place.of(typed), what));
    }
    return new RecordCode(typed);
  }

  /**
   * Questions a code that might identify the wearer.
   *
   * @throws BadInput if it looks like a name or a date
   */
  public static void requireAnonymous(String code) throws BadInput {
    Optional<Likeness> likeness = likeness(code);
    if (likeness.isPresent()) {
      RecordProblem what =
          likeness.get() == Likeness.NAME
              ? RecordProblem.CODE_LIKE_NAME
              : RecordProblem.CODE_LIKE_DATE;
      throw new BadInput(Problem.at(Place.of(code), what));
    }
  }

  /** Whether a text can be a code. */
  public static boolean isCode(String text) {
    return text.matches("[A-Za-z0-9][A-Za-z0-9-]{0,39}")
        && !DEVICES.contains(text.toLowerCase(Locale.ROOT));
  }

  /**
   * What a code looks like that it should not be: four letters or more in a row look like a name,
   * also where hyphens part them (words of the trade aside), six or eight digits or three numbers
   * that can be a day, a month and a year like a date, and so do initials with a year. A rule of
   * thumb that asks, not one that knows.
   */
  static Optional<Likeness> likeness(String code) {
    if (LETTERS.matcher(joined(code)).find()) {
      return Optional.of(Likeness.NAME);
    }
    if (INITIALS_AND_YEAR.matcher(code).find()) {
      return Optional.of(Likeness.DATE);
    }
    boolean digits = DIGITS.matcher(code).results().anyMatch(m -> canBeDate(m.group()));
    Matcher parted = PARTED.matcher(code);
    return digits || parted.find() && canBeDate(parted)
        ? Optional.of(Likeness.DATE)
        : Optional.empty();
  }

  /** Letters that hyphens part in one, words of the trade left out. */
  private static String joined(String code) {
    String known = String.join("|", TRADE_WORDS);
    return code.replaceAll("(?i)(?<![a-z])(?:" + known + ")(?![a-z])", "0")
        .replaceAll("(?<=[A-Za-z])-(?=[A-Za-z])", "");
  }

  private static boolean canBeDate(String digits) {
    int last = digits.length();
    String year = digits.substring(last - 4);
    if (last == 8
        && (isYear(digits.substring(0, 4)) && isDayAndMonth(digits.substring(4))
            || isYear(year) && isDayAndMonth(digits.substring(0, 4)))) {
      return true;
    }
    return last == 6
        && (isDayAndMonth(digits.substring(0, 4)) || isDayAndMonth(digits.substring(2)));
  }

  private static boolean canBeDate(Matcher parts) {
    String first = parts.group(1);
    String middle = parts.group(2);
    String last = parts.group(3);
    return isDayAndMonth(two(first) + two(middle)) || isDayAndMonth(two(middle) + two(last));
  }

  private static String two(String number) {
    return number.length() == 1 ? "0" + number : number;
  }

  private static boolean isYear(String digits) {
    int year = Integer.parseInt(digits);
    return year >= 1900 && year <= 2100;
  }

  private static boolean isDayAndMonth(String digits) {
    if (digits.length() != 4) {
      return false;
    }
    int a = Integer.parseInt(digits.substring(0, 2));
    int b = Integer.parseInt(digits.substring(2));
    return a >= 1 && b >= 1 && Math.min(a, b) <= 12 && Math.max(a, b) <= 31;
  }
}
