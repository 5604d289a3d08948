package caryatid.format;

import caryatid.remark.Place;
import caryatid.sheet.yaml.InputValue;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
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
      json.nextToken();
      InputValue read = value(json, name);
      if (json.nextToken() != null) {
        throw new IOException("more after the end");
      }
      return read;
    }
  }

  private static InputValue value(JsonParser json, String name) throws IOException {
    Place place = place(json, name);
    JsonToken token = json.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return new InputValue.Group(members(json, name), place);
    }
    if (token == JsonToken.START_ARRAY) {
      return new InputValue.Several(items(json, name), place);
    }
    if (token == null || !token.isScalarValue() || token == JsonToken.VALUE_NULL) {
      throw new IOException("no value");
    }
    return new InputValue.Single(json.getText(), kind(token), place);
  }

  private static Map<String, InputValue> members(JsonParser json, String name) throws IOException {
    Map<String, InputValue> members = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      json.nextToken();
      members.put(key, value(json, name));
    }
    return members;
  }

  private static List<InputValue> items(JsonParser json, String name) throws IOException {
    List<InputValue> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json, name));
    }
    return items;
  }

  private static InputValue.Kind kind(JsonToken token) {
    if (token.isNumeric()) {
      return InputValue.Kind.NUMBER;
    }
    return token.isBoolean() ? InputValue.Kind.YES_NO : InputValue.Kind.WORDS;
  }

  private static Place place(JsonParser json, String name) {
    var at = json.currentTokenLocation();
    return Place.of(name, at.getLineNr(), Integer.toString(at.getColumnNr()));
  }
}
