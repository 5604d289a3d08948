package caryatid.report;

import caryatid.remark.Topic;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Writes the program's records as JSON objects, a key for each component. What is empty is left
 * out, and so are infinite degrees of freedom; any other number must be finite.
 */
final class ValueWriter {
  private final JsonGenerator out;

  ValueWriter(JsonGenerator out) {
    this.out = out;
  }

  void write(Object value) throws IOException {
    if (value instanceof Topic topic) {
      out.writeString(topic.code());
    } else if (value instanceof Record held) {
      writeRecord(held);
    } else if (value instanceof List<?> list) {
      writeList(list);
    } else if (value instanceof Map<?, ?> map) {
      writeMap(map);
    } else {
      writeSimple(value);
    }
  }

  private void writeSimple(Object value) throws IOException {
    if (value instanceof Double number) {
      out.writeNumber(Digits.of(number));
    } else if (value instanceof Number whole) {
      out.writeNumber(whole.longValue());
    } else if (value instanceof Boolean flag) {
      out.writeBoolean(flag);
    } else if (value instanceof Enum<?> constant) {
      out.writeString(Spelling.of(constant));
    } else if (value instanceof String || value instanceof OffsetDateTime) {
      out.writeString(value.toString());
    } else {
      throw new IllegalArgumentException("no JSON for " + value.getClass());
    }
  }

  private void writeRecord(Record held) throws IOException {
    out.writeStartObject();
    if (Forms.isChoice(held.getClass())) {
      out.writeStringField(Forms.KIND, Spelling.ofName(held.getClass().getSimpleName()));
    }
    for (RecordComponent component : held.getClass().getRecordComponents()) {
      Optional<?> value = present(Forms.get(component, held));
      if (value.isPresent() && !Forms.leftOut(component, value.get())) {
        out.writeFieldName(Spelling.ofName(component.getName()));
        write(value.get());
      }
    }
    out.writeEndObject();
  }

  private static Optional<?> present(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional;
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }
    return Optional.of(value);
  }

  private void writeList(List<?> list) throws IOException {
    out.writeStartArray();
    for (Object each : list) {
      write(each);
    }
    out.writeEndArray();
  }

  /** In the order of the keys, since the map's own may differ from run to run. */
  private void writeMap(Map<?, ?> map) throws IOException {
    Map<String, Object> sorted = new TreeMap<>();
    map.forEach((key, value) -> sorted.put(Spelling.of((Enum<?>) key), value));
    out.writeStartObject();
    for (Map.Entry<String, Object> entry : sorted.entrySet()) {
      out.writeFieldName(entry.getKey());
      write(entry.getValue());
    }
    out.writeEndObject();
  }
}
