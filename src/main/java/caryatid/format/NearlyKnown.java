package caryatid.format;

import caryatid.entry.EntryQuestion;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.Vocabulary;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.sheet.yaml.InputValue;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Asks about names that differ from a known one by a slip of the pen. */
public final class NearlyKnown {
  private static final Set<Vocabulary> ASKED =
      EnumSet.of(Vocabulary.BENCH_ITEM, Vocabulary.DEVIATION);

  private final List<Question> questions = new ArrayList<>();

  private NearlyKnown() {}

  /**
   * A word that a question is about.
   *
   * @param field where it was given, for example {@code items[1].item}
   * @param typed the word
   * @param known the known word that is like it
   */
  public record Word(String field, String typed, String known) {
    /** The word of a question; empty if it asks something else. */
    public static Optional<Word> of(Question question) {
      if (question.topic() != EntryQuestion.NEARLY_KNOWN) {
        return Optional.empty();
      }
      List<String> words =
          question.arguments().stream().map(word -> ((Argument.Text) word).value()).toList();
      return Optional.of(new Word(words.get(0), words.get(1), words.get(2)));
    }
  }

  /**
   * The questions about what was given for a form. Spellings that are given as {@code text} are
   * meant as they are.
   */
  public static List<Question> questions(Form form, InputValue.Group given) {
    NearlyKnown asked = new NearlyKnown();
    asked.group("", form, given);
    return List.copyOf(asked.questions);
  }

  private void group(String path, Form form, InputValue.Group given) {
    for (Field field : form.fields()) {
      InputValue value = given.members().get(field.key());
      if (field.type() instanceof FieldType.Name name && value instanceof InputValue.Single typed) {
        name(path + field.key(), name.vocabulary(), typed.text());
      } else if (field.type() instanceof FieldType.Rows rows
          && value instanceof InputValue.Several all) {
        rows(field.key(), rows.form(), all.items());
      }
    }
  }

  private void rows(String key, Form form, List<InputValue> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i) instanceof InputValue.Group row) {
        group(key + "[" + (i + 1) + "].", form, row);
      }
    }
  }

  private void name(String field, Vocabulary vocabulary, String typed) {
    if (ASKED.contains(vocabulary)) {
      KnownWords.today()
          .nearly(vocabulary, typed)
          .ifPresent(
              known ->
                  questions.add(
                      Question.ofField(
                          EntryQuestion.NEARLY_KNOWN,
                          field + "." + FormReader.TEXT,
                          typed,
                          Argument.text(field),
                          Argument.text(typed),
                          Argument.text(known))));
    }
  }
}
