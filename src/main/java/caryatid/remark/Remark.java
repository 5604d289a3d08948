package caryatid.remark;

import java.util.List;

/**
 * A remark: something the reader of a result should know.
 *
 * @param topic what it is about
 * @param arguments the values its sentence needs, in the sentence's order
 */
public record Remark(Topic topic, List<Argument> arguments) {
  public Remark {
    arguments = List.copyOf(arguments);
  }

  /** A remark with its arguments in order. */
  public static Remark of(Topic topic, Argument... arguments) {
    return new Remark(topic, List.of(arguments));
  }
}
