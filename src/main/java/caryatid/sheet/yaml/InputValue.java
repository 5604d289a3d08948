package caryatid.sheet.yaml;

import caryatid.remark.Place;
import java.util.List;
import java.util.Map;

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
  record Single(String text, Kind kind, Place place) implements InputValue {}

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
  }

  /**
   * Named values; each name once.
   *
   * @param members by their names, in order
   * @param place where
   */
  record Group(Map<String, InputValue> members, Place place) implements InputValue {}

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
