package caryatid.entry.form;

import java.util.List;

/** What a field of a form may hold. */
public sealed interface FieldType {

  /** Words, not blank. */
  record Words() implements FieldType {}

  /**
   * A name: a term of a vocabulary, or words.
   *
   * @param vocabulary the terms
   */
  record Name(Vocabulary vocabulary) implements FieldType {}

  /**
   * A number.
   *
   * @param lowest smallest value, in the unit that ends the field's key
   * @param highest largest value, in the same unit
   * @param whole whether it counts something
   */
  @SuppressWarnings("JavaLangClash") // always written with its owner
  record Number(double lowest, double highest, boolean whole) implements FieldType {}

  /** Yes or no. */
  record YesNo() implements FieldType {}

  /**
   * One of a few words.
   *
   * @param words all of them
   */
  record Choice(List<String> words) implements FieldType {
    public Choice {
      words = List.copyOf(words);
    }
  }

  /** A day, as ISO 8601 writes it: 2026-03-18. */
  record Day() implements FieldType {}

  /**
   * A value that the program computes: it is not asked for, and refused if given.
   *
   * @param choice what files hold
   */
  record Computed(Choice choice) implements FieldType {}

  /**
   * A list of rows, at least one.
   *
   * @param form of each row
   */
  record Rows(Form form) implements FieldType {}
}
