package caryatid.format;

import caryatid.format.JsonObjectWriter.MemberWriter;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * The program's results as JSON values, to and from bytes; what people write as JSON is read by
 * {@link Json} alone, which knows where each value stands.
 */
final class ResultTree {
  private ResultTree() {}

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
      return Json.read(json, new Values());
    } catch (JsonProcessingException e) {
      if (e.getOriginalMessage().startsWith("Duplicate field '")) {
        throw new JsonMismatch(ArchiveProblem.KEY_TWICE, e.getOriginalMessage().split("'")[1]);
      }
      throw new JsonMismatch(ArchiveProblem.NOT_JSON, e.getOriginalMessage());
    } catch (IOException e) {
      throw new JsonMismatch(ArchiveProblem.NOT_JSON, String.valueOf(e.getMessage()));
    }
  }

  private record Values() implements Json.JsonBuilder<JsonValue> {
    @Override
    public JsonValue group(Map<String, JsonValue> members, JsonLocation at) {
      return new JsonValue.Group(members);
    }

    @Override
    public JsonValue several(List<JsonValue> items, JsonLocation at) {
      return new JsonValue.Several(items);
    }

    @Override
    public JsonValue single(JsonToken token, String text, JsonLocation at) {
      return switch (token) {
        case VALUE_STRING -> new JsonValue.Text(text);
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.Number(text);
        case VALUE_TRUE -> new JsonValue.Flag(true);
        case VALUE_FALSE -> new JsonValue.Flag(false);
        default -> new JsonValue.Nothing();
      };
    }
  }
}
