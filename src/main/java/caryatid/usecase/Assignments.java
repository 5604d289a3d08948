package caryatid.usecase;

import caryatid.entry.form.FormReader;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import caryatid.sheet.yaml.InputValue;
import caryatid.sheet.yaml.InputValueReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values given as arguments: {@code key=value}, and in rows, counted from 1, {@code
 * items[2].set=7}; {@code items[2].item.text=} says in words of one's own what is not a known item.
 */
public final class Assignments {
  private static final Pattern SHAPE =
      Pattern.compile("([a-z-]+)(?:\\[([1-9]\\d?)]\\.([a-z-]+)(\\.text)?)?=(.*)", Pattern.DOTALL);

  private final Place place;
  private final Map<String, InputValue> members;
  private final Map<String, InputValue> singles = new LinkedHashMap<>();
  private final Map<String, List<Map<String, InputValue>>> rows = new LinkedHashMap<>();

  private Assignments(Place place, Map<String, InputValue> members) {
    this.place = place;
    this.members = new LinkedHashMap<>(members);
  }

  /**
   * What a file says and values add; a single value takes the place of the file's.
   *
   * @param yaml a filled in form
   * @param values in the order they were given
   * @param place where they were given, for problems
   * @throws BadInput if the file is no plain YAML, and if one is not of the shape, a row is left
   *     out, a key is given twice, or rows are given that the file has already
   */
  public static InputValue.Group read(Optional<NamedBytes> yaml, List<String> values, Place place)
      throws BadInput {
    Map<String, InputValue> before =
        yaml.isPresent() ? InputValueReader.read(yaml.get()).members() : Map.of();
    Assignments assignments = new Assignments(place, before);
    for (String value : values) {
      assignments.put(value);
    }
    for (Map.Entry<String, List<Map<String, InputValue>>> rows : assignments.rows.entrySet()) {
      assignments.once(
          assignments.members, rows.getKey(), rows.getKey(), assignments.several(rows.getValue()));
    }
    return new InputValue.Group(assignments.members, place);
  }

  /**
   * What was given, with one value in it or in place of one.
   *
   * @param name as in an argument, for example {@code items[2].item.text}
   * @throws IllegalArgumentException if it names no field, or a row that is not there
   */
  static InputValue.Group with(InputValue.Group given, String name, String value) {
    Matcher parts = SHAPE.matcher(name + "=" + value);
    if (!parts.matches()) {
      throw new IllegalArgumentException(name);
    }
    Place place = given.place();
    InputValue single = InputValue.Single.ofAnyKind(value, place);
    Map<String, InputValue> members = new LinkedHashMap<>(given.members());
    if (parts.group(2) == null) {
      members.put(parts.group(1), single);
      return new InputValue.Group(members, place);
    }
    if (!(members.get(parts.group(1)) instanceof InputValue.Several rows)) {
      throw new IllegalArgumentException(name);
    }
    List<InputValue> items = new ArrayList<>(rows.items());
    int row = Integer.parseInt(parts.group(2)) - 1;
    Map<String, InputValue> said =
        new LinkedHashMap<>(((InputValue.Group) items.get(row)).members());
    said.put(
        parts.group(3),
        parts.group(4) == null
            ? single
            : new InputValue.Group(Map.of(FormReader.TEXT, single), place));
    items.set(row, new InputValue.Group(said, items.get(row).place()));
    members.put(parts.group(1), new InputValue.Several(items, rows.place()));
    return new InputValue.Group(members, place);
  }

  private void put(String value) throws BadInput {
    Matcher parts = SHAPE.matcher(value);
    if (!parts.matches()) {
      throw bad(value);
    }
    InputValue single = InputValue.Single.ofAnyKind(parts.group(5), place);
    if (parts.group(2) == null) {
      once(singles, parts.group(1), parts.group(1), single);
      members.put(parts.group(1), single);
      return;
    }
    List<Map<String, InputValue>> list =
        rows.computeIfAbsent(parts.group(1), k -> new ArrayList<>());
    int row = Integer.parseInt(parts.group(2));
    if (row > list.size() + 1) {
      throw bad(value);
    }
    if (row == list.size() + 1) {
      list.add(new LinkedHashMap<>());
    }
    String name = parts.group(1) + "[" + row + "]." + parts.group(3);
    InputValue said =
        parts.group(4) == null
            ? single
            : new InputValue.Group(Map.of(FormReader.TEXT, single), place);
    once(list.get(row - 1), parts.group(3), name, said);
  }

  private void once(Map<String, InputValue> members, String key, String name, InputValue value)
      throws BadInput {
    if (members.putIfAbsent(key, value) != null) {
      throw new BadInput(Problem.at(place, AssignmentProblem.GIVEN_TWICE, Argument.text(name)));
    }
  }

  private InputValue several(List<Map<String, InputValue>> rows) {
    List<InputValue> groups = new ArrayList<>();
    rows.forEach(row -> groups.add(new InputValue.Group(row, place)));
    return new InputValue.Several(groups, place);
  }

  private BadInput bad(String value) {
    return new BadInput(
        Problem.at(place, AssignmentProblem.NOT_AN_ASSIGNMENT, Argument.text(value)));
  }

  /** Why values given as arguments do not make an entry. */
  private enum AssignmentProblem implements Topic {
    NOT_AN_ASSIGNMENT("Cli.NOT_AN_ASSIGNMENT"),
    /** Arguments: the key. */
    GIVEN_TWICE("Cli.GIVEN_TWICE");

    private final String code;

    AssignmentProblem(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
