package caryatid.report;

import caryatid.remark.Argument;
import caryatid.remark.Topic;
import java.util.List;

/** Stops the reading of a result; turned into a problem where the input's name is known. */
final class Misread extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Topic topic;
  private final transient List<Argument> arguments;

  Misread(Topic topic, String... arguments) {
    super(topic.code() + " " + List.of(arguments));
    this.topic = topic;
    this.arguments = List.of(arguments).stream().map(Argument::text).toList();
  }

  Topic topic() {
    return topic;
  }

  List<Argument> arguments() {
    return arguments;
  }
}
