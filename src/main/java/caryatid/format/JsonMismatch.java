package caryatid.format;

import caryatid.remark.Argument;
import caryatid.remark.Topic;
import java.util.List;

/**
 * Thrown when a result is not as its format says; turned into a problem once the input's name is
 * known.
 */
final class JsonMismatch extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Characters of what was found that a message shows at the most. */
  private static final int MOST = 40;

  private final transient Topic topic;
  private final transient List<Argument> arguments;

  JsonMismatch(Topic topic, String... arguments) {
    super(topic.code() + " " + List.of(arguments));
    this.topic = topic;
    this.arguments = List.of(arguments).stream().map(Argument::text).toList();
  }

  /** What was found instead, short enough for a message. */
  static String excerpt(JsonValue found) {
    String shown = found.shown();
    return shown.length() > MOST ? shown.substring(0, MOST) : shown;
  }

  Topic topic() {
    return topic;
  }

  List<Argument> arguments() {
    return arguments;
  }
}
