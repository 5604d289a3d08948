package caryatid.differential;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/** An export in pieces that can be changed. */
final class Export {
  private final List<String> head;
  private final List<String[]> rows;
  private final String delimiter;
  private String lineEnd = "\n";

  private Export(List<String> head, List<String[]> rows, String delimiter) {
    this.head = head;
    this.rows = rows;
    this.delimiter = delimiter;
  }

  /**
   * An export read from a file.
   *
   * @param headLines lines above the first row
   * @param every which rows are taken: 4 for every fourth
   */
  static Export read(Path file, int headLines, int every, String delimiter) throws IOException {
    List<String> lines = Files.readAllLines(file);
    List<String[]> rows = new ArrayList<>();
    for (int i = headLines; i < lines.size(); i += every) {
      rows.add(lines.get(i).split(delimiter, -1));
    }
    return new Export(List.copyOf(lines.subList(0, headLines)), rows, delimiter);
  }

  /** Another one of the same content, to be changed. */
  Export copy() {
    List<String[]> copied = new ArrayList<>();
    rows.forEach(row -> copied.add(row.clone()));
    return new Export(new ArrayList<>(head), copied, delimiter);
  }

  List<String> head() {
    return head;
  }

  List<String[]> rows() {
    return rows;
  }

  int anyRow(Random random) {
    return random.nextInt(rows.size());
  }

  int anyColumn(Random random) {
    return random.nextInt(rows.get(0).length);
  }

  void anyCell(Random random, UnaryOperator<String> change) {
    String[] row = rows.get(anyRow(random));
    int column = random.nextInt(row.length);
    row[column] = change.apply(row[column]);
  }

  void anyColumn(Random random, DoubleUnaryOperator change) {
    int column = anyColumn(random);
    rows.stream().filter(row -> row.length > column).forEach(row -> number(row, column, change));
  }

  /** Multiplies everything in a row but its time. */
  void scale(String[] row, double factor) {
    for (int column = 1; column < row.length; column++) {
      number(row, column, value -> value * factor);
    }
  }

  private static void number(String[] row, int column, DoubleUnaryOperator change) {
    try {
      double value = Double.parseDouble(row[column].replace(',', '.'));
      String changed = String.format(Locale.ROOT, "%.4f", change.applyAsDouble(value));
      row[column] = row[column].contains(",") ? changed.replace('.', ',') : changed;
    } catch (NumberFormatException e) {
      // Spoilt already: left as it is.
    }
  }

  /** A comma for every decimal point, a point for every decimal comma. */
  void swapMarks() {
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        row[i] = row[i].contains(",") ? row[i].replace(',', '.') : row[i].replace('.', ',');
      }
    }
  }

  void endLinesWith(String end) {
    lineEnd = end;
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder();
    head.forEach(line -> text.append(line).append(lineEnd));
    rows.forEach(row -> text.append(String.join(delimiter, row)).append(lineEnd));
    return text.toString().getBytes(UTF_8);
  }
}
