package caryatid.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A table in Markdown, row by row. */
final class Table {
  private final List<String> lines = new ArrayList<>();

  Table(String... head) {
    row(head);
    lines.add("|---".repeat(head.length) + "|");
  }

  Table row(String... cells) {
    lines.add("| " + String.join(" | ", cells) + " |");
    return this;
  }

  /** A number with a count of decimals. */
  static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  @Override
  public String toString() {
    return String.join("\n", lines) + "\n";
  }
}
