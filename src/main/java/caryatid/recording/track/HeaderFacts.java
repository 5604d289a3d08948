package caryatid.recording.track;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.UnderstoodFact;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.Dialect;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What was understood from a table's header and layout. */
public final class HeaderFacts {
  private final ParsedTable table;
  private final HeaderBlock head;
  private final ExportLayout layout;
  private final List<UnderstoodFact> facts = new ArrayList<>();

  public HeaderFacts(ParsedTable table, ExportLayout layout) {
    this.table = table;
    this.head = table.head();
    this.layout = layout;
  }

  /** The facts, in the order in which the table is laid out. */
  public StageMessages of(String file) {
    Dialect dialect = head.dialect();
    fact(
        ImportFact.DELIMITER,
        basis(layout.delimiter()),
        Argument.term(dialect.delimiter()),
        Argument.count(head.columns().size()));
    fact(
        ImportFact.DECIMAL_MARK,
        basis(layout.decimalMark()),
        Argument.term(dialect.mark()),
        Argument.text(head.sample()));
    if (!head.preamble().isEmpty()) {
      fact(ImportFact.PREAMBLE, Basis.CONCLUDED, Argument.count(head.preamble().size()));
    }
    line(ImportFact.DEVICES, head.deviceLine());
    line(ImportFact.HEADER, head.headerLine());
    if (head.headerLine().isEmpty()) {
      fact(ImportFact.NO_HEADER, layout.columns().isEmpty() ? Basis.CONCLUDED : Basis.DESCRIBED);
    }
    line(ImportFact.UNITS_ROW, head.unitsLine());
    fact(
        ImportFact.ROWS,
        layout.firstDataLine().isPresent() ? Basis.DESCRIBED : Basis.CONCLUDED,
        Argument.count(table.rows()),
        Argument.count(head.firstDataLine()));
    table.mapping().plates().forEach(this::columns);
    unused();
    return new StageMessages(file, List.of(), List.of(), facts);
  }

  private void fact(ImportFact aspect, Basis basis, Argument... arguments) {
    facts.add(new UnderstoodFact(aspect, List.of(arguments), basis));
  }

  private static Basis basis(Optional<?> described) {
    return described.isPresent() ? Basis.DESCRIBED : Basis.CONCLUDED;
  }

  private void line(ImportFact aspect, OptionalInt line) {
    line.ifPresent(number -> fact(aspect, Basis.CONCLUDED, Argument.count(number)));
  }

  private void columns(PlateColumns plate) {
    Basis basis = plate.layout().columns().isEmpty() ? Basis.CONCLUDED : Basis.DESCRIBED;
    if (!plate.columns().isEmpty()) {
      String columns =
          plate.columns().entrySet().stream()
              .map(c -> AxesText.key(c.getKey()) + ": " + table.columnName(c.getValue()))
              .collect(Collectors.joining(", "));
      fact(ImportFact.COLUMNS, basis, Argument.text(plate.name()), Argument.text(columns));
    }
    if (!plate.sensors().isEmpty()) {
      String cells =
          plate.sensors().entrySet().stream()
              .sorted(Map.Entry.comparingByValue())
              .map(Map.Entry::getKey)
              .collect(Collectors.joining(", "));
      fact(ImportFact.CELLS, Basis.DESCRIBED, Argument.text(plate.name()), Argument.text(cells));
    }
  }

  private void unused() {
    BitSet used = table.mapping().wanted();
    if (table.mapping().plates().isEmpty()) {
      return;
    }
    List<Integer> unused =
        IntStream.range(0, head.columns().size()).filter(i -> !used.get(i)).boxed().toList();
    unused(
        ImportFact.NOT_NEEDED,
        unused,
        Set.of(ColumnMeaning.ColumnKind.TIME, ColumnMeaning.ColumnKind.INDEX));
    unused(ImportFact.DERIVED, unused, Set.of(ColumnMeaning.ColumnKind.DERIVED));
    unused(
        ImportFact.UNUSED,
        unused,
        Set.of(ColumnMeaning.ColumnKind.OTHER, ColumnMeaning.ColumnKind.CHANNEL));
  }

  private void unused(
      ImportFact aspect, List<Integer> columns, Set<ColumnMeaning.ColumnKind> kinds) {
    String names =
        columns.stream()
            .filter(i -> kinds.contains(ColumnMeaning.of(head.columns().get(i)).kind()))
            .limit(40)
            .map(table::columnName)
            .collect(Collectors.joining(", "));
    if (!names.isEmpty()) {
      fact(aspect, Basis.CONCLUDED, Argument.text(names));
    }
  }
}
