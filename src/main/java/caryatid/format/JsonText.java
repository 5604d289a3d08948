package caryatid.format;

import caryatid.format.JsonObjectWriter.MemberWriter;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON (RFC 8259) as bytes: strict, no name twice, nothing after its end. */
final class JsonText {
  private JsonText() {}

  /** An object as UTF-8, indented, with a line end at its end. */
  static <T> byte[] write(T value, MemberWriter<T> members) {
    try {
      return Json.write(json -> new JsonObjectWriter(json).members(value, members));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads one JSON value.
   *
   * @throws JsonMismatch if the bytes are none, or more than one
   */
  static JsonValue read(byte[] bytes) {
    try (JsonParser json = Json.FACTORY.createParser(bytes)) {
      json.nextToken();
      JsonValue read = value(json);
      if (json.nextToken() != null) {
        throw new JsonMismatch(ArchiveProblem.NOT_JSON, "more after the end");
      }
      return read;
    } catch (JsonProcessingException e) {
      if (e.getOriginalMessage().startsWith("Duplicate field '")) {
        throw new JsonMismatch(ArchiveProblem.KEY_TWICE, e.getOriginalMessage().split("'")[1]);
      }
      throw new JsonMismatch(ArchiveProblem.NOT_JSON, e.getOriginalMessage());
    } catch (IOException e) {
      throw new JsonMismatch(ArchiveProblem.NOT_JSON, String.valueOf(e.getMessage()));
    }
  }

  private static JsonValue value(JsonParser json) throws IOException {
    JsonToken token = json.currentToken();
    if (token == null) {
      throw new JsonMismatch(ArchiveProblem.NOT_JSON, "nothing in it");
    }
    return switch (token) {
      case START_OBJECT -> new JsonValue.Group(members(json));
      case START_ARRAY -> new JsonValue.Several(items(json));
      case VALUE_STRING -> new JsonValue.Text(json.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.Number(json.getText());
      case VALUE_TRUE -> new JsonValue.Flag(true);
      case VALUE_FALSE -> new JsonValue.Flag(false);
      default -> new JsonValue.Nothing();
    };
  }

  private static Map<String, JsonValue> members(JsonParser json) throws IOException {
    Map<String, JsonValue> members = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      json.nextToken();
      members.put(key, value(json));
    }
    return members;
  }

  private static List<JsonValue> items(JsonParser json) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json));
    }
    return items;
  }
}
