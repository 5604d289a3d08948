package caryatid.web;

import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.usecase.stand.StandFields;
import caryatid.web.page.SheetLabels;
import caryatid.web.page.TypedTime;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Which field of a stand a problem or a question is about, where it names no line of the sheet. */
final class AboutField {
  private static final Pattern MARK =
      Pattern.compile("(target )?(.+) (?:left|right) (sagittal|frontal)(?: .*)?");
  private static final int ROWS = 20;

  private final Map<String, String> typed;

  /**
   * @param typed what was typed, by field
   */
  AboutField(Map<String, String> typed) {
    this.typed = typed;
  }

  /** The field of a question, by the answer that it asks for. */
  Optional<String> of(Question question) {
    String answer = question.answer();
    Matcher mark = MARK.matcher(answer);
    if (!mark.matches()) {
      return SheetLabels.field(answer.split(" ")[0], "");
    }
    boolean sagittal = mark.group(3).equals("sagittal");
    return mark.group(1) == null
        ? landmark(mark.group(2)).map(row -> row + (sagittal ? "forward" : "rightward"))
        : target(mark.group(2), sagittal).map(row -> row + about(question));
  }

  private static String about(Question question) {
    return question.topic().code().endsWith("FROM_ELSEWHERE") ? "source" : "recommended";
  }

  private Optional<String> landmark(String name) {
    return row(StandFields.LANDMARK, row -> name.equals(typed.get(row + "name")));
  }

  private Optional<String> target(String landmark, boolean sagittal) {
    return row(
        StandFields.TARGET,
        row ->
            landmark.equals(typed.get(row + "landmark"))
                && sagittal == typed.getOrDefault(row + "sense", "").endsWith("terior"));
  }

  private static Optional<String> row(String rows, Predicate<String> is) {
    return IntStream.rangeClosed(1, ROWS)
        .mapToObj(i -> rows + "[" + i + "].")
        .filter(is)
        .findFirst();
  }

  /** The field of a problem, by what it is and what it names. */
  Optional<String> of(Problem problem) {
    String code = problem.topic().code();
    if (code.endsWith("TIME_AHEAD") || code.endsWith("AT_AHEAD") || code.endsWith("LONG_AGO")) {
      return Optional.of(TypedTime.AT);
    }
    if (code.startsWith("Keeping.TEXT_LIKE_")) {
      return SheetLabels.field(text(problem), "");
    }
    return code.endsWith("LANDMARKS_OUT_OF_ORDER")
        ? landmark(text(problem)).map(row -> row + "up")
        : Optional.empty();
  }

  private static String text(Problem problem) {
    return !problem.arguments().isEmpty()
            && problem.arguments().get(0) instanceof Argument.Text text
        ? text.value()
        : "";
  }
}
