package caryatid.recording.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The rows of a sheet that hold anything, one after the other. */
final class SheetRows {
  private final XmlPart sheet;
  private final CellReader cells;
  private final SheetOddities oddities;
  private final BitSet hiddenColumns = new BitSet();
  private int row;
  private boolean hiddenRow;

  SheetRows(XmlPart sheet, CellReader cells, SheetOddities oddities) {
    this.sheet = sheet;
    this.cells = cells;
    this.oddities = oddities;
  }

  /** The next row; empty at the sheet's end, when all its oddities are known. */
  Optional<SheetRow> next() throws IOException {
    while (sheet.next()) {
      if (sheet.starts("row")) {
        SheetRow read = row();
        if (!read.cells().isEmpty()) {
          return Optional.of(read);
        }
      } else if (sheet.starts("col")) {
        column();
      } else if (sheet.starts("mergeCell")) {
        oddities.merged(sheet.attribute("ref").orElse(""));
      }
    }
    return Optional.empty();
  }

  private void column() throws IOException {
    if (sheet.flag("hidden") || isZero("width")) {
      int first = number("min", CellName.MOST_COLUMNS);
      hiddenColumns.set(first - 1, Math.max(first, number("max", CellName.MOST_COLUMNS)));
    }
  }

  private boolean isZero(String attribute) {
    return sheet.attribute(attribute).filter(v -> v.matches("0+(\\.0*)?")).isPresent();
  }

  private int number(String attribute, int most) throws IOException {
    try {
      int number = Integer.parseInt(sheet.attribute(attribute).orElse(""));
      if (number >= 1 && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // It is no number of a row or column, as below.
    }
    throw WorkbookFault.damaged(attribute + "=" + sheet.attribute(attribute).orElse(""));
  }

  private SheetRow row() throws IOException {
    int number = sheet.attribute("r").isPresent() ? number("r", CellName.MOST_ROWS) : row + 1;
    if (number <= row || number > CellName.MOST_ROWS) {
      throw WorkbookFault.damaged("row " + number);
    }
    row = number;
    hiddenRow = sheet.flag("hidden") || isZero("ht");
    List<String> shown = new ArrayList<>();
    int column = -1;
    while (!sheet.ends("row") && sheet.next()) {
      if (sheet.starts("c")) {
        column = column(column);
        keep(cells.read(sheet, column, row), column, shown);
      }
    }
    return new SheetRow(number, shown);
  }

  /** The column of the cell that starts here. */
  private int column(int before) throws IOException {
    Optional<String> name = sheet.attribute("r");
    int column = name.map(CellName::column).orElse(before + 1);
    boolean here = name.isEmpty() || CellName.row(name.get()) == row;
    if (column <= before || column >= CellName.MOST_COLUMNS || !here) {
      throw WorkbookFault.damaged(name.orElse("row " + row));
    }
    return column;
  }

  private void keep(String value, int column, List<String> shown) {
    if (value.isEmpty()) {
      return;
    }
    while (shown.size() < column) {
      shown.add("");
    }
    shown.add(value);
    if (hiddenRow || hiddenColumns.get(column)) {
      oddities.hidden(column, row);
    }
  }
}
