package caryatid.entry.form;

import caryatid.entry.Range;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks given values against a form. */
public final class FormReader {
  /** The members of a name in files. */
  public static final String CODE = "code";

  public static final String TEXT = "text";

  private final List<Problem> problems = new ArrayList<>();

  private final NameNotation notation;
  private final SingleReader singles;

  private FormReader(NameNotation notation) {
    this.notation = notation;
    this.singles = new SingleReader(notation, problems);
  }

  /**
   * Reads a form. A name that is written as words stays words, whatever it says.
   *
   * @throws BadInput with everything that is wrong: unknown keys, missing ones, values that are not
   *     what the field holds
   */
  public static Answers read(Form form, InputValue.Group given, NameNotation notation)
      throws BadInput {
    FormReader reader = new FormReader(notation);
    Answers answers = reader.group("", form, given);
    if (!reader.problems.isEmpty()) {
      throw new BadInput(reader.problems);
    }
    return answers;
  }

  /** The problem of a number outside its range, also if no form was filled in. */
  public static Problem outside(Place place, String key, BigDecimal number, Range range) {
    return Problem.at(
        place,
        FormFault.OUT_OF_RANGE,
        Argument.text(key),
        Argument.text(number.toPlainString()),
        Argument.text(SingleReader.plain(range.lowest())),
        Argument.text(SingleReader.plain(range.highest())));
  }

  private Answers group(String path, Form form, InputValue.Group given) {
    for (Map.Entry<String, InputValue> member : given.members().entrySet()) {
      if (form.field(member.getKey()).isEmpty()) {
        bad(
            member.getValue().place(),
            FormFault.UNKNOWN_KEY,
            Argument.text(path + member.getKey()),
            Argument.text(String.join(", ", form.keys())));
      }
    }
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    for (Field field : form.fields()) {
      answer(path, field, given).ifPresent(v -> values.put(field.key(), v));
    }
    Answers answers = new Answers(values);
    form.orders().forEach(order -> ordered(path, order, answers, given));
    return answers;
  }

  private void ordered(
      String path, Form.NumberOrder order, Answers answers, InputValue.Group given) {
    Optional<BigDecimal> lower = answers.number(order.lower());
    Optional<BigDecimal> upper = answers.number(order.upper());
    if (lower.isPresent() && upper.isPresent() && lower.get().compareTo(upper.get()) > 0) {
      wrong(
          given.members().get(order.lower()),
          FormFault.OUT_OF_ORDER,
          path + order.lower(),
          lower.get().toPlainString(),
          path + order.upper(),
          upper.get().toPlainString());
    }
  }

  private Optional<Answers.Value> answer(String path, Field field, InputValue.Group given) {
    InputValue value = given.members().get(field.key());
    String name = path + field.key();
    if (field.type() instanceof FieldType.Computed computed && notation != NameNotation.INPUT) {
      return answer(path, new Field(field.key(), computed.choice(), field.required()), given);
    }
    if (field.type() instanceof FieldType.Computed) {
      return value == null ? Optional.empty() : wrong(value, FormFault.COMPUTED, name);
    }
    if (value != null) {
      return value(name, field.type(), value);
    }
    if (field.required() && field.type() instanceof FieldType.Choice choice) {
      bad(
          given.place(),
          FormFault.MISSING_CHOICE,
          Argument.text(name),
          Argument.text(String.join(", ", choice.words())));
    } else if (field.required()) {
      bad(given.place(), FormFault.MISSING, Argument.text(name));
    }
    return Optional.empty();
  }

  private Optional<Answers.Value> value(String name, FieldType type, InputValue given) {
    if (type instanceof FieldType.Rows rows) {
      return rows(name, rows.form(), given);
    }
    if (type instanceof FieldType.Name names) {
      return name(name, names, given);
    }
    return given instanceof InputValue.Single single
        ? singles.read(name, type, single)
        : wrong(given, FormFault.NOT_WORDS, name);
  }

  private Optional<Answers.Value> rows(String name, Form form, InputValue given) {
    if (!(given instanceof InputValue.Several several) || several.items().isEmpty()) {
      return wrong(given, FormFault.NOT_ROWS, name);
    }
    List<Answers> rows = new ArrayList<>();
    for (int i = 0; i < several.items().size(); i++) {
      String path = name + "[" + (i + 1) + "]";
      if (several.items().get(i) instanceof InputValue.Group row) {
        rows.add(group(path + ".", form, row));
      } else {
        wrong(several.items().get(i), FormFault.NOT_A_ROW, path);
      }
    }
    return Optional.of(new Answers.Value.Rows(rows));
  }

  private Optional<Answers.Value> name(String path, FieldType.Name type, InputValue given) {
    if (notation != NameNotation.WORDS && given instanceof InputValue.Group group) {
      return name(path, type.vocabulary(), group);
    }
    if (notation == NameNotation.CODES || !(given instanceof InputValue.Single single)) {
      return wrong(given, FormFault.NOT_WORDS, path);
    }
    return singles
        .read(path, type, single)
        .map(words -> new Answers.Value.Name(Optional.empty(), single.text()));
  }

  private Optional<Answers.Value> name(String path, Vocabulary vocabulary, InputValue.Group given) {
    Answers parts = group(path + ".", name(vocabulary), given);
    Optional<String> text = parts.words(TEXT);
    Optional<Coded> code = parts.words(CODE).flatMap(vocabulary::term);
    if (code.isEmpty() && text.isEmpty()) {
      bad(given.place(), FormFault.MISSING, Argument.text(path + "." + TEXT));
      return Optional.empty();
    }
    return Optional.of(new Answers.Value.Name(code, text.orElse("")));
  }

  private static Form name(Vocabulary vocabulary) {
    return Form.of(Field.choice(CODE, vocabulary.codes()), Field.words(TEXT));
  }

  private Optional<Answers.Value> wrong(InputValue given, FormFault fault, String... arguments) {
    return singles.wrong(given, fault, arguments);
  }

  private void bad(Place place, FormFault fault, Argument... arguments) {
    problems.add(Problem.at(place, fault, arguments));
  }
}
