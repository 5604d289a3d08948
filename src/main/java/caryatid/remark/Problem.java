package caryatid.remark;

import java.util.List;

/**
 * A reason why no result can be given: where, what was expected and found, what to do.
 *
 * @param place where the problem is
 * @param topic what is wrong; its sentence also says what to do about it
 * @param arguments the values the sentence needs, in the sentence's order
 */
public record Problem(Place place, Topic topic, List<Argument> arguments) {
  public Problem {
    arguments = List.copyOf(arguments);
  }

  /** The same problem, in a file of another name. */
  public Problem in(String file) {
    return new Problem(
        new Place(file, place.line(), place.column(), place.cell()), topic, arguments);
  }

  /** A problem with its arguments in order. */
  public static Problem at(Place place, Topic topic, Argument... arguments) {
    return new Problem(place, topic, List.of(arguments));
  }
}
