package caryatid.entry.form;

import java.util.Arrays;
import java.util.List;

/**
 * One thing a form asks for.
 *
 * @param key its name in JSON and YAML; ends in its unit where it is a number with one
 * @param type what it may hold
 * @param required whether a form without it is refused
 */
public record Field(String key, FieldType type, boolean required) {

  public static Field words(String key) {
    return new Field(key, new FieldType.Words(), false);
  }

  public static Field number(String key, double lowest, double highest) {
    return new Field(key, new FieldType.Number(lowest, highest, false), false);
  }

  public static Field whole(String key, long lowest, long highest) {
    return new Field(key, new FieldType.Number(lowest, highest, true), false);
  }

  public static Field yesNo(String key) {
    return new Field(key, new FieldType.YesNo(), false);
  }

  public static Field choice(String key, String... words) {
    return new Field(key, new FieldType.Choice(List.of(words)), false);
  }

  /** A choice among the constants of an enum, written in lower case with blanks. */
  public static Field choice(String key, Enum<?>[] constants) {
    return choice(key, Arrays.stream(constants).map(Field::word).toArray(String[]::new));
  }

  public static Field rows(String key, Field... fields) {
    return rows(key, Form.of(fields));
  }

  public static Field rows(String key, Form row) {
    return new Field(key, new FieldType.Rows(row), false);
  }

  /** The same field, required. */
  public Field needed() {
    return new Field(key, type, true);
  }

  /** An enum's constant as forms write it. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
