package caryatid.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A value in which two results differ.
 *
 * @param path where it stands, for example {@code state.findings[1].verdict}
 * @param before how it was, as JSON; {@code nothing} where it was not there
 * @param now how it is, as JSON; {@code nothing} where it is not there
 */
public record ResultDifference(String path, String before, String now) {

  /** Where one of the two has no value. */
  public static final String NOTHING = "nothing";

  /** The values in which two results, as JSON, differ; numbers to the last digit. */
  public static List<ResultDifference> between(byte[] before, byte[] now) {
    List<ResultDifference> found = new ArrayList<>();
    compare("", Optional.of(ResultTree.read(before)), Optional.of(ResultTree.read(now)), found);
    return found;
  }

  private static void compare(
      String path,
      Optional<JsonValue> before,
      Optional<JsonValue> now,
      List<ResultDifference> found) {
    JsonValue was = before.orElse(null);
    JsonValue is = now.orElse(null);
    if (was instanceof JsonValue.Group one && is instanceof JsonValue.Group other) {
      Set<String> keys = new TreeSet<>(one.members().keySet());
      keys.addAll(other.members().keySet());
      for (String key : keys) {
        String inner = path.isEmpty() ? key : path + "." + key;
        compare(inner, member(one, key), member(other, key), found);
      }
    } else if (was instanceof JsonValue.Several one && is instanceof JsonValue.Several other) {
      for (int i = 0; i < Math.max(one.items().size(), other.items().size()); i++) {
        compare(path + "[" + i + "]", item(one, i), item(other, i), found);
      }
    } else if (!same(before, now)) {
      found.add(new ResultDifference(path, text(before), text(now)));
    }
  }

  private static Optional<JsonValue> member(JsonValue.Group group, String key) {
    return Optional.ofNullable(group.members().get(key));
  }

  private static Optional<JsonValue> item(JsonValue.Several several, int index) {
    return index < several.items().size()
        ? Optional.of(several.items().get(index))
        : Optional.empty();
  }

  /** 1 and 1.0 are the same number. */
  private static boolean same(Optional<JsonValue> before, Optional<JsonValue> now) {
    return before.equals(now)
        || before.orElse(null) instanceof JsonValue.Number one
            && now.orElse(null) instanceof JsonValue.Number other
            && Double.parseDouble(one.written()) == Double.parseDouble(other.written());
  }

  private static String text(Optional<JsonValue> value) {
    return value.map(JsonValue::json).orElse(NOTHING);
  }
}
