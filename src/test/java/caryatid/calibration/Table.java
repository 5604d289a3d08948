package caryatid.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A table in Markdown, row by row. */
final class Table {
  private final List<String> head;
  private final List<List<String>> rows = new ArrayList<>();

  Table(String... head) {
    this.head = List.of(head);
  }

  Table row(String... cells) {
    rows.add(List.of(cells));
    return this;
  }

  List<String> head() {
    return head;
  }

  List<List<String>> rows() {
    return List.copyOf(rows);
  }

  /** A number with a count of decimals. */
  static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  @Override
  public String toString() {
    return line(head)
        + "|---".repeat(head.size())
        + "|\n"
        + rows.stream().map(Table::line).collect(Collectors.joining());
  }

  private static String line(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }
}
