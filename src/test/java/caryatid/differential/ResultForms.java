package caryatid.differential;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/**
 * Results of version 1 and 2 of their JSON in one form, so that their contents can be compared: the
 * one state stands under {@code state}, and the numbers of version and method are left out.
 */
final class ResultForms {
  private static final JsonMapper MAPPER = new JsonMapper();

  private ResultForms() {}

  /** The content of a result as JSON, a line each; bytes that are no result as they are. */
  static byte[] content(byte[] bytes) {
    String text = new String(bytes, UTF_8);
    if (!text.startsWith("{") || !text.contains("\"version\"")) {
      return bytes;
    }
    try {
      JsonNode root = MAPPER.readTree(text);
      JsonNode states = root.path("states");
      if (states.size() == 1) {
        ((ObjectNode) root).set("state", states.get(0));
        ((ObjectNode) root).remove("states");
      }
      ((ObjectNode) root).remove("version");
      ((ObjectNode) root).remove("method");
      ObjectNode ordered = MAPPER.createObjectNode();
      ordered.set("program", root.path("program"));
      ordered.set("state", root.path("state"));
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(ordered);
    } catch (IOException e) {
      return bytes;
    }
  }
}
