package caryatid.format;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.Choices;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormFault;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The fields that every entry has besides its content. */
final class EntryHeader {
  static final String VERSION = "fitting-entry";

  /** The version whose names are words. */
  static final int FIRST = 1;

  /** The version this program writes, and the newest it reads; its names are codes and words. */
  static final int CURRENT = 2;

  /** Date, time and offset from UTC (RFC 3339). */
  static final DateTimeFormatter TIME = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

  static final Form FORM =
      Form.of(
          Field.whole(VERSION, 1, CURRENT).needed(),
          Field.whole("number", 1, 1_000_000).needed(),
          Field.choice("kind", Arrays.stream(EntryKind.values()).map(EntryKind::key).toList())
              .needed(),
          Field.words("at").needed(),
          Field.words("by").needed(),
          Field.whole("corrects", 1, 1_000_000),
          Field.words("because"),
          Field.words("as-of"),
          Field.rows(
              "files",
              Field.words("name").needed(),
              Field.choice("is", Choices.ROLE.codes()).needed(),
              Field.words("original").needed()));

  private EntryHeader() {}

  static Entry open(InputValue.Group envelope, InputValue.Group content) throws BadInput {
    Place place = envelope.place();
    Answers answers = FormReader.read(FORM, envelope, NameNotation.CODES);
    EntryKind kind = EntryKind.of(answers.words("kind").orElseThrow()).orElseThrow();
    int version = answers.number(VERSION).orElseThrow().intValueExact();
    Answers said =
        version == FIRST
            ? first(kind, content)
            : FormReader.read(EntryForms.of(kind), content, NameNotation.CODES);
    OffsetDateTime at = time("at", answers, place).orElseThrow();
    Optional<Entry.Correction> corrects = correction(answers, place);
    List<KeptFile> files = files(answers, place);
    try {
      int number = answers.number("number").orElseThrow().intValueExact();
      return new Entry(
          number,
          at,
          answers.words("by").orElseThrow(),
          corrects,
          AnswersToContent.content(kind, said),
          files);
    } catch (IllegalArgumentException e) {
      throw new BadInput(Problem.at(place, FormFault.NOT_AN_ENTRY, Argument.why(e)));
    }
  }

  /** Names are words there, in any of four languages. */
  private static Answers first(EntryKind kind, InputValue.Group content) throws BadInput {
    Form form = EntryForms.of(kind);
    return KnownWords.first().understood(form, FormReader.read(form, content, NameNotation.WORDS));
  }

  /** The version of an entry, where it says one that is newer than all that can be read. */
  static Optional<String> newer(InputValue.Group envelope) {
    return Optional.ofNullable(envelope.members().get(VERSION))
        .filter(InputValue.Single.class::isInstance)
        .map(version -> ((InputValue.Single) version).text())
        .filter(text -> text.matches("[1-9]\\d{0,8}") && Integer.parseInt(text) > CURRENT);
  }

  private static Optional<OffsetDateTime> time(String key, Answers answers, Place place)
      throws BadInput {
    Optional<String> text = answers.words(key);
    try {
      return text.map(t -> OffsetDateTime.parse(t, TIME));
    } catch (DateTimeException e) {
      throw new BadInput(
          Problem.at(
              place, FormFault.BAD_TIME, Argument.text(key), Argument.text(text.orElse(""))));
    }
  }

  private static Optional<Entry.Correction> correction(Answers answers, Place place)
      throws BadInput {
    if (answers.number("corrects").isPresent() != answers.words("because").isPresent()) {
      String missing = answers.words("because").isPresent() ? "corrects" : "because";
      throw new BadInput(Problem.at(place, FormFault.MISSING, Argument.text(missing)));
    }
    Optional<OffsetDateTime> asOf = time("as-of", answers, place);
    if (asOf.isPresent() && answers.number("corrects").isEmpty()) {
      throw new BadInput(Problem.at(place, FormFault.MISSING, Argument.text("corrects")));
    }
    return answers
        .number("corrects")
        .map(
            n ->
                new Entry.Correction(
                    n.intValueExact(), answers.words("because").orElseThrow(), asOf));
  }

  private static List<KeptFile> files(Answers answers, Place place) throws BadInput {
    for (Answers file : answers.rows("files")) {
      String name = file.words("name").orElseThrow();
      if (!KeptFile.isName(name)) {
        throw new BadInput(Problem.at(place, FormFault.BAD_FILE_NAME, Argument.text(name)));
      }
    }
    return answers.rows("files").stream().map(EntryHeader::file).toList();
  }

  private static KeptFile file(Answers file) {
    KeptFile.Role is = Choices.ROLE.constant(file.words("is").orElseThrow()).orElseThrow();
    return new KeptFile(file.words("name").orElseThrow(), is, file.words("original").orElseThrow());
  }
}
