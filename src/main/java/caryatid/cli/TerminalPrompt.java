package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormFault;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Asks at a terminal for what was not given. */
final class TerminalPrompt {
  private static final Place PLACE = Place.of("terminal");

  private final BufferedReader in;
  private final PrintWriter out;
  private final Wording wording;

  TerminalPrompt(BufferedReader in, PrintWriter out, Wording wording) {
    this.in = in;
    this.out = out;
    this.wording = wording;
  }

  /** The questions at a terminal; none where there is no terminal, as in a script. */
  static Optional<TerminalPrompt> atTerminal(Wording wording, Console console) {
    return Optional.ofNullable(console)
        .map(
            c ->
                new TerminalPrompt(
                    new BufferedReader(c.reader()), TerminalSanitiser.to(c.writer()), wording));
  }

  /**
   * Who adds an entry, and what it says.
   *
   * @param by initials
   */
  record Said(String by, InputValue.Group given) {}

  /**
   * An entry completed by answers; initials come first, so that nobody types everything only to
   * fail at the end.
   */
  Said entry(
      Optional<String> by, Form form, InputValue.Group given, boolean all, SuggestedRows offers) {
    String initials = by.orElseGet(this::initials);
    return new Said(initials, complete(form, given, all, offers));
  }

  /**
   * What was given, completed by answers.
   *
   * @param all whether what may be left out is asked for as well
   * @param offers usual rows, which can be chosen by their number
   */
  InputValue.Group complete(Form form, InputValue.Group given, boolean all, SuggestedRows offers) {
    Map<String, InputValue> members = new LinkedHashMap<>(given.members());
    for (Field field : form.fields()) {
      boolean computed = field.type() instanceof FieldType.Computed;
      if (!computed && !members.containsKey(field.key()) && (all || field.required())) {
        ask(field, offers).ifPresent(answer -> members.put(field.key(), answer));
      }
    }
    return new InputValue.Group(members, PLACE);
  }

  /** Initials, asked for until some are given. */
  String initials() {
    while (true) {
      Optional<String> typed = line(wording.word("Record.initials"), true);
      if (typed.filter(t -> !Entry.isInitials(t)).isEmpty()) {
        return typed.orElse("");
      }
      out.println(wording.fill(FormFault.BAD_INITIALS.code(), Argument.text(typed.orElse(""))));
    }
  }

  /**
   * Whether what is asked is so; nothing typed is no.
   *
   * @param prompt key of the words that ask for yes or no
   */
  boolean isSo(String question, String prompt) {
    out.println(question);
    String answer = line(wording.word(prompt), false).orElse("");
    return List.of(wording.word("cli.yes").split(" ")).contains(answer.toLowerCase(Locale.ROOT));
  }

  void say(String line) {
    out.println(line);
  }

  /** What somebody says of what is asked; empty where they say nothing. */
  Optional<String> why(String question) {
    out.println(question);
    return line(wording.word("cli.why"), false);
  }

  private Optional<InputValue> ask(Field field, SuggestedRows offers) {
    return field.type() instanceof FieldType.Rows rows
        ? rows(field, rows.form(), offers)
        : answer(field);
  }

  /** An answer that fits its field. If it does not fit, the user is told why and asked again. */
  private Optional<InputValue> answer(Field field) {
    while (true) {
      Optional<InputValue> typed =
          line(question(field), field.required()).map(TerminalPrompt::single);
      List<Problem> wrong = typed.map(value -> problems(field, value)).orElse(List.of());
      if (wrong.isEmpty()) {
        return typed;
      }
      wrong.forEach(problem -> out.println(wording.say(problem)));
    }
  }

  private static List<Problem> problems(Field field, InputValue value) {
    try {
      InputValue.Group alone = new InputValue.Group(Map.of(field.key(), value), PLACE);
      FormReader.read(Form.of(field), alone, NameNotation.INPUT);
      return List.of();
    } catch (BadInput e) {
      return e.problems();
    }
  }

  private static InputValue single(String text) {
    return InputValue.Single.ofAnyKind(text, PLACE);
  }

  private Optional<InputValue> rows(Field field, Form form, SuggestedRows offers) {
    List<InputValue> rows = new ArrayList<>();
    for (int i = 0; i < offers.rows().size(); i++) {
      out.println("  " + (i + 1) + "  " + offers.name(i));
    }
    Optional<InputValue> row;
    do {
      out.println(
          wording.fill(
              "Record.askRow",
              RecordSubcommand.texts(rows.size() + 1, new EntryWords(wording).label(field.key()))));
      row = row(form, field.required() && rows.isEmpty(), offers);
      row.ifPresent(rows::add);
    } while (row.isPresent());
    return rows.isEmpty() ? Optional.empty() : Optional.of(new InputValue.Several(rows, PLACE));
  }

  private Optional<InputValue> row(Form form, boolean required, SuggestedRows offers) {
    Map<String, InputValue> members = new LinkedHashMap<>();
    Field name = form.fields().get(0);
    Optional<InputValue> first = answer(new Field(name.key(), name.type(), required));
    if (first.isEmpty()) {
      return Optional.empty();
    }
    Optional<Answers> usual = offers.named(((InputValue.Single) first.get()).text());
    Map<String, InputValue> offered =
        usual.map(row -> SuggestedRows.given(row, PLACE)).orElse(Map.of(name.key(), first.get()));
    for (Field field : form.fields()) {
      boolean asked = usual.isEmpty() || SuggestedRows.isAsked(usual.get(), field);
      if (!asked || field.type() instanceof FieldType.Computed) {
        continue;
      }
      Optional.ofNullable(offered.get(field.key()))
          .or(() -> answer(field))
          .ifPresent(answer -> members.put(field.key(), answer));
    }
    return Optional.of(new InputValue.Group(members, PLACE));
  }

  private String question(Field field) {
    String label = new EntryWords(wording).label(field.key());
    String hint =
        field.type() instanceof FieldType.Choice choice
            ? String.join(", ", choice.words())
            : field.type() instanceof FieldType.YesNo
                ? wording.word("Record.yesOrNo")
                : EntryWords.unit(field.key());
    return hint.isEmpty() ? label : label + " (" + hint + ")";
  }

  /** The answer, or empty if the user just pressed Enter. Required questions are asked again. */
  private Optional<String> line(String question, boolean required) {
    try {
      while (true) {
        out.print(question + ": ");
        out.flush();
        String line = in.readLine();
        if (line == null || !line.isBlank() || !required) {
          return Optional.ofNullable(line).map(String::strip).filter(l -> !l.isEmpty());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
