package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.List;

/** Refuses rows whose commas can be read in two ways. */
final class MarkCheck {
  private final ExportForm form;
  private final Notebook notes;

  MarkCheck(ExportForm form, Notebook notes) {
    this.form = form;
    this.notes = notes;
  }

  void check(Rows rows, Delimiter delimiter, Head head) {
    int cells = rows.cells();
    int named = head.named();
    boolean halved = named >= 2 && named < cells && cells <= 2 * named;
    if (delimiter == Delimiter.COMMA && halved && filled(rows, named) && wholeNumbers(rows)) {
      notes.problem(
          Place.of(notes.file(), head.firstDataLine()),
          Reading.COMMA_TWICE,
          Argument.count(named),
          Argument.count(cells));
    }
    if (form.decimalMark().isEmpty() && rows.thousandsPossible()) {
      notes.problem(
          Place.of(notes.file(), head.firstDataLine()),
          Reading.THOUSANDS,
          Argument.text(
              rows.rows().stream()
                  .flatMap(List::stream)
                  .filter(c -> c.indexOf(',') >= 0)
                  .findFirst()
                  .orElse("")));
    }
  }

  private static boolean filled(Rows rows, int from) {
    return rows.rows().stream().anyMatch(r -> r.stream().skip(from).anyMatch(c -> !c.isEmpty()));
  }

  private static boolean wholeNumbers(Rows rows) {
    return rows.rows().stream().flatMap(List::stream).noneMatch(c -> c.indexOf('.') >= 0);
  }
}
