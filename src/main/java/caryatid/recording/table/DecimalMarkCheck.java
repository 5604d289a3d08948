package caryatid.recording.table;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.List;

/** Refuses rows whose commas can be read in two ways. */
final class DecimalMarkCheck {
  private final ExportLayout layout;
  private final String file;

  DecimalMarkCheck(ExportLayout layout, String file) {
    this.layout = layout;
    this.file = file;
  }

  StageMessages check(RowRun rows, Delimiter delimiter, HeaderBlock head) {
    StageMessages messages = StageMessages.none(file);
    int cells = rows.cells();
    int named = head.named();
    boolean halved = named >= 2 && named < cells && cells <= 2 * named;
    if (delimiter == Delimiter.COMMA && halved && filled(rows, named) && wholeNumbers(rows)) {
      messages =
          messages.withProblem(
              Place.of(file, head.firstDataLine()),
              ImportProblem.COMMA_TWICE,
              Argument.count(named),
              Argument.count(cells));
    }
    if (layout.decimalMark().isEmpty() && rows.thousandsPossible()) {
      messages =
          messages.withProblem(
              Place.of(file, head.firstDataLine()),
              ImportProblem.THOUSANDS,
              Argument.text(
                  rows.rows().stream()
                      .flatMap(List::stream)
                      .filter(c -> c.indexOf(',') >= 0)
                      .findFirst()
                      .orElse("")));
    }
    return messages;
  }

  private static boolean filled(RowRun rows, int from) {
    return rows.rows().stream().anyMatch(r -> r.stream().skip(from).anyMatch(c -> !c.isEmpty()));
  }

  private static boolean wholeNumbers(RowRun rows) {
    return rows.rows().stream().flatMap(List::stream).noneMatch(c -> c.indexOf('.') >= 0);
  }
}
