package caryatid.entry.form;

import caryatid.entry.Range;
import java.util.List;

/**
 * One thing a form asks for.
 *
 * @param key its name in JSON and YAML; ends in its unit where it is a number with one
 * @param type what it may hold
 * @param required whether a form without it is refused
 */
public record Field(String key, FieldType type, boolean required) {

  /** Words. */
  public static Field words(String key) {
    return new Field(key, new FieldType.Words(), false);
  }

  static Field name(String key, Vocabulary vocabulary) {
    return new Field(key, new FieldType.Name(vocabulary), false);
  }

  static Field number(String key, Range range) {
    return new Field(key, new FieldType.Number(range.lowest(), range.highest(), false), false);
  }

  /** A number that counts something. */
  public static Field whole(String key, double lowest, double highest) {
    return new Field(key, new FieldType.Number(lowest, highest, true), false);
  }

  static Field whole(String key, Range range) {
    return whole(key, range.lowest(), range.highest());
  }

  static Field yesNo(String key) {
    return new Field(key, new FieldType.YesNo(), false);
  }

  /** One of a few codes. */
  public static Field choice(String key, List<String> codes) {
    return new Field(key, new FieldType.Choice(codes), false);
  }

  /** A day. */
  public static Field day(String key) {
    return new Field(key, new FieldType.Day(), false);
  }

  /** One of a few codes that the program computes and files hold. */
  static Field computed(String key, List<String> codes) {
    return new Field(key, new FieldType.Computed(new FieldType.Choice(codes)), true);
  }

  /** Rows of fields. */
  public static Field rows(String key, Field... fields) {
    return rows(key, Form.of(fields));
  }

  static Field rows(String key, Form row) {
    return new Field(key, new FieldType.Rows(row), false);
  }

  /** The same field, required. */
  public Field needed() {
    return new Field(key, type, true);
  }
}
