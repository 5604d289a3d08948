package caryatid.recording.table;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import caryatid.remark.Place;

/**
 * Refuses names that are more or fewer than the cells of a row: a column would take its neighbour's
 * name.
 */
final class NameCount {
  private final ExportLayout layout;
  private final String file;

  NameCount(ExportLayout layout, String file) {
    this.layout = layout;
    this.file = file;
  }

  /**
   * The head; without names, and with a problem, where their count is not that of the cells.
   *
   * @param first whether the table is the text's first; a later one that tells of no plate is not
   *     looked at
   */
  Outcome<HeaderBlock> check(HeaderBlock head, RowRun rows, boolean first) {
    int names = head.named();
    int cells = filled(rows);
    boolean counts =
        first || ColumnMeaning.of(head.columns()).stream().anyMatch(r -> r.channel().isPresent());
    if (!counts || names == 0 || names == cells || (names > cells && names <= rows.cells())) {
      return new Outcome<>(head, StageMessages.none(file));
    }
    StageMessages messages =
        StageMessages.none(file)
            .withProblem(
                new Place(file, head.headerLine(), java.util.Optional.empty()),
                layout.columns().isEmpty()
                    ? ImportProblem.NAMES_COUNT
                    : ImportProblem.NAMES_COUNT_DESCRIBED,
                Argument.count(names),
                Argument.count(cells));
    return new Outcome<>(head.unnamed(cells), messages);
  }

  /** How many cells a row has without those at its end that are always empty. */
  private static int filled(RowRun rows) {
    int cells = rows.cells();
    while (cells > 0 && rows.empty(cells - 1)) {
      cells--;
    }
    return cells;
  }
}
