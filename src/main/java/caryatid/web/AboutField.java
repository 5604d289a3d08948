package caryatid.web;

import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.usecase.stand.StandFields;
import caryatid.usecase.stand.TypedNumber;
import caryatid.web.page.SheetLabels;
import caryatid.web.page.TypedTime;
import java.util.Arrays;
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

  /** Answers about how high a landmark is. */
  private static final Pattern HEIGHT =
      Pattern.compile("(.+?)(?: height| (?:left|right) up -?\\d+)");

  /** Fields by how the code of a topic ends. */
  private static final Map<String, String> BY_TOPIC =
      Map.ofEntries(
          Map.entry("TIME_AHEAD", TypedTime.AT),
          Map.entry("AT_AHEAD", TypedTime.AT),
          Map.entry("LONG_AGO", TypedTime.AT),
          Map.entry("FEET_SWAPPED", StandFields.STANCE),
          Map.entry("FEET_BY_MARKERS", StandFields.STANCE),
          Map.entry("FEET_APART", StandFields.STANCE),
          Map.entry("MASS_ABOVE_LIMIT", StandFields.BODY_MASS),
          Map.entry("HEEL_BEYOND_LIMITS", StandFields.HEEL));

  private static final Argument FRONTAL = new Argument.Term("Plane.FRONTAL");
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
    Matcher height = HEIGHT.matcher(answer);
    if (height.matches()) {
      return landmark(height.group(1)).map(row -> row + "up");
    }
    Matcher mark = MARK.matcher(answer);
    if (!mark.matches()) {
      return byTopic(question.topic()).or(() -> SheetLabels.field(answer.split(" ")[0], ""));
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
    if (code.startsWith("Keeping.TEXT_LIKE_")) {
      return SheetLabels.field(text(problem), "");
    }
    if (code.endsWith("LANDMARKS_OUT_OF_ORDER")) {
      return landmark(text(problem)).map(row -> row + "up");
    }
    if (code.endsWith("NOT_READ_THEN")) {
      return row(StandFields.LANDMARK, row -> isReadAt(row, problem)).map(row -> row + "read-at");
    }
    return code.endsWith("FAR_FROM_LANDMARK")
        ? landmark(text(problem)).map(row -> row + way(problem))
        : byTopic(problem.topic());
  }

  private boolean isReadAt(String row, Problem problem) {
    return Arrays.stream(typed.getOrDefault(row + "read-at", "").split("[;\\s]+"))
        .map(TypedNumber::plain)
        .filter(text -> text.matches("\\d{1,9}(\\.\\d{1,9})?"))
        .anyMatch(s -> problem.arguments().contains(Argument.of(Double.parseDouble(s), Unit.S)));
  }

  private static String way(Problem problem) {
    return problem.arguments().contains(FRONTAL) ? "rightward" : "forward";
  }

  private static Optional<String> byTopic(Topic topic) {
    return BY_TOPIC.entrySet().stream()
        .filter(field -> topic.code().endsWith(field.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private static String text(Problem problem) {
    return !problem.arguments().isEmpty()
            && problem.arguments().get(0) instanceof Argument.Text text
        ? text.value()
        : "";
  }
}
