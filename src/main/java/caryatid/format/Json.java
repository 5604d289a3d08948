package caryatid.format;

import caryatid.remark.Place;
import caryatid.sheet.yaml.InputValue;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * JSON (RFC 8259), strict, read and written token by token: no name twice, nothing after its end.
 */
public final class Json {
  public static final JsonFactory FACTORY =
      new JsonFactoryBuilder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private Json() {}

  /** Something that writes into a generator. */
  public interface JsonOutput {
    void into(JsonGenerator json) throws IOException;
  }

  public static byte[] write(JsonOutput writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter pretty =
        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    try (JsonGenerator json = FACTORY.createGenerator(bytes).setPrettyPrinter(pretty)) {
      writing.into(json);
    }
    bytes.write('\n');
    return bytes.toByteArray();
  }

  /** What becomes of the values that stand in a JSON text. */
  interface JsonBuilder<T> {
    T group(Map<String, T> members, JsonLocation at);

    T several(List<T> items, JsonLocation at);

    /** Of text, a number, true, false or null. */
    T single(JsonToken token, String text, JsonLocation at) throws IOException;
  }

  /**
   * Reads one JSON text.
   *
   * @throws IOException if it is none
   */
  public static InputValue read(byte[] bytes, String name) throws IOException {
    // As UTF-8 and nothing else, which Jackson would guess from the first bytes.
    String text =
        StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(bytes)).toString();
    try (JsonParser json = FACTORY.createParser(text)) {
      return read(json, new Placed(name));
    }
  }

  /**
   * Reads one JSON value.
   *
   * @throws IOException if there is none, or more than one
   */
  static <T> T read(JsonParser json, JsonBuilder<T> builder) throws IOException {
    json.nextToken();
    T read = value(json, builder);
    if (json.nextToken() != null) {
      throw new IOException("more after the end");
    }
    return read;
  }

  private static <T> T value(JsonParser json, JsonBuilder<T> builder) throws IOException {
    JsonLocation at = json.currentTokenLocation();
    JsonToken token = json.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return builder.group(members(json, builder), at);
    }
    if (token == JsonToken.START_ARRAY) {
      return builder.several(items(json, builder), at);
    }
    if (token == null) {
      throw new IOException("nothing in it");
    }
    return builder.single(token, json.getText(), at);
  }

  private static <T> Map<String, T> members(JsonParser json, JsonBuilder<T> builder)
      throws IOException {
    Map<String, T> members = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      json.nextToken();
      members.put(key, value(json, builder));
    }
    return members;
  }

  private static <T> List<T> items(JsonParser json, JsonBuilder<T> builder) throws IOException {
    List<T> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json, builder));
    }
    return items;
  }

  /** What somebody wrote, each value with its place in a file. */
  private record Placed(String name) implements JsonBuilder<InputValue> {
    @Override
    public InputValue group(Map<String, InputValue> members, JsonLocation at) {
      return new InputValue.Group(members, place(at));
    }

    @Override
    public InputValue several(List<InputValue> items, JsonLocation at) {
      return new InputValue.Several(items, place(at));
    }

    @Override
    public InputValue single(JsonToken token, String text, JsonLocation at) throws IOException {
      if (token == JsonToken.VALUE_NULL) {
        throw new IOException("no value");
      }
      return new InputValue.Single(text, kind(token), place(at));
    }

    private Place place(JsonLocation at) {
      return Place.of(name, at.getLineNr(), Integer.toString(at.getColumnNr()));
    }
  }

  private static InputValue.Kind kind(JsonToken token) {
    if (token.isNumeric()) {
      return InputValue.Kind.NUMBER;
    }
    return token.isBoolean() ? InputValue.Kind.YES_NO : InputValue.Kind.WORDS;
  }
}
