package caryatid.store;

import caryatid.format.Json;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a record's inventory (OCFL 1.1, section 3.5) says about its newest version, read token by
 * token: the library's own model of a long record takes longer than showing it may.
 *
 * @param id of which record it is
 * @param head number of the newest version
 * @param versions how many versions it lists
 * @param files digest of each file of the newest version, by its path in the record, sorted
 * @param contents where the bytes of a digest lie, relative to the record's folder
 */
record Inventory(
    String id, int head, int versions, Map<String, String> files, Map<String, String> contents) {

  /**
   * Reads an inventory.
   *
   * @throws IOException if it is none, or its head is not the last of its versions
   */
  static Inventory parse(byte[] json) throws IOException {
    String head = text(json, "head");
    Map<String, String> contents = new HashMap<>();
    Map<String, String> files = new TreeMap<>();
    int versions = 0;
    try (JsonParser parser = Json.FACTORY.createParser(json)) {
      expect(parser, JsonToken.START_OBJECT);
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        parser.nextToken();
        if (name.equals("manifest")) {
          paths(parser).forEach((path, digest) -> contents.put(digest, path));
        } else if (name.equals("versions")) {
          versions = versions(parser, head, files);
        } else {
          parser.skipChildren();
        }
      }
    }
    if (number(head) != versions) {
      throw new IOException("head " + head + " of " + versions + " versions");
    }
    return new Inventory(text(json, "id"), number(head), versions, files, contents);
  }

  private static String text(byte[] json, String key) throws IOException {
    try (JsonParser parser = Json.FACTORY.createParser(json)) {
      expect(parser, JsonToken.START_OBJECT);
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        parser.nextToken();
        if (name.equals(key)) {
          return parser.getText();
        }
        parser.skipChildren();
      }
    }
    throw new IOException("no " + key);
  }

  private static int versions(JsonParser parser, String head, Map<String, String> files)
      throws IOException {
    int count = 0;
    for (; parser.nextToken() == JsonToken.FIELD_NAME; count++) {
      boolean isHead = parser.currentName().equals(head);
      parser.nextToken();
      if (isHead) {
        state(parser, files);
      } else {
        parser.skipChildren();
      }
    }
    return count;
  }

  private static void state(JsonParser parser, Map<String, String> files) throws IOException {
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      boolean isState = parser.currentName().equals("state");
      parser.nextToken();
      if (isState) {
        files.putAll(paths(parser));
      } else {
        parser.skipChildren();
      }
    }
  }

  /** A block of digests with their paths, turned round. */
  private static Map<String, String> paths(JsonParser parser) throws IOException {
    Map<String, String> paths = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String digest = parser.currentName();
      parser.nextToken();
      while (parser.nextToken() == JsonToken.VALUE_STRING) {
        paths.put(parser.getText(), digest);
      }
    }
    return paths;
  }

  private static void expect(JsonParser parser, JsonToken token) throws IOException {
    if (parser.nextToken() != token) {
      throw new IOException("no inventory");
    }
  }

  private static int number(String version) throws IOException {
    if (!version.matches("v[1-9]\\d{0,6}")) {
      throw new IOException("no version: " + version);
    }
    return Integer.parseInt(version.substring(1));
  }
}
