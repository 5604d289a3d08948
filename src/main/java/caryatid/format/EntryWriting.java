package caryatid.format;

import caryatid.entry.Entry;
import caryatid.entry.form.Answers;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.Forms;
import caryatid.entry.form.Untyped;
import caryatid.entry.form.Vocabulary;
import java.util.LinkedHashMap;
import java.util.Map;

/** Content as version 1 holds it: names as words, in English where they are terms. */
final class EntryWriting {
  private EntryWriting() {}

  static Answers content(Entry entry) {
    return words(Forms.of(entry.kind()), Untyped.answers(entry.content()));
  }

  private static Answers words(Form form, Answers answers) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    answers
        .values()
        .forEach(
            (key, value) -> values.put(key, words(form.field(key).orElseThrow().type(), value)));
    return new Answers(values);
  }

  private static Answers.Value words(FieldType type, Answers.Value value) {
    if (value instanceof Answers.Value.Rows rows && type instanceof FieldType.Rows of) {
      return new Answers.Value.Rows(rows.rows().stream().map(r -> words(of.form(), r)).toList());
    }
    return value instanceof Answers.Value.Name name && type instanceof FieldType.Name of
        ? new Answers.Value.Words(word(of.vocabulary(), name))
        : value;
  }

  private static String word(Vocabulary vocabulary, Answers.Value.Name name) {
    String word = name.code().map(term -> KnownWords.first().english(vocabulary, term)).orElse("");
    return word.isEmpty() || name.text().isBlank() ? word + name.text() : word + ", " + name.text();
  }
}
