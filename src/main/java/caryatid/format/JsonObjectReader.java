package caryatid.format;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads the members of a JSON object in any order. The caller asks for each member it knows;
 * missing members and members that were never asked for are refused.
 */
final class JsonObjectReader {
  private final String at;
  private final Map<String, JsonValue> members;
  private final Set<String> asked = new HashSet<>();

  private JsonObjectReader(String at, Map<String, JsonValue> members) {
    this.at = at;
    this.members = members;
  }

  /**
   * Reads an object.
   *
   * @param at its place in the document, for messages
   * @throws JsonMismatch if it is none, or not as the reader expects it
   */
  static <T> T read(JsonValue value, String at, Function<JsonObjectReader, T> reader) {
    if (!(value instanceof JsonValue.Group group)) {
      throw new JsonMismatch(
          ArchiveProblem.NOT_EXPECTED, at, "object", JsonMismatch.excerpt(value));
    }
    JsonObjectReader in = new JsonObjectReader(at, group.members());
    try {
      T read = reader.apply(in);
      in.refuseUnknown();
      return read;
    } catch (IllegalArgumentException e) {
      throw new JsonMismatch(ArchiveProblem.OUT_OF_RANGE, at, String.valueOf(e.getMessage()));
    }
  }

  private void refuseUnknown() {
    Set<String> unknown = new LinkedHashSet<>(members.keySet());
    unknown.removeAll(asked);
    if (!unknown.isEmpty()) {
      throw new JsonMismatch(ArchiveProblem.UNKNOWN_KEY, at, unknown.iterator().next());
    }
  }

  boolean has(String key) {
    return members.containsKey(key);
  }

  private JsonValue value(String key) {
    asked.add(key);
    if (!has(key)) {
      throw new JsonMismatch(ArchiveProblem.MISSING_KEY, at, key);
    }
    return members.get(key);
  }

  private Optional<JsonValue> optional(String key) {
    asked.add(key);
    return Optional.ofNullable(members.get(key));
  }

  private LocatedJson located(String key) {
    return new LocatedJson(value(key), at + "." + key);
  }

  private Optional<LocatedJson> locatedIfThere(String key) {
    return optional(key).map(value -> new LocatedJson(value, at + "." + key));
  }

  String text(String key) {
    return located(key).text();
  }

  Optional<String> textIfThere(String key) {
    return locatedIfThere(key).map(LocatedJson::text);
  }

  <E> E word(String key, Spellings<E> words) {
    return located(key).word(words);
  }

  /** Empty where the key is missing. */
  <E> Optional<E> wordIfThere(String key, Spellings<E> words) {
    return locatedIfThere(key).map(value -> value.word(words));
  }

  /** The word that says which form of several an object has. */
  String kind(String key, String... kinds) {
    return located(key).oneOf(List.of(kinds));
  }

  OffsetDateTime time(String key) {
    return located(key).time();
  }

  double number(String key) {
    return located(key).number();
  }

  OptionalDouble numberIfThere(String key) {
    return locatedIfThere(key)
        .map(value -> OptionalDouble.of(value.number()))
        .orElseGet(OptionalDouble::empty);
  }

  int whole(String key) {
    return located(key).whole();
  }

  long longWhole(String key) {
    return located(key).longWhole();
  }

  boolean flag(String key) {
    return located(key).flag();
  }

  <T> T object(String key, Function<JsonObjectReader, T> reader) {
    return read(value(key), at + "." + key, reader);
  }

  <T> Optional<T> objectIfThere(String key, Function<JsonObjectReader, T> reader) {
    return optional(key).map(value -> read(value, at + "." + key, reader));
  }

  <T> List<T> list(String key, Function<JsonObjectReader, T> reader) {
    List<JsonValue> items = located(key).items();
    List<T> read = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      read.add(read(items.get(i), at + "." + key + "[" + i + "]", reader));
    }
    return read;
  }

  /** Empty where the key is missing. */
  <T> List<T> listIfThere(String key, Function<JsonObjectReader, T> reader) {
    return optional(key).isEmpty() ? List.of() : list(key, reader);
  }

  /** Empty where the key is missing. */
  List<String> textsIfThere(String key) {
    return locatedIfThere(key).map(LocatedJson::texts).orElse(List.of());
  }

  /** Empty where the key is missing. */
  List<Double> numbersIfThere(String key) {
    return locatedIfThere(key).map(LocatedJson::numbers).orElse(List.of());
  }
}
