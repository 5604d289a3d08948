package caryatid.web.page;

import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormFault;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import caryatid.usecase.stand.FieldProblem;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is wrong with a form, at its fields.
 *
 * @param atFields sentences by the names of their fields
 * @param others sentences that are about the form
 * @param looksLikeName whether something was refused only because it looks like a name
 */
public record FieldFaults(
    Map<String, List<String>> atFields, List<String> others, boolean looksLikeName) {
  /** Nothing is wrong. */
  public static final FieldFaults NONE = new FieldFaults(Map.of(), List.of());

  private static final Pattern IN_ROW = Pattern.compile("([a-z-]+)\\[(\\d+)]\\.([a-z-]*)(.*)");

  private static final Set<Topic> OF_TIME = Set.of(FormFault.TIME_AHEAD, FormFault.TIME_LONG_AGO);

  public FieldFaults {
    atFields = Map.copyOf(atFields);
    others = List.copyOf(others);
  }

  /** Faults of which none is about a name. */
  public FieldFaults(Map<String, List<String>> atFields, List<String> others) {
    this(atFields, others, false);
  }

  /** Whether nothing is wrong. */
  public boolean isEmpty() {
    return atFields.isEmpty() && others.isEmpty();
  }

  /** Why what was typed as the time is none. */
  public static FieldFaults ofTime(String fault) {
    return new FieldFaults(Map.of(TypedTime.AT, List.of(fault)), List.of());
  }

  /** The sentences at a field. */
  List<String> at(String name) {
    return atFields.getOrDefault(name, List.of());
  }

  /** The problems of a form by its fields, which go by their words instead of their keys. */
  public static FieldFaults of(Form form, List<Problem> problems, Wording wording) {
    Map<String, List<String>> atFields = new LinkedHashMap<>();
    List<String> others = new ArrayList<>();
    EntryWords words = new EntryWords(wording);
    for (Problem problem : problems) {
      String name = name(problem);
      List<String> said = List.of(wording.sayWithin(bare(form, problem, words)));
      if (OF_TIME.contains(problem.topic())) {
        atFields.put(TypedTime.AT, said);
      } else if (isField(form, name)) {
        atFields.merge(name, said, FieldFaults::joined);
      } else {
        others.addAll(said);
      }
    }
    boolean looksLikeName =
        problems.stream().anyMatch(p -> FieldProblem.of(p) == FieldProblem.LIKE_A_NAME);
    return new FieldFaults(atFields, others, looksLikeName);
  }

  private static List<String> joined(List<String> some, List<String> more) {
    List<String> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }

  /** Where it stands; what is missing stands nowhere, and its row or form says where it would. */
  private static String name(Problem problem) {
    String place = problem.place().column().orElse("");
    boolean group = place.isEmpty() || place.endsWith(".");
    if (!group || problem.arguments().isEmpty()) {
      return place;
    }
    String path = text(problem.arguments().get(0));
    return place + path.substring(path.lastIndexOf('.') + 1);
  }

  private static String text(Argument argument) {
    return argument instanceof Argument.Text text ? text.value() : "";
  }

  private static boolean isField(Form form, String name) {
    return label(form, name).isPresent();
  }

  private static Optional<String> label(Form form, String name) {
    Matcher row = IN_ROW.matcher(name);
    if (!row.matches()) {
      return form.field(name).map(Field::key);
    }
    return form.field(row.group(1))
        .filter(field -> field.type() instanceof FieldType.Rows)
        .flatMap(field -> ((FieldType.Rows) field.type()).form().field(row.group(3)))
        .map(Field::key);
  }

  private static Problem bare(Form form, Problem problem, EntryWords words) {
    List<Argument> arguments = new ArrayList<>();
    for (Argument argument : problem.arguments()) {
      arguments.add(
          label(form, text(argument))
              .<Argument>map(key -> Argument.text(words.label(key)))
              .orElse(argument));
    }
    return new Problem(Place.of(""), problem.topic(), arguments);
  }
}
