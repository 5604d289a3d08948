package caryatid.format;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes an object, member after member. What is empty is left out. */
public final class JsonObjectWriter {
  /** How a value's members are written into its object. */
  public interface MemberWriter<T> {

    /** Writes every member, in the order of the format. */
    void write(T value, JsonObjectWriter out) throws IOException;
  }

  private final JsonGenerator json;

  /** A writer of objects into a generator. */
  public JsonObjectWriter(JsonGenerator json) {
    this.json = json;
  }

  public JsonObjectWriter text(String key, String value) throws IOException {
    json.writeStringField(key, value);
    return this;
  }

  public JsonObjectWriter text(String key, Optional<String> value) throws IOException {
    return value.isPresent() ? text(key, value.get()) : this;
  }

  JsonObjectWriter time(String key, OffsetDateTime value) throws IOException {
    return text(key, value.toString());
  }

  <E> JsonObjectWriter word(String key, Spellings<E> words, E value) throws IOException {
    return text(key, words.of(value));
  }

  /**
   * A number.
   *
   * @throws NumberFormatException if it is not finite
   */
  JsonObjectWriter number(String key, double value) throws IOException {
    json.writeFieldName(key);
    json.writeNumber(JsonNumber.of(value));
    return this;
  }

  /**
   * A number with the digits it is given in.
   *
   * @param digits a number as JSON writes it
   */
  public JsonObjectWriter number(String key, String digits) throws IOException {
    json.writeFieldName(key);
    json.writeNumber(digits);
    return this;
  }

  JsonObjectWriter number(String key, OptionalDouble value) throws IOException {
    return value.isPresent() ? number(key, value.getAsDouble()) : this;
  }

  public JsonObjectWriter whole(String key, long value) throws IOException {
    json.writeNumberField(key, value);
    return this;
  }

  JsonObjectWriter flag(String key, boolean value) throws IOException {
    json.writeBooleanField(key, value);
    return this;
  }

  public <T> JsonObjectWriter object(String key, T value, MemberWriter<T> members)
      throws IOException {
    json.writeFieldName(key);
    members(value, members);
    return this;
  }

  public <T> JsonObjectWriter object(String key, Optional<T> value, MemberWriter<T> members)
      throws IOException {
    return value.isPresent() ? object(key, value.get(), members) : this;
  }

  public <T> JsonObjectWriter list(String key, List<T> values, MemberWriter<T> members)
      throws IOException {
    json.writeArrayFieldStart(key);
    for (T value : values) {
      members(value, members);
    }
    json.writeEndArray();
    return this;
  }

  public <T> JsonObjectWriter listUnlessEmpty(String key, List<T> values, MemberWriter<T> members)
      throws IOException {
    return values.isEmpty() ? this : list(key, values, members);
  }

  /** Texts; left out if there are none. */
  public JsonObjectWriter textsUnlessEmpty(String key, List<String> values) throws IOException {
    if (!values.isEmpty()) {
      json.writeArrayFieldStart(key);
      for (String value : values) {
        json.writeString(value);
      }
      json.writeEndArray();
    }
    return this;
  }

  JsonObjectWriter numbersUnlessEmpty(String key, List<Double> values) throws IOException {
    if (!values.isEmpty()) {
      json.writeArrayFieldStart(key);
      for (double value : values) {
        json.writeNumber(JsonNumber.of(value));
      }
      json.writeEndArray();
    }
    return this;
  }

  /** Writes an object by itself. */
  public <T> void members(T value, MemberWriter<T> members) throws IOException {
    json.writeStartObject();
    members.write(value, this);
    json.writeEndObject();
  }
}
