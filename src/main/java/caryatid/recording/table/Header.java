package caryatid.recording.table;

import caryatid.recording.model.UnitNames;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The names above a table's rows, found by walking up from its first row: a row of units, the
 * names, a row of devices. Indexes count the lines looked at, from 0.
 *
 * @param line index of the names; empty where a description states them
 * @param device index of the row of devices
 * @param units index of the row of units
 * @param columns one name a cell
 */
record Header(OptionalInt line, OptionalInt device, OptionalInt units, List<ColumnName> columns) {

  /** The header above a row. */
  static Optional<Header> above(List<String> lines, int firstRow, int cells, Delimiter delimiter) {
    OptionalInt below = lineAbove(lines, firstRow);
    if (below.isEmpty()) {
      return Optional.empty();
    }
    Optional<List<String>> units = unitsRow(lines, below.getAsInt(), delimiter);
    OptionalInt line = units.isEmpty() ? below : lineAbove(lines, below.getAsInt());
    return line.isEmpty()
        ? Optional.empty()
        : at(
            lines,
            line.getAsInt(),
            cells,
            delimiter,
            units.map(u -> below).orElse(OptionalInt.empty()));
  }

  /** The header in a line, if that line is one. */
  static Optional<Header> at(
      List<String> lines, int line, int cells, Delimiter delimiter, OptionalInt units) {
    Optional<List<String>> names = names(lines.get(line), cells, delimiter);
    if (names.isEmpty()) {
      return Optional.empty();
    }
    List<String> unitCells =
        units.isEmpty() ? List.of() : delimiter.split(lines.get(units.getAsInt()));
    OptionalInt device = repeats(names.get()) ? lineAbove(lines, line) : OptionalInt.empty();
    List<String> devices =
        device.isEmpty() ? List.of() : devices(lines.get(device.getAsInt()), delimiter);
    List<ColumnName> columns = new ArrayList<>();
    for (int i = 0; i < Math.max(cells, names.get().size()); i++) {
      columns.add(
          ColumnName.of(cell(devices, i), cell(names.get(), i)).withUnit(unit(cell(unitCells, i))));
    }
    return Optional.of(
        new Header(
            OptionalInt.of(line),
            devices.isEmpty() ? OptionalInt.empty() : device,
            units,
            columns));
  }

  /**
   * The header in a line that a description states; a row of units may lie between it and the first
   * row.
   */
  static Optional<Header> stated(
      List<String> lines, int line, int firstRow, int cells, Delimiter delimiter) {
    return at(lines, line, cells, delimiter, unitsBetween(lines, line, firstRow, delimiter));
  }

  /** The row of units between two lines: text, of which something is a known unit. */
  static OptionalInt unitsBetween(
      List<String> lines, int above, int firstRow, Delimiter delimiter) {
    return IntStream.range(above + 1, firstRow)
        .filter(
            i -> {
              List<String> cells = filledCells(lines.get(i), delimiter);
              return mostlyText(cells) && cells.stream().anyMatch(UnitNames::known);
            })
        .findFirst();
  }

  /** The same columns, each with the unit that a row of units says. */
  Header withUnits(List<String> lines, OptionalInt row, Delimiter delimiter) {
    if (row.isEmpty()) {
      return this;
    }
    List<String> cells = delimiter.split(lines.get(row.getAsInt()));
    List<ColumnName> named = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      named.add(columns.get(i).withUnit(unit(cell(cells, i))));
    }
    return new Header(line, device, row, named);
  }

  /** How many of the names are known to this package. */
  long recognized() {
    return ColumnMeaning.of(columns).stream()
        .filter(r -> r.kind() != ColumnMeaning.ColumnKind.OTHER)
        .count();
  }

  /**
   * The names, separated as the rows are; else by whatever gives as many names as there are cells.
   */
  private static Optional<List<String>> names(String line, int cells, Delimiter delimiter) {
    Optional<List<String>> own = names(line, delimiter);
    if (own.isPresent() && (own.get().size() == cells || anyKnown(own.get()))) {
      return own;
    }
    return Arrays.stream(Delimiter.values())
        .flatMap(other -> names(line, other).stream())
        .filter(names -> names.size() == cells)
        .findFirst();
  }

  private static Optional<List<String>> names(String line, Delimiter delimiter) {
    List<String> names = trimmed(delimiter.split(line));
    return names.size() >= 2 && mostlyText(names) ? Optional.of(names) : Optional.empty();
  }

  private static boolean anyKnown(List<String> names) {
    return names.stream()
        .anyMatch(
            n -> ColumnMeaning.of(ColumnName.of("", n)).kind() != ColumnMeaning.ColumnKind.OTHER);
  }

  private static boolean mostlyText(List<String> cells) {
    long texts = cells.stream().filter(c -> Cell.of(c) == Cell.TEXT).count();
    return 2 * texts > cells.size();
  }

  private static boolean repeats(List<String> names) {
    List<String> bare = names.stream().map(name -> ColumnName.of("", name).name()).toList();
    return bare.stream().distinct().count() < bare.size();
  }

  /**
   * The cells of a row of units: all of them known; or some known and none a column's name, below a
   * line of known names.
   */
  private static Optional<List<String>> unitsRow(
      List<String> lines, int line, Delimiter delimiter) {
    List<String> cells = delimiter.split(lines.get(line));
    List<String> filled = filledCells(lines.get(line), delimiter);
    long known = filled.stream().filter(UnitNames::known).count();
    boolean some =
        known > 0
            && !anyKnown(filled)
            && mostlyText(filled)
            && lineAbove(lines, line).stream()
                .anyMatch(above -> anyKnown(trimmed(delimiter.split(lines.get(above)))));
    return known > 0 && (some || known == filled.size()) ? Optional.of(cells) : Optional.empty();
  }

  private static List<String> filledCells(String line, Delimiter delimiter) {
    return delimiter.split(line).stream().filter(Header::filled).map(Header::bare).toList();
  }

  /** The unit in a cell; empty where a dash or the like says that there is none. */
  private static String unit(String cell) {
    return filled(cell) ? bare(cell) : "";
  }

  private static boolean filled(String cell) {
    return Cell.of(bare(cell)) != Cell.HOLE;
  }

  /** A unit without the brackets some exports put around it. */
  private static String bare(String cell) {
    return cell.replaceAll("^[(\\[{]\\s*|\\s*[)\\]}]$", "");
  }

  /** A row of devices names each once, above the first of its columns. */
  private static List<String> devices(String line, Delimiter delimiter) {
    List<String> cells = delimiter.split(line);
    boolean spread = cells.size() > 2 && !RowRun.isRow(cells);
    List<String> devices = new ArrayList<>();
    String present = "";
    for (String cell : spread ? cells : List.<String>of()) {
      present = cell.isEmpty() ? present : cell;
      devices.add(present);
    }
    return devices;
  }

  private static List<String> trimmed(List<String> cells) {
    int size = cells.size();
    while (size > 0 && cells.get(size - 1).isEmpty()) {
      size--;
    }
    return cells.subList(0, size);
  }

  private static String cell(List<String> cells, int index) {
    return index < cells.size() ? cells.get(index) : "";
  }

  private static OptionalInt lineAbove(List<String> lines, int index) {
    for (int i = index - 1; i >= 0; i--) {
      if (!lines.get(i).isBlank()) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
