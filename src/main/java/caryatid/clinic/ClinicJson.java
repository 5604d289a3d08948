package caryatid.clinic;

import caryatid.entry.Components;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormFault;
import caryatid.format.FormJson;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A clinic as JSON and back. */
final class ClinicJson {
  private static final String VERSION = "clinic";
  private static final int CURRENT = 1;

  /** Rows like those of the components of a record. */
  private static final String PARTS = "components";

  private static final String ANSWERS = "answers";
  private static final String LIMITS = "limits";
  private static final String DOUBTS = "measured";
  private static final Field TORQUES = PartTorques.FIELD;

  private static final List<String> KINDS =
      Stream.of(MeasuredDoubt.What.values()).map(MeasuredDoubt.What::word).toList();

  private static final Form FORM =
      Form.of(
          Field.rows(
              "plates",
              Field.words("name").needed(),
              Field.rows("columns", Field.words("column")).needed(),
              Field.words("description").needed()),
          Field.words(LIMITS),
          TORQUES,
          Field.rows(
              ANSWERS,
              Field.day("day").needed(),
              Field.words("session").needed(),
              Field.words("answer").needed()),
          Field.rows(
              DOUBTS,
              Field.choice("kind", KINDS).needed(),
              Field.words("by").needed(),
              Field.day("day").needed(),
              number("value", 0, MeasuredDoubt.MOST).needed(),
              number("degrees-of-freedom", 1, MeasuredDoubt.MOST_DEGREES).needed()),
          new Field(
              PARTS, EntryForms.of(EntryKind.COMPONENTS).field(PARTS).orElseThrow().type(), false));

  private ClinicJson() {}

  static byte[] write(Clinic clinic) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    if (!clinic.plates().isEmpty()) {
      values.put(
          "plates",
          new Answers.Value.Rows(clinic.plates().stream().map(ClinicJson::answers).toList()));
    }
    if (!clinic.parts().isEmpty()) {
      Components parts = new Components(clinic.parts(), Optional.empty());
      values.putAll(ContentToAnswers.answers(parts).values());
    }
    clinic.limits().ifPresent(yaml -> values.put(LIMITS, new Answers.Value.Words(yaml)));
    PartTorques.value(clinic.torques()).ifPresent(rows -> values.put(TORQUES.key(), rows));
    if (!clinic.answers().isEmpty()) {
      values.put(
          ANSWERS,
          new Answers.Value.Rows(clinic.answers().stream().map(ClinicJson::answers).toList()));
    }
    if (!clinic.doubts().isEmpty()) {
      values.put(
          DOUBTS,
          new Answers.Value.Rows(clinic.doubts().stream().map(ClinicJson::answers).toList()));
    }
    return FormJson.write(VERSION, CURRENT, new Answers(values));
  }

  /**
   * Reads a clinic.
   *
   * @param name the file, for problems
   * @throws BadInput if it is none, or a newer version of the program wrote it
   */
  static Clinic read(byte[] bytes, String name) throws BadInput {
    Answers answers = FormJson.read(VERSION, CURRENT, FORM, bytes, name);
    requirePossible(answers.rows(DOUBTS), name);
    return new Clinic(
        answers.rows("plates").stream().map(ClinicJson::plate).toList(),
        parts(answers),
        PartTorques.of(answers),
        answers.words(LIMITS),
        answers.rows(ANSWERS).stream().map(ClinicJson::answer).toList(),
        answers.rows(DOUBTS).stream().map(ClinicJson::doubt).toList());
  }

  /** A turn of the feet is less than a number of millimetres may be. */
  private static void requirePossible(List<Answers> doubts, String name) throws BadInput {
    for (int i = 0; i < doubts.size(); i++) {
      boolean turn =
          doubts.get(i).words("kind").equals(Optional.of(MeasuredDoubt.What.TURN.word()));
      BigDecimal value = doubts.get(i).number("value").orElseThrow();
      if (turn && value.compareTo(BigDecimal.valueOf(MeasuredDoubt.MOST_TURN_DEG)) > 0) {
        throw new BadInput(
            Problem.at(
                Place.of(name),
                FormFault.OUT_OF_RANGE,
                Argument.text(DOUBTS + "[" + (i + 1) + "].value"),
                Argument.text(value.toPlainString()),
                Argument.text("0"),
                Argument.text(String.valueOf(MeasuredDoubt.MOST_TURN_DEG))));
      }
    }
  }

  private static List<Components.ComponentLimits> parts(Answers answers) {
    if (answers.rows(PARTS).isEmpty()) {
      return List.of();
    }
    Answers rows = new Answers(Map.of(PARTS, new Answers.Value.Rows(answers.rows(PARTS))));
    return ((Components) AnswersToContent.content(EntryKind.COMPONENTS, rows)).components();
  }

  private static Answers answers(KnownPlate plate) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    values.put("name", new Answers.Value.Words(plate.name()));
    values.put(
        "columns",
        new Answers.Value.Rows(plate.columns().stream().map(ClinicJson::column).toList()));
    values.put("description", new Answers.Value.Words(plate.description()));
    return new Answers(values);
  }

  private static Answers answers(SessionAnswer given) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    values.put("day", new Answers.Value.Words(given.day().toString()));
    values.put("session", new Answers.Value.Words(given.session()));
    values.put("answer", new Answers.Value.Words(given.answer()));
    return new Answers(values);
  }

  private static Field number(String key, double lowest, double highest) {
    return new Field(key, new FieldType.Number(lowest, highest, false), false);
  }

  private static Answers answers(MeasuredDoubt doubt) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    values.put("kind", new Answers.Value.Words(doubt.kind().word()));
    values.put("by", new Answers.Value.Words(doubt.by()));
    values.put("day", new Answers.Value.Words(doubt.day().toString()));
    values.put("value", new Answers.Value.Amount(doubt.value()));
    values.put("degrees-of-freedom", new Answers.Value.Amount(doubt.degreesOfFreedom()));
    return new Answers(values);
  }

  private static MeasuredDoubt doubt(Answers row) {
    String kind = row.words("kind").orElseThrow();
    return new MeasuredDoubt(
        MeasuredDoubt.What.values()[KINDS.indexOf(kind)],
        row.words("by").orElseThrow(),
        LocalDate.parse(row.words("day").orElseThrow()),
        row.number("value").orElseThrow(),
        row.number("degrees-of-freedom").orElseThrow());
  }

  private static SessionAnswer answer(Answers row) {
    return new SessionAnswer(
        LocalDate.parse(row.words("day").orElseThrow()),
        row.words("session").orElseThrow(),
        row.words("answer").orElseThrow());
  }

  /** A column without a name is a row that says nothing. */
  private static Answers column(String name) {
    return name.isBlank()
        ? Answers.NONE
        : new Answers(Map.of("column", new Answers.Value.Words(name)));
  }

  private static KnownPlate plate(Answers row) {
    List<String> columns =
        row.rows("columns").stream().map(column -> column.words("column").orElse("")).toList();
    return new KnownPlate(
        columns, row.words("name").orElseThrow(), row.words("description").orElseThrow());
  }
}
