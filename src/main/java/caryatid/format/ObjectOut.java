package caryatid.format;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes an object, member after member. What is empty is left out. */
final class ObjectOut {
  private final JsonGenerator json;

  ObjectOut(JsonGenerator json) {
    this.json = json;
  }

  ObjectOut text(String key, String value) throws IOException {
    json.writeStringField(key, value);
    return this;
  }

  ObjectOut text(String key, Optional<String> value) throws IOException {
    return value.isPresent() ? text(key, value.get()) : this;
  }

  ObjectOut time(String key, OffsetDateTime value) throws IOException {
    return text(key, value.toString());
  }

  <E> ObjectOut word(String key, Words<E> words, E value) throws IOException {
    return text(key, words.of(value));
  }

  /**
   * A number.
   *
   * @throws NumberFormatException if it is not finite
   */
  ObjectOut number(String key, double value) throws IOException {
    json.writeFieldName(key);
    json.writeNumber(Digits.of(value));
    return this;
  }

  ObjectOut number(String key, OptionalDouble value) throws IOException {
    return value.isPresent() ? number(key, value.getAsDouble()) : this;
  }

  ObjectOut whole(String key, long value) throws IOException {
    json.writeNumberField(key, value);
    return this;
  }

  ObjectOut flag(String key, boolean value) throws IOException {
    json.writeBooleanField(key, value);
    return this;
  }

  <T> ObjectOut object(String key, T value, Members<T> members) throws IOException {
    json.writeFieldName(key);
    members(value, members);
    return this;
  }

  <T> ObjectOut object(String key, Optional<T> value, Members<T> members) throws IOException {
    return value.isPresent() ? object(key, value.get(), members) : this;
  }

  <T> ObjectOut list(String key, List<T> values, Members<T> members) throws IOException {
    json.writeArrayFieldStart(key);
    for (T value : values) {
      members(value, members);
    }
    json.writeEndArray();
    return this;
  }

  <T> void members(T value, Members<T> members) throws IOException {
    json.writeStartObject();
    members.write(value, this);
    json.writeEndObject();
  }
}
