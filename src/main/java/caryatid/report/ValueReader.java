package caryatid.report;

import caryatid.remark.Topic;
import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads what {@link ValueWriter} wrote, by the declared type of each component. */
final class ValueReader {
  private ValueReader() {}

  /**
   * Reads a value.
   *
   * @param at where in the document the node stands, for what is said of it
   * @throws Misread if the node is not what the type asks for
   */
  static Object read(Type type, JsonNode node, String at) {
    if (type instanceof ParameterizedType generic) {
      return readGeneric(generic, node, at);
    }
    Class<?> plain = (Class<?>) type;
    if (plain == OptionalDouble.class) {
      return OptionalDouble.of(number(node, at));
    }
    if (plain == Topic.class) {
      return Topics.of(text(node, at)).orElseThrow(() -> unexpected(at, "topic", node));
    }
    if (plain.isEnum()) {
      return constant(plain, text(node, at), at);
    }
    return plain.isRecord() || plain.isSealed()
        ? RecordReader.read(plain, node, at)
        : simple(plain, node, at);
  }

  private static Object readGeneric(ParameterizedType type, JsonNode node, String at) {
    Type[] of = type.getActualTypeArguments();
    if (type.getRawType() == Optional.class) {
      return Optional.of(read(of[0], node, at));
    }
    return type.getRawType() == List.class ? list(of[0], node, at) : map(of[0], of[1], node, at);
  }

  private static List<Object> list(Type of, JsonNode node, String at) {
    if (!node.isArray()) {
      throw unexpected(at, "list", node);
    }
    List<Object> read = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      read.add(read(of, node.get(i), at + "[" + i + "]"));
    }
    return read;
  }

  private static Map<Object, Object> map(Type key, Type of, JsonNode node, String at) {
    if (!node.isObject()) {
      throw unexpected(at, "object", node);
    }
    Map<Object, Object> read = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      Object constant = constant((Class<?>) key, entry.getKey(), at);
      read.put(constant, read(of, entry.getValue(), at + "." + entry.getKey()));
    }
    return read;
  }

  private static Object constant(Class<?> type, String spelled, String at) {
    return Stream.of(type.getEnumConstants())
        .filter(c -> Spelling.of((Enum<?>) c).equals(spelled))
        .findFirst()
        .orElseThrow(() -> new Misread(Archived.NOT_EXPECTED, at, "known word", spelled));
  }

  private static Object simple(Class<?> type, JsonNode node, String at) {
    if (type == double.class) {
      return number(node, at);
    } else if (type == int.class && node.canConvertToInt() && node.isIntegralNumber()) {
      return node.intValue();
    } else if (type == long.class && node.canConvertToLong() && node.isIntegralNumber()) {
      return node.longValue();
    } else if (type == boolean.class && node.isBoolean()) {
      return node.booleanValue();
    } else if (type == String.class) {
      return text(node, at);
    } else if (type == OffsetDateTime.class) {
      return time(node, at);
    }
    throw unexpected(at, type.getSimpleName(), node);
  }

  private static double number(JsonNode node, String at) {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw unexpected(at, "number", node);
    }
    return node.doubleValue();
  }

  private static String text(JsonNode node, String at) {
    if (!node.isTextual()) {
      throw unexpected(at, "text", node);
    }
    return node.textValue();
  }

  private static OffsetDateTime time(JsonNode node, String at) {
    try {
      return OffsetDateTime.parse(text(node, at));
    } catch (DateTimeException e) {
      throw unexpected(at, "time", node);
    }
  }

  static Misread unexpected(String at, String expected, JsonNode node) {
    String found = node.toString();
    return new Misread(
        Archived.NOT_EXPECTED, at, expected, found.length() > 40 ? found.substring(0, 40) : found);
  }
}
