package caryatid.entry.form;

import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks single values against the type of their field. */
final class SingleReader {
  private static final int MOST_DECIMALS = 9;

  private final NameNotation notation;
  private final List<Problem> problems;

  /**
   * @param problems takes what is wrong
   */
  SingleReader(NameNotation notation, List<Problem> problems) {
    this.notation = notation;
    this.problems = problems;
  }

  /** The value; empty, with a problem, where it is not what the field holds. */
  Optional<Answers.Value> read(String name, FieldType type, InputValue.Single given) {
    if (type instanceof FieldType.Number number) {
      return number(name, number, given);
    }
    return type instanceof FieldType.YesNo ? yesNo(name, given) : words(name, type, given);
  }

  private Optional<Answers.Value> number(
      String name, FieldType.Number type, InputValue.Single given) {
    Optional<BigDecimal> read = number(withoutLetter(name, given));
    if (read.isEmpty()) {
      return wrong(given, FormFault.NOT_A_NUMBER, name, given.text());
    }
    double value = read.get().doubleValue();
    if (!(value >= type.lowest() && value <= type.highest())) {
      return wrong(
          given,
          FormFault.OUT_OF_RANGE,
          name,
          given.text(),
          plain(type.lowest()),
          plain(type.highest()));
    }
    BigDecimal number = read.get().stripTrailingZeros();
    if (number.scale() > (type.whole() ? 0 : MOST_DECIMALS)) {
      return wrong(
          given,
          type.whole() ? FormFault.NOT_WHOLE : FormFault.TOO_MANY_DIGITS,
          name,
          given.text());
    }
    return Optional.of(new Answers.Value.Amount(number));
  }

  /** A mobility grade may be typed as the trade writes it: K3. */
  private static InputValue.Single withoutLetter(String name, InputValue.Single given) {
    boolean lettered =
        given.kind() == InputValue.Kind.ANY
            && name.matches("(.*\\.)?mobility-grade(-lowest|-highest)?")
            && given.text().matches("[Kk] ?\\d");
    return lettered
        ? new InputValue.Single(
            given.text().substring(given.text().length() - 1), given.kind(), given.place())
        : given;
  }

  private static Optional<BigDecimal> number(InputValue.Single given) {
    boolean could = given.kind() == InputValue.Kind.NUMBER || given.kind() == InputValue.Kind.ANY;
    // No exponents of many digits: they would make a short text a number of a million digits.
    if (!could || !given.text().matches("[+-]?\\d{1,20}(\\.\\d{1,20})?([eE][+-]?\\d{1,2})?")) {
      return Optional.empty();
    }
    return Optional.of(new BigDecimal(given.text()));
  }

  private Optional<Answers.Value> yesNo(String name, InputValue.Single given) {
    boolean yes = given.text().equals("true") || given.text().equals("yes");
    boolean no = given.text().equals("false") || given.text().equals("no");
    boolean could = given.kind() == InputValue.Kind.YES_NO || given.kind() == InputValue.Kind.ANY;
    if (!could || !(yes || no)) {
      return wrong(given, FormFault.NOT_YES_NO, name, given.text());
    }
    return Optional.of(new Answers.Value.YesNo(yes));
  }

  private Optional<Answers.Value> words(String name, FieldType type, InputValue.Single given) {
    boolean could = given.kind() == InputValue.Kind.WORDS || given.kind() == InputValue.Kind.ANY;
    if (!could || given.text().isBlank()) {
      return wrong(given, FormFault.NOT_WORDS, name);
    }
    if (type instanceof FieldType.Choice choice) {
      return choice(name, choice, given);
    }
    if (type instanceof FieldType.Day && !isDay(given.text())) {
      return wrong(given, FormFault.NOT_A_DAY, name, given.text());
    }
    return Optional.of(new Answers.Value.Words(given.text()));
  }

  /** Typed text may leave blanks out, or have a dot between units. */
  private Optional<Answers.Value> choice(
      String name, FieldType.Choice type, InputValue.Single given) {
    Optional<String> chosen =
        type.words().stream()
            .filter(
                w ->
                    notation == NameNotation.INPUT
                        ? withoutBlanks(w).equals(withoutBlanks(given.text()))
                        : w.equals(given.text()))
            .findFirst();
    return chosen.isPresent()
        ? chosen.map(Answers.Value.Words::new)
        : wrong(
            given, FormFault.NO_SUCH_CHOICE, name, given.text(), String.join(", ", type.words()));
  }

  private static String withoutBlanks(String words) {
    return words.replaceAll("[\\s\\p{Z}\u00b7\u22c5*.]", "");
  }

  private static boolean isDay(String text) {
    try {
      return LocalDate.parse(text).getYear() > 0;
    } catch (DateTimeParseException e) {
      return false;
    }
  }

  /** Notes what is wrong with a value; there is none then. */
  Optional<Answers.Value> wrong(InputValue given, FormFault fault, String... arguments) {
    List<Argument> texts = new ArrayList<>();
    for (String argument : arguments) {
      texts.add(Argument.text(argument));
    }
    problems.add(new Problem(given.place(), fault, texts));
    return Optional.empty();
  }

  /** A number as people write it. */
  static String plain(double number) {
    return new BigDecimal(number).toPlainString();
  }
}
