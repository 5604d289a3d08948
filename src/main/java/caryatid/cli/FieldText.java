package caryatid.cli;

import caryatid.fitting.Answers;
import caryatid.fitting.Field;
import caryatid.wording.Wording;
import java.util.Map;

/** Fields and their values in words. */
final class FieldText {
  private static final Map<String, String> UNITS =
      Map.of("-mm", "mm", "-kg", "kg", "-percent", "%");

  private FieldText() {}

  static String label(Field field, Wording wording) {
    return label(field.key(), wording);
  }

  static String label(String key, Wording wording) {
    return wording.word("Field." + key);
  }

  /** The unit that ends a field's key; empty where there is none. */
  static String unit(String key) {
    return UNITS.entrySet().stream()
        .filter(u -> key.endsWith(u.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /** A value that is not rows. */
  static String value(String key, Answers.Value value, Wording wording) {
    if (value instanceof Answers.Value.Amount amount) {
      return (amount.number().toPlainString() + " " + unit(key)).strip();
    }
    if (value instanceof Answers.Value.YesNo yesNo) {
      return wording.word(yesNo.yes() ? "Answer.yes" : "Answer.no");
    }
    return ((Answers.Value.Words) value).text();
  }
}
