package caryatid.format;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A JSON value and its place in the document.
 *
 * @param value the value
 * @param at its place, for example {@code result.state.stands[0].rate-hz}
 */
record LocatedJson(JsonValue value, String at) {

  String text() {
    if (value instanceof JsonValue.Text text) {
      return text.value();
    }
    throw unexpected("text");
  }

  <E> E word(Spellings<E> words) {
    String word = text();
    return words.find(word).orElseThrow(() -> unexpected("known word"));
  }

  String oneOf(List<String> words) {
    String word = text();
    if (!words.contains(word)) {
      throw unexpected("known word");
    }
    return word;
  }

  OffsetDateTime time() {
    try {
      return OffsetDateTime.parse(text());
    } catch (DateTimeException e) {
      throw unexpected("time");
    }
  }

  double number() {
    double read =
        value instanceof JsonValue.Number n ? Double.parseDouble(n.written()) : Double.NaN;
    if (!Double.isFinite(read)) {
      throw unexpected("number");
    }
    return read;
  }

  int whole() {
    long read = longWhole();
    if (read != (int) read) {
      throw unexpected("whole number");
    }
    return (int) read;
  }

  long longWhole() {
    if (value instanceof JsonValue.Number number && number.written().matches("-?\\d{1,18}")) {
      return Long.parseLong(number.written());
    }
    throw unexpected("whole number");
  }

  boolean flag() {
    if (value instanceof JsonValue.Flag flag) {
      return flag.value();
    }
    throw unexpected("true or false");
  }

  List<JsonValue> items() {
    if (value instanceof JsonValue.Several several) {
      return several.items();
    }
    throw unexpected("list");
  }

  List<String> texts() {
    List<JsonValue> items = items();
    return IntStream.range(0, items.size())
        .mapToObj(i -> new LocatedJson(items.get(i), at + "[" + i + "]").text())
        .toList();
  }

  List<Double> numbers() {
    List<JsonValue> items = items();
    return IntStream.range(0, items.size())
        .mapToObj(i -> new LocatedJson(items.get(i), at + "[" + i + "]").number())
        .toList();
  }

  private JsonMismatch unexpected(String expected) {
    return new JsonMismatch(ArchiveProblem.NOT_EXPECTED, at, expected, JsonMismatch.excerpt(value));
  }
}
