package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.EntryKind;
import caryatid.entry.WalkingDeviation;
import caryatid.entry.form.Answers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.remark.BadInput;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.yaml.InputValue;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TerminalPromptTest {
  private static final Place PLACE = Place.of("test");
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
  void initialsAreAskedForFirstAndUntilTheyAreSome() {
    TerminalPrompt questions = prompt("A. Bell\nAB\nsteady\n");
    InputValue.Group nothing = new InputValue.Group(Map.of(), PLACE);
    SuggestedRows offers = SuggestedRows.none(WORDING);
    TerminalPrompt.Said said =
        questions.entry(Optional.empty(), EntryForms.of(EntryKind.NOTE), nothing, true, offers);
    assertThat(said.by()).isEqualTo("AB");
    assertThat(asked.toString().replace(System.lineSeparator(), "\n"))
        .isEqualTo(
            "initials of the person adding this: expected the initials of the person adding it, one"
                + " to ten letters and digits, found \"A. Bell\". Give them with --by.\n"
                + "initials of the person adding this: text: ");
  }

  @Test
  void anAnswerThatDoesNotFitIsSaidToAndAskedForAgain() throws BadInput {
    Answers answers =
        ask(
            EntryKind.BENCH_ALIGNMENT,
            Map.of(),
            false,
            "ankle\n\n\n\nseven\n7\nrad\ndeg\n\n\n\n\n");
    assertThat(answers.rows("items").get(0).number("set"))
        .contains(java.math.BigDecimal.valueOf(7));
    assertThat(asked.toString())
        .contains(
            "set: terminal: set: expected a number, found \"seven\". Write digits with a decimal"
                + " point, without a unit.",
            "unit (mm, deg, N m): terminal: unit: found \"rad\", expected one of: mm, deg, N m.");
  }

  @Test
  void whatIsComputedIsNotAskedFor() throws BadInput {
    ask(
        EntryKind.STAND,
        Map.of(),
        true,
        "\n".repeat(8) + "sagittal\nright\nknee\n1\n2\n3\n4\n5\nx\n");
    assertThat(asked.toString()).contains("tolerance above").doesNotContain("result");
  }

  @Test
  void ofWhatWasGivenOnlyWhatIsMissingIsAskedFor() throws BadInput {
    InputValue what = new InputValue.Single("toe-out", InputValue.Kind.ANY, PLACE);
    Answers answers = ask(EntryKind.ACCEPTED, Map.of("what", what), false, "walks straight\n");
    assertThat(answers.words("why")).contains("walks straight");
    assertThat(asked.toString()).isEqualTo("why: ");
  }

  @Test
  void rowsAreAskedForUntilTheFirstAnswerOfOneIsEmpty() throws BadInput {
    Answers answers =
        ask(EntryKind.LEG_LENGTH, Map.of(), true, "iliac crest\n980\n985\nknee\n500\n501\n\n");
    assertThat(answers.rows("landmarks")).hasSize(2);
    assertThat(asked.toString())
        .startsWith(
            "Row 1 of landmarks; leave the first answer empty to end\nlandmark: left (mm): ");
  }

  @Test
  void usualRowsAreOfferedByNumberAndOthersTaken() throws BadInput {
    SuggestedRows offers =
        SuggestedRows.of(EntryKind.WALKING, AmputationLevel.TRANSTIBIAL, WORDING);
    Answers answers =
        ask(EntryKind.WALKING, Map.of(), true, "2\nslight\nlimps\n\n\n\n\n\n\n8\n", offers);
    assertThat(asked.toString())
        .startsWith("  1  foot slap\n  2  foot turns outward at initial contact\n");
    Answers first = answers.rows("observations").get(0);
    WalkingDeviation rotation = WalkingDeviation.FOOT_ROTATION;
    assertThat(first.name("deviation")).contains(term(rotation));
    assertThat(first.words("plane")).contains("transverse");
    assertThat(first.words("phase")).contains("early stance");
    assertThat(first.words("severity")).contains("slight");
    assertThat(first.name("points-to")).contains(term(rotation));
    assertThat(first.name("source")).contains(term(WalkingDeviation.Reference.BERGER));
    assertThat(answers.rows("observations").get(1).name("deviation"))
        .contains(new Answers.Value.Name(Optional.empty(), "limps"));
    assertThat(answers.number("comfort")).contains(java.math.BigDecimal.valueOf(8));
  }

  private static Answers.Value.Name term(Coded term) {
    return new Answers.Value.Name(Optional.of(term), "");
  }

  @Test
  void everyFieldOfEveryFormHasAName() {
    for (EntryKind kind : EntryKind.values()) {
      named(EntryForms.of(kind));
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

  private Answers ask(EntryKind kind, Map<String, InputValue> given, boolean all, String typed)
      throws BadInput {
    return ask(kind, given, all, typed, SuggestedRows.none(WORDING));
  }

  private TerminalPrompt prompt(String typed) {
    return new TerminalPrompt(
        new BufferedReader(new StringReader(typed)), new PrintWriter(asked), WORDING);
  }

  private Answers ask(
      EntryKind kind,
      Map<String, InputValue> given,
      boolean all,
      String typed,
      SuggestedRows offers)
      throws BadInput {
    return FormReader.read(
        EntryForms.of(kind),
        prompt(typed)
            .complete(EntryForms.of(kind), new InputValue.Group(given, PLACE), all, offers),
        NameNotation.INPUT);
  }
}
