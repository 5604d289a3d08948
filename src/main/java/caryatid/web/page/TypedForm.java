package caryatid.web.page;

import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormReader;
import caryatid.remark.Place;
import caryatid.sheet.yaml.InputValue;
import caryatid.usecase.stand.TypedNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was typed into a form: texts by the names of their fields, {@code set} or {@code
 * items[2].set}, as arguments of the command line are named.
 *
 * @param texts not blank, as they were typed
 */
public record TypedForm(Map<String, String> texts) {
  /** Rows of a form at the most; more than any form shows. */
  static final int MOST_ROWS = 99;

  /** Behind the name of a field with terms: words of one's own. */
  static final String OWN_WORDS = ".text";

  public TypedForm {
    texts = Map.copyOf(texts);
  }

  /** What a request says; blank fields are left out. */
  public static TypedForm of(Request request) {
    Map<String, String> texts = new LinkedHashMap<>();
    request
        .fields()
        .keySet()
        .forEach(name -> request.field(name).ifPresent(text -> texts.put(name, text)));
    return new TypedForm(texts);
  }

  /** The text of a field. */
  Optional<String> text(String name) {
    return Optional.ofNullable(texts.get(name));
  }

  /** How many rows of a field were typed into, counted to the last one. */
  int rows(String key) {
    int last = 0;
    for (int i = 1; i <= MOST_ROWS; i++) {
      String row = row(key, i);
      if (texts.keySet().stream().anyMatch(name -> name.startsWith(row))) {
        last = i;
      }
    }
    return last;
  }

  /** How the names of a row's fields begin. */
  static String row(String key, int number) {
    return key + "[" + number + "].";
  }

  /**
   * The same as the form's reader takes it. The place of each value is the name of its field.
   *
   * @param form the form that was shown
   * @param offered what of a row the page filled in: a row that says no more is left out
   */
  public InputValue.Group given(Form form, RowOffers offered) {
    Map<String, InputValue> members = new LinkedHashMap<>();
    for (Field field : form.fields()) {
      if (field.type() instanceof FieldType.Rows rows) {
        List<InputValue> given = rows(field.key(), rows.form(), offered);
        if (!given.isEmpty()) {
          members.put(field.key(), new InputValue.Several(given, place(field.key())));
        }
      } else {
        value(field, field.key()).ifPresent(value -> members.put(field.key(), value));
      }
    }
    return new InputValue.Group(members, place(""));
  }

  private List<InputValue> rows(String key, Form form, RowOffers offered) {
    List<InputValue> rows = new ArrayList<>();
    for (int i = 1; i <= rows(key); i++) {
      String row = row(key, i);
      Map<String, InputValue> members = new LinkedHashMap<>();
      boolean said = false;
      for (Field field : form.fields()) {
        Optional<InputValue> value = value(field, row + field.key());
        value.ifPresent(given -> members.put(field.key(), given));
        said |= value.isPresent() && !offered.isOffered(i, field.key());
      }
      if (said) {
        rows.add(new InputValue.Group(members, place(row)));
      }
    }
    return rows;
  }

  private Optional<InputValue> value(Field field, String name) {
    Optional<InputValue> own =
        text(name + OWN_WORDS)
            .map(
                words ->
                    new InputValue.Group(
                        Map.of(FormReader.TEXT, single(words, name)), place(name)));
    return own.or(() -> text(name).map(typed -> single(plain(field, typed), name)));
  }

  private static InputValue single(String text, String name) {
    return new InputValue.Single(text, InputValue.Kind.ANY, place(name));
  }

  private static String plain(Field field, String typed) {
    return field.type() instanceof FieldType.Number ? TypedNumber.plain(typed) : typed;
  }

  private static Place place(String name) {
    return new Place("", OptionalInt.empty(), Optional.of(name));
  }
}
