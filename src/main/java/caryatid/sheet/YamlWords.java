package caryatid.sheet;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Values as a YAML file holds them. */
final class YamlWords {
  /**
   * Text that YAML reads as itself without quotes; yes, no, null and numbers are read as text, too.
   */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}][\\p{L}\\p{N}_./-]*( [\\p{L}\\p{N}_./()-]+)*");

  private YamlWords() {}

  static String text(String text) {
    return PLAIN.matcher(text).matches() ? text : "'" + text.replace("'", "''") + "'";
  }

  static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  static String flow(Map<String, String> values) {
    return values.entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue())
        .collect(Collectors.joining(", "));
  }
}
