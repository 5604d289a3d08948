package caryatid.faults;

import caryatid.recording.model.NamedBytes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** The cells of a sample recording, so that one column can be changed. */
final class SampleExport {
  private static final int HEADER_CELLS = 4;

  private final String name;
  private final String delimiter;
  private final boolean comma;
  private final List<String[]> rows = new ArrayList<>();
  private final int header;
  private final int first;

  private SampleExport(String name, List<String> lines) {
    this.name = name;
    this.delimiter =
        lines.stream().anyMatch(l -> l.split("\t").length > HEADER_CELLS)
            ? "\t"
            : lines.get(0).contains(";") ? ";" : ",";
    lines.forEach(line -> rows.add(line.split(delimiter, -1)));
    this.comma = delimiter.equals(";");
    this.first =
        IntStream.range(0, rows.size())
            .filter(r -> rows.get(r).length >= HEADER_CELLS && number(rows.get(r)[0]).isPresent())
            .findFirst()
            .orElseThrow();
    this.header =
        IntStream.range(0, first)
            .filter(r -> rows.get(r).length >= HEADER_CELLS)
            .findFirst()
            .orElseThrow();
  }

  static SampleExport read(Path file) throws IOException {
    return new SampleExport(
        file.getFileName().toString(), Files.readAllLines(file, StandardCharsets.UTF_8));
  }

  /** The names of the columns but the first, which holds the times. */
  List<String> columns() {
    return List.of(rows.get(header)).subList(1, rows.get(header).length);
  }

  double rateHz() {
    int last = rows.size() - 1;
    double seconds =
        number(rows.get(last)[0]).orElseThrow() - number(rows.get(first)[0]).orElseThrow();
    return Math.round((last - first) / seconds);
  }

  /** The export as it is. */
  NamedBytes asItIs() {
    return with(0, UnaryOperator.identity());
  }

  /** The export with a column changed; a number that is not one becomes an empty cell. */
  NamedBytes with(String column, UnaryOperator<double[]> change) {
    return with(1 + columns().indexOf(column), change);
  }

  private NamedBytes with(int column, UnaryOperator<double[]> change) {
    double[] changed =
        change.apply(
            rows.stream().skip(first).mapToDouble(r -> number(r[column]).orElseThrow()).toArray());
    StringBuilder text = new StringBuilder();
    for (int r = 0; r < rows.size(); r++) {
      String[] cells = rows.get(r).clone();
      if (r >= first && column > 0) {
        cells[column] = cell(changed[r - first]);
      }
      text.append(String.join(delimiter, cells)).append('\n');
    }
    return NamedBytes.of(name, text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private Optional<Double> number(String cell) {
    try {
      return Optional.of(Double.parseDouble(comma ? cell.replace(',', '.') : cell));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private String cell(double value) {
    String text = String.format(Locale.ROOT, "%.5f", value);
    return Double.isNaN(value) ? "" : comma ? text.replace('.', ',') : text;
  }
}
