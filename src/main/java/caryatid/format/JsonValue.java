package caryatid.format;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A JSON value as it was read, before it is checked against a format. */
sealed interface JsonValue {

  /** How it is shown in a message; what an object or a list holds is left out. */
  String shown();

  /** It as JSON in one line. */
  default String json() {
    return shown();
  }

  /** An object, its members in their order. */
  record Group(Map<String, JsonValue> members) implements JsonValue {
    @Override
    public String shown() {
      return "{...}";
    }

    @Override
    public String json() {
      return members.entrySet().stream()
          .map(m -> new Text(m.getKey()).json() + ":" + m.getValue().json())
          .collect(Collectors.joining(",", "{", "}"));
    }
  }

  /** A list. */
  record Several(List<JsonValue> items) implements JsonValue {
    @Override
    public String shown() {
      return "[...]";
    }

    @Override
    public String json() {
      return items.stream().map(JsonValue::json).collect(Collectors.joining(",", "[", "]"));
    }
  }

  /** A string. */
  record Text(String value) implements JsonValue {
    @Override
    public String shown() {
      return '"' + value + '"';
    }

    @Override
    public String json() {
      return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(value)) + '"';
    }
  }

  /** A number, as it is written. */
  @SuppressWarnings("JavaLangClash") // always written with its owner
  record Number(String written) implements JsonValue {
    @Override
    public String shown() {
      return written;
    }
  }

  /** True or false. */
  record Flag(boolean value) implements JsonValue {
    @Override
    public String shown() {
      return value ? "true" : "false";
    }
  }

  /** The value {@code null}. */
  record Nothing() implements JsonValue {
    @Override
    public String shown() {
      return "null";
    }
  }
}
