package caryatid.sheet.yaml;

import caryatid.remark.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * What somebody wrote, before it is checked against the form; from YAML, JSON, the command line or
 * a terminal alike.
 */
public sealed interface InputValue {

  /** Where it stands. */
  Place place();

  /**
   * A single value.
   *
   * @param text as it stood there
   * @param kind what its notation makes of it
   * @param place where
   */
  record Single(String text, Kind kind, Place place) implements InputValue {

    /** A value whose notation tells nothing of its kind. */
    public static Single ofAnyKind(String text, Place place) {
      return new Single(text, Kind.ANY, place);
    }
  }

  /**
   * A list.
   *
   * @param items in order
   * @param place where
   */
  record Several(List<InputValue> items, Place place) implements InputValue {
    public Several {
      items = List.copyOf(items);
    }

    private Several each(UnaryOperator<Group> change) {
      return new Several(
          items.stream()
              .map(item -> item instanceof Group group ? change.apply(group) : item)
              .toList(),
          place);
    }
  }

  /**
   * Named values; each name once.
   *
   * @param members by their names, in order
   * @param place where
   */
  record Group(Map<String, InputValue> members, Place place) implements InputValue {

    /** The same, each group in the lists under some names changed. */
    public Group withRows(Predicate<String> names, UnaryOperator<Group> change) {
      Map<String, InputValue> changed = new LinkedHashMap<>(members);
      changed.replaceAll(
          (name, value) ->
              names.test(name) && value instanceof Several rows ? rows.each(change) : value);
      return new Group(changed, place);
    }
  }

  /** What a notation makes of a single value. */
  enum Kind {
    /** Words and nothing else: quoted. */
    WORDS,
    NUMBER,
    YES_NO,
    /** Could be any of them: YAML without quotes, the command line, a terminal. */
    ANY
  }
}
