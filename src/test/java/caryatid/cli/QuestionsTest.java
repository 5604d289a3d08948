package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.fitting.Answers;
import caryatid.fitting.EntryKind;
import caryatid.fitting.Field;
import caryatid.fitting.FieldType;
import caryatid.fitting.Form;
import caryatid.fitting.FormReader;
import caryatid.remark.BadInput;
import caryatid.sheet.Given;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class QuestionsTest {
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);
  private final StringWriter asked = new StringWriter();

  @Test
  void everythingIsAskedForAndEmptyAnswersAreLeftOut() throws BadInput {
    Answers answers = ask(EntryKind.OWN_SETTING, Map.of(), true, "ankle\n3\n\n2\n\n20\n\n");
    assertThat(answers.values().keySet())
        .containsExactly("what", "attempts", "succeeded", "heel-height-set-mm");
    assertThat(asked.toString())
        .isEqualTo(
            "what: attempts: succeeded: succeeded: heel height wanted (mm): heel height set (mm):"
                + " note: ");
  }

  @Test
  void ofWhatWasGivenOnlyWhatIsMissingIsAskedFor() throws BadInput {
    Given what = new Given.Single("toe-out", Given.Kind.ANY, Assignments.PLACE);
    Answers answers = ask(EntryKind.ACCEPTED, Map.of("what", what), false, "walks straight\n");
    assertThat(answers.words("why")).contains("walks straight");
    assertThat(asked.toString()).isEqualTo("why: ");
  }

  @Test
  void rowsAreAskedForUntilTheFirstAnswerOfOneIsEmpty() throws BadInput {
    Answers answers =
        ask(EntryKind.LENGTH, Map.of(), false, "iliac crest\n980\n985\nknee\n500\n501\n\n");
    assertThat(answers.rows("landmarks")).hasSize(2);
    assertThat(asked.toString())
        .startsWith(
            "Row 1 of landmarks; leave the first answer empty to end\nlandmark: left (mm): ");
  }

  @Test
  void everyFieldOfEveryFormHasAName() {
    for (EntryKind kind : EntryKind.values()) {
      named(kind.form());
      assertThat(WORDING.word(kind)).isNotBlank();
    }
  }

  private static void named(Form form) {
    for (Field field : form.fields()) {
      assertThat(new EntryWords(WORDING).label(field.key())).isNotBlank();
      if (field.type() instanceof FieldType.Rows rows) {
        named(rows.form());
      }
    }
  }

  private Answers ask(EntryKind kind, Map<String, Given> given, boolean all, String typed)
      throws BadInput {
    Questions questions =
        new Questions(new BufferedReader(new StringReader(typed)), new PrintWriter(asked), WORDING);
    return FormReader.read(
        kind.form(),
        questions.complete(kind.form(), new Given.Group(given, Assignments.PLACE), all));
  }
}
