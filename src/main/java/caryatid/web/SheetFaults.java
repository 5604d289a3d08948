package caryatid.web;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.usecase.stand.DraftedStand;
import caryatid.usecase.stand.DraftedStand.SoFar;
import caryatid.usecase.stand.FieldProblem;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.FieldFaults;
import caryatid.web.page.LocalTimes;
import caryatid.web.page.NumberFault;
import caryatid.web.page.SheetLabels;
import caryatid.web.page.SheetMarkup;
import caryatid.web.page.TypedTime;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a drafted stand, or asked, by its field and in the words of its fields. */
final class SheetFaults {
  private static final Pattern KEY = Pattern.compile("`([a-z-]+)`");
  private static final Pattern ROW = Pattern.compile("((?:landmark|target)\\[\\d+]\\.).*");

  private final SoFar found;
  private final Map<String, String> typed;
  private final Map<String, String> earlier;
  private final boolean knee;
  private final List<String> withoutAnkleAxis;
  private final Wording wording;

  /**
   * @param typed what was typed, by field
   * @param work the state, of which there may be one before
   */
  SheetFaults(SoFar found, Map<String, String> typed, DraftedStand work, Wording wording)
      throws BadInput {
    this.found = found;
    this.typed = typed;
    this.earlier = work.earlier();
    this.knee = work.hasProstheticKnee();
    this.withoutAnkleAxis = work.withoutAnkleAxis(typed);
    this.wording = wording;
  }

  /** All that is wrong or asked. */
  FieldFaults all() {
    Map<String, List<String>> atFields = new LinkedHashMap<>();
    List<String> others = new ArrayList<>();
    for (int i = 0; i < found.problems().size(); i++) {
      String sentence = sentence(i);
      field(i)
          .ifPresentOrElse(
              name -> atFields.computeIfAbsent(name, key -> new ArrayList<>()).add(sentence),
              () -> others.add(sentence));
    }
    for (String name : withoutAnkleAxis) {
      atFields.computeIfAbsent(name, key -> new ArrayList<>()).add(wording.word("Web.noAnkleAxis"));
    }
    return new FieldFaults(atFields, others);
  }

  /** The field that a problem, by its number from 0, is about; empty if it is about no one. */
  Optional<String> field(int number) {
    Problem problem = found.problems().get(number);
    if (!found.questions().isEmpty()) {
      return new AboutField(typed).of(found.questions().get(number));
    }
    if (StandFields.isOfStretch(problem.place().file())) {
      return Optional.of(problem.place().file());
    }
    Optional<String> field = found.sheet().field(problem).map(SheetFaults::shown);
    if (FieldProblem.of(problem) == FieldProblem.MISSING_KEY) {
      String row = field.map(ROW::matcher).filter(Matcher::matches).map(m -> m.group(1)).orElse("");
      return text(problem, 0).equals("landmarks")
          ? Optional.of(StandFields.LANDMARK + "[1].forward")
          : SheetLabels.field(text(problem, 0), row).or(() -> field);
    }
    return field.or(() -> new AboutField(typed).of(problem));
  }

  /** The time stands in a field that knows whether it was changed. */
  private static String shown(String field) {
    return field.equals(StandFields.AT) ? TypedTime.AT : field;
  }

  /** A problem as the result column says it: led by its field. */
  String led(int number) {
    return field(number)
        .flatMap(name -> SheetLabels.label(name, typed, knee, wording))
        .map(label -> label + ": " + sentence(number))
        .orElseGet(() -> sentence(number));
  }

  /** Whether something is left out only because it looks like a name. */
  boolean looksLikeName() {
    return found.problems().stream()
        .anyMatch(problem -> FieldProblem.of(problem) == FieldProblem.LIKE_A_NAME);
  }

  private String sentence(int number) {
    Problem problem = found.problems().get(number);
    Optional<String> noTime = LocalTimes.here(wording).fault(at());
    if (field(number).equals(Optional.of(TypedTime.AT)) && noTime.isPresent()) {
      return noTime.get();
    }
    return switch (FieldProblem.of(problem)) {
      case NOT_A_NUMBER -> NumberFault.of(field(number).map(typed::get).orElse(""), wording);
      case MISSING_KEY -> missing(problem, field(number));
      case OUT_OF_RANGE ->
          wording.fill("Web.fault.range", problem.arguments().get(2), problem.arguments().get(3));
      default -> inFieldWords(withoutCommandLine(bare(problem, wording)));
    };
  }

  /** What is missing: never taken from the state before without being asked for. */
  private String missing(Problem problem, Optional<String> field) {
    if (field.isEmpty()) {
      return wording.fill("Web.fault.missingWhat", problem.arguments().get(0));
    }
    String row = field.map(ROW::matcher).filter(Matcher::matches).map(m -> m.group(1)).orElse("");
    boolean mark = row.startsWith(StandFields.LANDMARK);
    String before = mark ? SheetMarkup.marks(earlier, row) : "";
    return before.isEmpty()
        ? wording.word(mark ? "Web.fault.notMeasured" : "Web.fault.missing")
        : wording.fill("Web.fault.notMeasuredSince", Argument.text(before));
  }

  private String at() {
    return typed.getOrDefault(StandFields.AT, "");
  }

  /** A problem without its place in the sheet, which nobody wrote by hand. */
  static String bare(Problem problem, Wording wording) {
    String inFields = "Web.say." + problem.topic().code();
    if (wording.knows(inFields)) {
      return wording.fill(inFields, problem.arguments());
    }
    String file = problem.place().file();
    boolean typed = file.equals("sheet.yaml") || StandFields.isOfStretch(file);
    return typed
        ? wording.sayWithin(new Problem(Place.of(""), problem.topic(), problem.arguments()))
        : wording.say(problem);
  }

  /** Leaves out the last clause if it tells what to add to a sheet or to a command. */
  private static String withoutCommandLine(String sentence) {
    int clause = sentence.lastIndexOf(';');
    boolean tells =
        clause > 0 && sentence.substring(clause).matches("(?s).*(as-meant: \\[|--sure|=).*");
    return tells ? sentence.substring(0, clause).strip() + "." : sentence;
  }

  private String inFieldWords(String sentence) {
    return KEY.matcher(sentence)
        .replaceAll(
            key ->
                Matcher.quoteReplacement(
                    SheetLabels.field(key.group(1), "landmark[0].")
                        .flatMap(name -> SheetLabels.label(name, Map.of(), knee, wording))
                        .map(label -> "\u201c" + label + "\u201d")
                        .orElse(key.group(1))));
  }

  private static String text(Problem problem, int argument) {
    return problem.arguments().get(argument) instanceof Argument.Text text ? text.value() : "";
  }
}
