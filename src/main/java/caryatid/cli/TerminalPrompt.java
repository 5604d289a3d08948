package caryatid.cli;

import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.remark.Place;
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
   * What was given, completed by answers.
   *
   * @param all whether what may be left out is asked for as well
   * @param offers usual rows, which can be chosen by their number
   */
  InputValue.Group complete(Form form, InputValue.Group given, boolean all, SuggestedRows offers) {
    Map<String, InputValue> members = new LinkedHashMap<>(given.members());
    for (Field field : form.fields()) {
      if (!members.containsKey(field.key()) && (all || field.required())) {
        ask(field, offers).ifPresent(answer -> members.put(field.key(), answer));
      }
    }
    return new InputValue.Group(members, PLACE);
  }

  String initials() {
    return line(wording.word("Record.initials"), true).orElse("");
  }

  private Optional<InputValue> ask(Field field, SuggestedRows offers) {
    return field.type() instanceof FieldType.Rows rows
        ? rows(field, rows.form(), offers)
        : line(question(field), field.required()).map(TerminalPrompt::single);
  }

  private static InputValue single(String text) {
    return new InputValue.Single(text, InputValue.Kind.ANY, PLACE);
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
    Optional<String> first = line(question(name), required);
    if (first.isEmpty()) {
      return Optional.empty();
    }
    Map<String, InputValue> offered =
        offers
            .named(first.get())
            .map(row -> SuggestedRows.given(row, PLACE))
            .orElse(Map.of(name.key(), single(first.get())));
    for (Field field : form.fields()) {
      Optional.ofNullable(offered.get(field.key()))
          .or(() -> line(question(field), field.required()).map(TerminalPrompt::single))
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

  /**
   * An answer; empty where nothing was typed, which is asked again where something must be said.
   */
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
