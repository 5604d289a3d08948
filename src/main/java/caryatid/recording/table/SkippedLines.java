package caryatid.recording.table;

import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Lines that are skipped because a description says where the names and the rows are. */
final class SkippedLines {
  private final List<String> lines;
  private final Delimiter delimiter;

  SkippedLines(List<String> lines, Delimiter delimiter) {
    this.lines = lines;
    this.delimiter = delimiter;
  }

  /**
   * A remark on rows of numbers above the first one that is read, and on lines between the names
   * and that row which are no units.
   *
   * @param stated whether a description says where they are
   */
  StageMessages remark(RowRun rows, Optional<Header> header, boolean stated, String file) {
    OptionalInt names = header.map(Header::line).orElse(OptionalInt.empty());
    OptionalInt units = header.map(Header::units).orElse(OptionalInt.empty());
    int[] passed =
        IntStream.range(0, stated ? rows.start() : 0)
            .filter(i -> !lines.get(i).isBlank())
            .filter(i -> units.isEmpty() || units.getAsInt() != i)
            .filter(i -> isRow(i, rows) || (names.isPresent() && i > names.getAsInt()))
            .toArray();
    return passed.length == 0
        ? StageMessages.none(file)
        : StageMessages.none(file)
            .withRemark(
                RecordingRemark.PASSED_OVER,
                Argument.count(passed.length),
                Argument.count(passed[0] + 1));
  }

  private boolean isRow(int line, RowRun rows) {
    List<String> cells = delimiter.split(lines.get(line));
    return cells.size() == rows.cells() && RowRun.isRow(cells);
  }
}
