package caryatid.format;

import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.io.IOException;

/** A remark in JSON: its topic's code and its arguments. */
final class RemarkJson {
  private static final String KIND = "kind";
  private static final String TEXT = "text";
  private static final String QUANTITY = "quantity";
  private static final String TERM = "term";

  private RemarkJson() {}

  static void write(Remark remark, JsonObjectWriter out) throws IOException {
    out.text("topic", remark.topic().code());
    out.list("arguments", remark.arguments(), RemarkJson::writeArgument);
  }

  static Remark read(JsonObjectReader in) {
    return new Remark(
        in.word("topic", Topics.CODES), in.list("arguments", RemarkJson::readArgument));
  }

  private static void writeArgument(Argument argument, JsonObjectWriter out) throws IOException {
    if (argument instanceof Argument.Text text) {
      out.text(KIND, TEXT).text("value", text.value());
    } else if (argument instanceof Argument.Quantity quantity) {
      out.text(KIND, QUANTITY).number("value", quantity.value());
      out.word("unit", FindingSpellings.UNIT, quantity.unit());
    } else if (argument instanceof Argument.Term term) {
      out.text(KIND, TERM).text("key", term.key());
    }
  }

  private static Argument readArgument(JsonObjectReader in) {
    return switch (in.kind(KIND, TEXT, QUANTITY, TERM)) {
      case TEXT -> new Argument.Text(in.text("value"));
      case QUANTITY ->
          new Argument.Quantity(in.number("value"), in.word("unit", FindingSpellings.UNIT));
      default -> new Argument.Term(in.text("key"));
    };
  }
}
