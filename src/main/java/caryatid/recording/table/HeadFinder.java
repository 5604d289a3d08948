package caryatid.recording.table;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds a table among lines: how its rows are written, where they start, what its columns are
 * called.
 */
final class HeadFinder {
  /** How many lines are examined: the longest preamble, and rows enough to see their kind. */
  static final int LOOK_AHEAD = 120;

  /** So many rows show what a column is like. */
  private static final int SHOWN = 3;

  private record FoundTable(Delimiter delimiter, RowRun rows, Optional<Header> header) {
    long recognized() {
      return header.map(Header::recognized).orElse(0L);
    }

    /** Fewer cells that are no number speak for a delimiter more than anything else does. */
    double textShare() {
      return (double) rows.texts() / (rows.cells() * rows.rows().size());
    }
  }

  private static final Comparator<FoundTable> BETTER =
      Comparator.comparing((FoundTable f) -> f.recognized() > 0)
          .thenComparing(Comparator.comparingDouble(FoundTable::textShare).reversed())
          .thenComparing(f -> f.rows().rows().size())
          .thenComparing(f -> f.rows().cells());

  private final ExportLayout layout;

  private final String file;

  HeadFinder(ExportLayout layout, String file) {
    this.layout = layout;
    this.file = file;
  }

  /**
   * The table among lines.
   *
   * @param lines the lines
   * @param firstNumber physical number of the first of them
   * @param whole whether these lines are the text's first, so that stated line numbers apply
   */
  Optional<Outcome<HeaderBlock>> find(List<String> lines, int firstNumber, boolean whole) {
    Optional<FoundTable> best = Optional.empty();
    for (Delimiter delimiter : delimiters()) {
      Optional<FoundTable> found = find(lines, delimiter, whole);
      if (found.isPresent() && (best.isEmpty() || BETTER.compare(found.get(), best.get()) > 0)) {
        best = found;
      }
    }
    return best.map(found -> checked(found, head(lines, firstNumber, found), lines, whole));
  }

  private Outcome<HeaderBlock> checked(
      FoundTable found, HeaderBlock head, List<String> lines, boolean whole) {
    StageMessages marks =
        new DecimalMarkCheck(layout, file).check(found.rows(), found.delimiter(), head);
    Outcome<HeaderBlock> counted =
        marks.has(ImportProblem.COMMA_TWICE)
            ? new Outcome<>(head, StageMessages.none(file))
            : new NameCount(layout, file).check(head, found.rows(), whole);
    SkippedLines passed = new SkippedLines(lines, found.delimiter());
    return new Outcome<>(
        counted.value(),
        marks
            .and(counted.messages())
            .and(passed.remark(found.rows(), found.header(), whole && stated(), file)));
  }

  /** Whether a description says where the names or the rows begin. */
  private boolean stated() {
    return layout.headerLine().isPresent() || layout.firstDataLine().isPresent();
  }

  /** Index of a line of known names without any row below, if there is one. */
  OptionalInt namesAlone(List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      for (Delimiter delimiter : delimiters()) {
        if (isNames(lines, i, delimiter)) {
          return OptionalInt.of(i);
        }
      }
    }
    return OptionalInt.empty();
  }

  private static boolean isNames(List<String> lines, int line, Delimiter delimiter) {
    int cells = delimiter.split(lines.get(line)).size();
    return cells > 1
        && Header.at(lines, line, cells, delimiter, OptionalInt.empty())
            .filter(header -> header.recognized() >= 2)
            .isPresent();
  }

  private List<Delimiter> delimiters() {
    return layout
        .delimiter()
        .flatMap(Delimiter::of)
        .map(List::of)
        .orElse(List.of(Delimiter.values()));
  }

  private Optional<FoundTable> find(List<String> lines, Delimiter delimiter, boolean whole) {
    List<FoundTable> all = new ArrayList<>();
    int from = whole ? layout.firstDataLine().orElse(1) - 1 : 0;
    for (RowRun rows :
        RowRun.among(lines.subList(Math.min(from, lines.size()), lines.size()), delimiter)) {
      RowRun placed = new RowRun(rows.start() + from, rows.end() + from, rows.rows());
      all.add(new FoundTable(delimiter, placed, header(lines, placed, delimiter, whole)));
    }
    return all.stream()
        .filter(f -> f.recognized() > 0)
        .findFirst()
        .or(() -> all.stream().max(Comparator.comparing(f -> f.rows().rows().size())));
  }

  private Optional<Header> header(
      List<String> lines, RowRun rows, Delimiter delimiter, boolean whole) {
    if (!layout.columns().isEmpty()) {
      int above = layout.headerLine().orElse(Math.max(0, rows.start() - 1)) - 1;
      OptionalInt units =
          whole ? Header.unitsBetween(lines, above, rows.start(), delimiter) : OptionalInt.empty();
      return Optional.of(stated(rows.cells()).withUnits(lines, units, delimiter));
    }
    if (whole && layout.headerLine().isPresent()) {
      int line = layout.headerLine().getAsInt() - 1;
      return line < rows.start()
          ? Header.stated(lines, line, rows.start(), rows.cells(), delimiter)
          : Optional.empty();
    }
    return Header.above(lines, rows.start(), rows.cells(), delimiter);
  }

  private Header stated(int cells) {
    List<ColumnName> columns = new ArrayList<>();
    layout.columns().forEach(name -> columns.add(ColumnName.of("", name)));
    while (columns.size() < cells) {
      columns.add(ColumnName.of("", ""));
    }
    return new Header(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), columns);
  }

  private HeaderBlock head(List<String> lines, int firstNumber, FoundTable found) {
    RowRun rows = found.rows();
    Optional<Header> header = found.header();
    int top =
        header.map(h -> h.device().orElse(h.line().orElse(rows.start()))).orElse(rows.start());
    DecimalMark mark = layout.decimalMark().flatMap(DecimalMark::of).orElseGet(rows::mark);
    return new HeaderBlock(
        lines.subList(0, top),
        firstNumber,
        number(header.map(Header::line), firstNumber),
        number(header.map(Header::device), firstNumber),
        number(header.map(Header::units), firstNumber),
        used(header.map(Header::columns).orElseGet(() -> unnamed(rows.cells())), rows),
        rows.start() + firstNumber,
        new Dialect(
            found.delimiter(), mark, rows.thousands(mark, layout.decimalMark().isPresent())),
        rows.sample(mark),
        rows.rows().stream().limit(SHOWN).toList());
  }

  /**
   * The columns without those at the end that are unnamed and empty: they come from delimiters
   * behind the last cell. A row that has something there later has too many cells.
   */
  private static List<ColumnName> used(List<ColumnName> columns, RowRun rows) {
    int count = columns.size();
    while (count > 0 && columns.get(count - 1).full().isEmpty() && rows.empty(count - 1)) {
      count--;
    }
    return columns.subList(0, count);
  }

  private static OptionalInt number(Optional<OptionalInt> index, int firstNumber) {
    OptionalInt known = index.orElse(OptionalInt.empty());
    return known.isPresent() ? OptionalInt.of(known.getAsInt() + firstNumber) : OptionalInt.empty();
  }

  private static List<ColumnName> unnamed(int cells) {
    return java.util.Collections.nCopies(cells, ColumnName.of("", ""));
  }
}
