package caryatid.format;

import java.util.List;
import java.util.Map;

/** A JSON value as it was read, before it is checked against a format. */
sealed interface JsonValue {

  /** How it is shown in a message; what an object or a list holds is left out. */
  String shown();

  /** An object, its members in their order. */
  record Group(Map<String, JsonValue> members) implements JsonValue {
    @Override
    public String shown() {
      return "{...}";
    }
  }

  /** A list. */
  record Several(List<JsonValue> items) implements JsonValue {
    @Override
    public String shown() {
      return "[...]";
    }
  }

  /** A string. */
  record Text(String value) implements JsonValue {
    @Override
    public String shown() {
      return '"' + value + '"';
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
