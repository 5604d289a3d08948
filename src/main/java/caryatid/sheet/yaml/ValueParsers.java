package caryatid.sheet.yaml;

import caryatid.remark.Coded;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The forms of single values. */
public final class ValueParsers {
  /** Any text but a blank one. */
  public static final ValueParser<String> TEXT = written -> Optional.of(written.text());

  /** No stand was measured before, and a year after is a slip: a PDF's dates have four digits. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 9999;

  /**
   * Date, time and offset from UTC (ISO 8601), for example {@code 2026-03-04T10:15+01:00}; years
   * from 1900 to 9999.
   */
  public static final ValueParser<OffsetDateTime> TIME = ValueParsers::time;

  /** {@code yes} or {@code no}. */
  public static final ValueParser<Boolean> YES_NO = choice(yesNo());

  private static final Pattern DECIMAL = Pattern.compile("[-+]?[0-9]+(\\.[0-9]+)?");
  private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]{1,9}");

  private ValueParsers() {}

  /** A plain decimal number from a lowest to a highest one, both allowed. */
  public static ValueParser<Double> number(double lowest, double highest) {
    return written ->
        decimal(written)
            .flatMap(
                value ->
                    value >= lowest && value <= highest
                        ? Optional.of(value)
                        : written.refuse(YamlProblem.OUT_OF_RANGE, plain(lowest), plain(highest)));
  }

  /** A plain decimal number above a limit, up to a highest one. */
  public static ValueParser<Double> numberAbove(double limit, double highest) {
    return written ->
        decimal(written)
            .flatMap(
                value ->
                    value > limit && value <= highest
                        ? Optional.of(value)
                        : written.refuse(YamlProblem.NOT_ABOVE, plain(limit), plain(highest)));
  }

  /** A whole number from a lowest to a highest one, both allowed. */
  public static ValueParser<Integer> whole(int lowest, int highest) {
    return written ->
        written.plain()
                && WHOLE.matcher(written.text()).matches()
                && within(written, lowest, highest)
            ? Optional.of(Integer.valueOf(written.text()))
            : written.refuse(
                YamlProblem.NOT_A_WHOLE_NUMBER,
                Integer.toString(lowest),
                Integer.toString(highest));
  }

  /** One of the words, each standing for a value. */
  public static <T> ValueParser<T> choice(Map<String, T> words) {
    return written ->
        Optional.ofNullable(words.get(written.text()))
            .or(() -> written.refuse(YamlProblem.NOT_A_CHOICE, String.join(", ", words.keySet())));
  }

  /**
   * A constant of an enum by the last part of its code in small letters, blanks between the words.
   */
  public static <E extends Enum<E> & Coded> ValueParser<E> word(Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      words.put(wordFor(constant), constant);
    }
    return choice(words);
  }

  /** The word {@link #word} reads as a constant. */
  public static String wordFor(Coded constant) {
    return lower(constant.lastPart()).replace('_', ' ');
  }

  /** Small letters, in any language of the machine. */
  public static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private static boolean within(YamlScalar written, int lowest, int highest) {
    int value = Integer.parseInt(written.text());
    return value >= lowest && value <= highest;
  }

  private static Optional<Double> decimal(YamlScalar written) {
    return written.plain() && DECIMAL.matcher(written.text()).matches()
        ? Optional.of(Double.valueOf(written.text()))
        : written.refuse(YamlProblem.NOT_A_NUMBER);
  }

  private static Optional<OffsetDateTime> time(YamlScalar written) {
    try {
      OffsetDateTime time = OffsetDateTime.parse(written.text());
      return time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR
          ? Optional.of(time)
          : written.refuse(YamlProblem.NOT_A_TIME);
    } catch (DateTimeParseException e) {
      return written.refuse(YamlProblem.NOT_A_TIME);
    }
  }

  private static Map<String, Boolean> yesNo() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("yes", true);
    words.put("no", false);
    return words;
  }

  private static String plain(double limit) {
    return BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
  }
}
