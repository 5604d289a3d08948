package caryatid.web.page;

import caryatid.entry.EntryContent;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.Map;

/** What an entry says as it would be typed into its form. */
public final class EntryTexts {
  private final EntryWords words;
  private final Map<String, String> texts = new LinkedHashMap<>();

  private EntryTexts(Wording wording) {
    this.words = new EntryWords(wording);
  }

  /** The texts by the names of the form's fields; terms in the reader's language. */
  public static TypedForm of(EntryContent content, Wording wording) {
    EntryTexts typed = new EntryTexts(wording);
    typed.answers("", ContentToAnswers.answers(content));
    return new TypedForm(typed.texts);
  }

  private void answers(String lead, Answers answers) {
    answers.values().forEach((key, value) -> value(lead, key, value));
  }

  private void value(String lead, String key, Answers.Value value) {
    String name = lead + key;
    if (value instanceof Answers.Value.Rows rows) {
      for (int i = 0; i < rows.rows().size(); i++) {
        answers(TypedForm.row(name, i + 1), rows.rows().get(i));
      }
    } else if (value instanceof Answers.Value.Amount amount) {
      texts.put(name, amount.number().toPlainString());
    } else if (value instanceof Answers.Value.YesNo yesNo) {
      texts.put(name, yesNo.yes() ? "yes" : "no");
    } else if (value instanceof Answers.Value.Name term) {
      // A name in somebody's words stays theirs, whatever term it resembles.
      String own = term.code().isPresent() ? "" : TypedForm.OWN_WORDS;
      texts.put(name + own, words.value(key, term));
    } else if (value instanceof Answers.Value.Words text && !text.text().isBlank()) {
      texts.put(name, text.text());
    }
  }
}
