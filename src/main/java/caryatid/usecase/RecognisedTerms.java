package caryatid.usecase;

import caryatid.entry.TermOrText;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.Vocabulary;
import caryatid.format.KnownWords;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.InputValue;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells the user which words were recognised as a term that has another name in the user's
 * language.
 */
final class RecognisedTerms {
  private final Wording wording;
  private final List<String> said = new ArrayList<>();

  RecognisedTerms(Wording wording) {
    this.wording = wording;
  }

  List<String> of(Form form, InputValue.Group given) {
    form.fields().forEach(field -> field(field, given.members().get(field.key())));
    return said.stream().distinct().toList();
  }

  private void field(Field field, InputValue given) {
    if (field.type() instanceof FieldType.Name name && given instanceof InputValue.Single typed) {
      word(field.key(), name.vocabulary(), typed.text());
    } else if (field.type() instanceof FieldType.Rows rows
        && given instanceof InputValue.Several all) {
      for (InputValue row : all.items()) {
        if (row instanceof InputValue.Group group) {
          of(rows.form(), group);
        }
      }
    }
  }

  private void word(String key, Vocabulary vocabulary, String typed) {
    KnownWords.today()
        .term(vocabulary, typed)
        .map(term -> new EntryWords(wording).name(key, TermOrText.of(term)))
        .filter(word -> !TermOrText.fold(word).equals(TermOrText.fold(typed)))
        .ifPresent(
            word ->
                said.add(
                    wording.fill("Record.understood", Argument.text(typed), Argument.text(word))));
  }
}
