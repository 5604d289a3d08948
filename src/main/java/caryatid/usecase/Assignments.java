package caryatid.usecase;

import caryatid.recording.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.Given;
import caryatid.sheet.GivenReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values given as arguments: {@code key=value}, and in rows, counted from 1, {@code
 * items[2].set=7}.
 */
public final class Assignments {
  private static final Place PLACE = Place.of("command line");
  private static final Pattern SHAPE =
      Pattern.compile("([a-z-]+)(?:\\[([1-9]\\d?)]\\.([a-z-]+))?=(.*)", Pattern.DOTALL);

  private final Map<String, Given> members;
  private final Map<String, Given> singles = new LinkedHashMap<>();
  private final Map<String, List<Map<String, Given>>> rows = new LinkedHashMap<>();

  private Assignments(Map<String, Given> members) {
    this.members = new LinkedHashMap<>(members);
  }

  /**
   * What a file says and values add; a single value takes the place of the file's.
   *
   * @param yaml a filled in form
   * @throws BadInput if the file is no plain YAML, and if one is not of the shape, a row is left
   *     out, a key is given twice, or rows are given that the file has already
   */
  public static Given.Group read(Optional<NamedBytes> yaml, List<String> values) throws BadInput {
    Map<String, Given> before =
        yaml.isPresent() ? GivenReader.read(yaml.get()).members() : Map.of();
    Assignments assignments = new Assignments(before);
    for (String value : values) {
      assignments.put(value);
    }
    for (Map.Entry<String, List<Map<String, Given>>> rows : assignments.rows.entrySet()) {
      once(assignments.members, rows.getKey(), rows.getKey(), several(rows.getValue()));
    }
    return new Given.Group(assignments.members, PLACE);
  }

  private void put(String value) throws BadInput {
    Matcher parts = SHAPE.matcher(value);
    if (!parts.matches()) {
      throw bad(value);
    }
    Given single = new Given.Single(parts.group(4), Given.Kind.ANY, PLACE);
    if (parts.group(2) == null) {
      once(singles, parts.group(1), parts.group(1), single);
      members.put(parts.group(1), single);
      return;
    }
    List<Map<String, Given>> list = rows.computeIfAbsent(parts.group(1), k -> new ArrayList<>());
    int row = Integer.parseInt(parts.group(2));
    if (row > list.size() + 1) {
      throw bad(value);
    }
    if (row == list.size() + 1) {
      list.add(new LinkedHashMap<>());
    }
    String name = parts.group(1) + "[" + row + "]." + parts.group(3);
    once(list.get(row - 1), parts.group(3), name, single);
  }

  private static void once(Map<String, Given> members, String key, String name, Given value)
      throws BadInput {
    if (members.putIfAbsent(key, value) != null) {
      throw new BadInput(Problem.at(PLACE, AssignmentProblem.GIVEN_TWICE, Argument.text(name)));
    }
  }

  private static Given several(List<Map<String, Given>> rows) {
    List<Given> groups = new ArrayList<>();
    rows.forEach(row -> groups.add(new Given.Group(row, PLACE)));
    return new Given.Several(groups, PLACE);
  }

  private static BadInput bad(String value) {
    return new BadInput(
        Problem.at(PLACE, AssignmentProblem.NOT_AN_ASSIGNMENT, Argument.text(value)));
  }
}
