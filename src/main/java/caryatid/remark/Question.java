package caryatid.remark;

import java.util.ArrayList;
import java.util.List;

/**
 * Something that can hardly be as it is written or measured, but may be. Nothing is made of it
 * until somebody says that it is meant so; what they say is kept.
 *
 * @param topic what is asked; the last argument of its sentence is the line that answers it
 * @param arguments the values the sentence needs before that line, in the sentence's order
 * @param answer what answers it: a text under {@code as-meant} of a sheet, or an entry's field
 * @param line the answer as it is to be written
 */
public record Question(Topic topic, List<Argument> arguments, String answer, String line) {
  public Question {
    arguments = List.copyOf(arguments);
  }

  /** A question that a sheet answers. */
  public static Question of(Topic topic, String answer, Argument... arguments) {
    String line = "as-meant: ['" + answer.replace("'", "''") + "']";
    return new Question(topic, List.of(arguments), answer, line);
  }

  /** A question that a field of an entry answers, by what it then says. */
  public static Question ofField(Topic topic, String field, String says, Argument... arguments) {
    return new Question(topic, List.of(arguments), field, field + "=" + says);
  }

  /** The question as the reason why nothing is made of it, with the line that answers it. */
  public Problem at(Place place) {
    List<Argument> all = new ArrayList<>(arguments);
    all.add(Argument.text(line));
    return new Problem(place, topic, all);
  }
}
