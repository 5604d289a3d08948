package caryatid.format;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
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
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /** Where one of the two has no value. */
  public static final String NOTHING = "nothing";

  /** The values in which two results, as JSON, differ; numbers to the last digit. */
  public static List<ResultDifference> between(byte[] before, byte[] now) {
    List<ResultDifference> found = new ArrayList<>();
    try {
      compare("", MAPPER.readTree(before), MAPPER.readTree(now), found);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static void compare(
      String path, JsonNode before, JsonNode now, List<ResultDifference> found) {
    if (before.isObject() && now.isObject()) {
      for (String key : keys(before, now)) {
        String inner = path.isEmpty() ? key : path + "." + key;
        compare(inner, before.path(key), now.path(key), found);
      }
    } else if (before.isArray() && now.isArray()) {
      for (int i = 0; i < Math.max(before.size(), now.size()); i++) {
        compare(path + "[" + i + "]", before.path(i), now.path(i), found);
      }
    } else if (!same(before, now)) {
      found.add(new ResultDifference(path, text(before), text(now)));
    }
  }

  private static Set<String> keys(JsonNode before, JsonNode now) {
    Set<String> keys = new TreeSet<>();
    before.fieldNames().forEachRemaining(keys::add);
    now.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /** 1 and 1.0 are the same number. */
  private static boolean same(JsonNode before, JsonNode now) {
    return before.isNumber() && now.isNumber()
        ? before.doubleValue() == now.doubleValue()
        : before.equals(now);
  }

  private static String text(JsonNode node) {
    return node.isMissingNode() ? NOTHING : node.toString();
  }
}
