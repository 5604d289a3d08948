package caryatid.demo;

import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.format.KnownWords;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Answers of tests as a person's are understood: words in the place of names become names. */
public final class Filled {
  private Filled() {}

  public static Answers of(EntryKind kind, Answers answers) {
    Form form = EntryForms.of(kind);
    return KnownWords.first().understood(form, named(form, answers));
  }

  /** The same of a row, where only some of its fields are said. */
  public static Answers row(EntryKind kind, String rows, Answers row) {
    FieldType type = EntryForms.of(kind).field(rows).orElseThrow().type();
    Form form = ((FieldType.Rows) type).form();
    return KnownWords.first().understood(form, named(form, row));
  }

  private static Answers named(Form form, Answers answers) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    answers
        .values()
        .forEach(
            (key, value) -> values.put(key, named(form.field(key).orElseThrow().type(), value)));
    return new Answers(values);
  }

  private static Answers.Value named(FieldType type, Answers.Value value) {
    if (value instanceof Answers.Value.Rows rows && type instanceof FieldType.Rows of) {
      return new Answers.Value.Rows(rows.rows().stream().map(r -> named(of.form(), r)).toList());
    }
    return value instanceof Answers.Value.Words words && type instanceof FieldType.Name
        ? new Answers.Value.Name(Optional.empty(), words.text())
        : value;
  }
}
