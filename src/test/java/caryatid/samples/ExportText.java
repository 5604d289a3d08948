package caryatid.samples;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;

/**
 * How an export is written.
 *
 * @param delimiter between cells
 * @param decimalMark point or comma
 * @param preamble lines before the header
 * @param unitsRow whether a row of units follows the header
 */
record ExportText(String delimiter, char decimalMark, List<String> preamble, boolean unitsRow) {

  /**
   * A column.
   *
   * @param name in the header
   * @param unit in the row of units
   * @param decimals how many are written
   * @param values by sample
   */
  record Column(String name, String unit, int decimals, IntToDoubleFunction values) {}

  /** The export's bytes, UTF-8, with line feeds. */
  byte[] write(List<Column> columns, int samples) {
    StringBuilder text = new StringBuilder();
    preamble.forEach(line -> text.append(line).append('\n'));
    row(text, columns, Column::name);
    if (unitsRow) {
      row(text, columns, Column::unit);
    }
    for (int i = 0; i < samples; i++) {
      int at = i;
      row(text, columns, c -> cell(c, at));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void row(StringBuilder text, List<Column> columns, Function<Column, String> cell) {
    text.append(columns.stream().map(cell).collect(Collectors.joining(delimiter))).append('\n');
  }

  private String cell(Column column, int sample) {
    return Digits.write(column.values().applyAsDouble(sample), column.decimals())
        .replace('.', decimalMark);
  }
}
