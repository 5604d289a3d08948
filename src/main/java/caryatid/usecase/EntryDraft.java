package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.entry.EntryCheck;
import caryatid.entry.EntryKind;
import caryatid.entry.EntryQuestion;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.entry.form.Vocabulary;
import caryatid.fitting.Addition;
import caryatid.fitting.TypedFindings;
import caryatid.format.KnownWords;
import caryatid.format.NearlyKnown;
import caryatid.loadline.GeometryLimits;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Question;
import caryatid.sheet.yaml.InputValue;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An entry as the user gave it, before it is checked against its form and added.
 *
 * @param kind what it is about
 * @param given what it says
 * @param offers the usual rows by which its rows may go
 * @param files what is kept with it
 * @param by initials of who adds it
 * @param at when; now if empty
 * @param corrects the entry it takes the place of
 * @param sure whether its words say nothing about who the wearer is, whatever they look like
 */
public record EntryDraft(
    EntryKind kind,
    InputValue.Group given,
    SuggestedRows offers,
    List<Addition.Attached> files,
    String by,
    Optional<OffsetDateTime> at,
    Optional<Entry.Correction> corrects,
    boolean sure) {
  public EntryDraft {
    files = List.copyOf(files);
  }

  /** The same draft, saying something else. */
  public EntryDraft saying(InputValue.Group other) {
    return new EntryDraft(kind, other, offers, files, by, at, corrects, sure);
  }

  /**
   * The same draft with the answer to a question.
   *
   * @param says why it is so, or, of a word that is nearly known, the word as it is meant
   */
  public EntryDraft answering(Question question, String says) {
    return saying(Assignments.with(given, question.answer(), beside(question, says)));
  }

  /** The answer to a question about the next visit names its day, and stands behind the note. */
  private String beside(Question question, String says) {
    if (question.topic() != EntryQuestion.NEXT_VISIT_BEFORE) {
      return says;
    }
    String day = ((Argument.Text) question.arguments().get(1)).value() + ": " + says;
    return given.members().get(question.answer()) instanceof InputValue.Single note
        ? note.text() + "; " + day
        : day;
  }

  /** The same draft with the known word in place of the one that is nearly known. */
  public EntryDraft correcting(NearlyKnown.Word word) {
    return saying(Assignments.with(given, word.field(), word.known()));
  }

  /** What the user is told about words that were recognised as a term with another name. */
  public List<String> understood(Wording wording) {
    return new RecognisedTerms(wording).of(EntryForms.of(kind), given);
  }

  /**
   * What is to be added.
   *
   * @param limits of settings
   * @throws BadInput if something is missing or does not fit, a question is open, or it looks as if
   *     it said who the wearer is
   */
  Addition addition(OffsetDateTime now, GeometryLimits limits) throws BadInput {
    Form form = EntryForms.of(kind);
    InputValue.Group complete = offers.complete(given);
    Answers content =
        KnownWords.today().understood(form, FormReader.read(form, complete, NameNotation.INPUT));
    if (kind == EntryKind.STAND) {
      content = TypedFindings.judged(content);
    }
    Addition addition =
        new Addition(at.orElse(now), by, corrects, AnswersToContent.content(kind, content), files)
            .checked(now);
    List<Question> open = new ArrayList<>(NearlyKnown.questions(form, complete));
    open.addAll(EntryCheck.questions(addition.content(), Place.of(kind.key()), limits));
    open.addAll(EntryCheck.aboutDay(addition.content(), addition.at().toLocalDate()));
    if (!open.isEmpty()) {
      throw BadInput.asked(Place.of(kind.key()), open);
    }
    return sure ? addition : addition.anonymous();
  }

  /**
   * Tells the user which words were recognised as a term that has another name in the user's
   * language.
   */
  private static final class RecognisedTerms {
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
                      wording.fill(
                          "Record.understood", Argument.text(typed), Argument.text(word))));
    }
  }
}
