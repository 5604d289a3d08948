package caryatid.report;

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
 * @param path where it stands, for example {@code states[0].findings[1].verdict}
 * @param before how it was, as JSON; {@code nothing} where it was not there
 * @param now how it is, as JSON; {@code nothing} where it is not there
 */
public record ResultDifference(String path, String before, String now) {
  /** Numbers of another program version that differ relatively by no more are taken as equal. */
  public static final double TOLERANCE = 1e-9;

  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final String NOTHING = "nothing";

  /**
   * The values in which two results, as JSON, differ.
   *
   * @param tolerance relative difference of numbers that is let pass, not negative; 0 for none
   */
  public static List<ResultDifference> between(byte[] before, byte[] now, double tolerance) {
    List<ResultDifference> found = new ArrayList<>();
    try {
      compare("", MAPPER.readTree(before), MAPPER.readTree(now), tolerance, found);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static void compare(
      String path, JsonNode before, JsonNode now, double tolerance, List<ResultDifference> found) {
    if (before.isObject() && now.isObject()) {
      for (String key : keys(before, now)) {
        String inner = path.isEmpty() ? key : path + "." + key;
        compare(inner, before.path(key), now.path(key), tolerance, found);
      }
    } else if (before.isArray() && now.isArray()) {
      for (int i = 0; i < Math.max(before.size(), now.size()); i++) {
        compare(path + "[" + i + "]", before.path(i), now.path(i), tolerance, found);
      }
    } else if (!same(before, now, tolerance)) {
      found.add(new ResultDifference(path, text(before), text(now)));
    }
  }

  private static Set<String> keys(JsonNode before, JsonNode now) {
    Set<String> keys = new TreeSet<>();
    before.fieldNames().forEachRemaining(keys::add);
    now.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static boolean same(JsonNode before, JsonNode now, double tolerance) {
    if (!before.isNumber() || !now.isNumber()) {
      return before.equals(now);
    }
    double a = before.doubleValue();
    double b = now.doubleValue();
    return a == b || Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
  }

  private static String text(JsonNode node) {
    return node.isMissingNode() ? NOTHING : node.toString();
  }
}
