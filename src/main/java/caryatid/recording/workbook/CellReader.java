package caryatid.recording.workbook;

import java.io.IOException;

/** What a cell shows, as text that a table's reader takes. */
final class CellReader {
  private final SharedTexts texts;
  private final CellStyles styles;
  private final SerialDate dates;
  private final SheetOddities oddities;

  CellReader(SharedTexts texts, CellStyles styles, SerialDate dates, SheetOddities oddities) {
    this.texts = texts;
    this.styles = styles;
    this.dates = dates;
    this.oddities = oddities;
  }

  /**
   * What the cell that starts here shows; nothing where it is empty.
   *
   * @param column from 0
   * @param row from 1
   */
  String read(XmlPart sheet, int column, int row) throws IOException {
    String type = sheet.attribute("t").orElse("n");
    String style = sheet.attribute("s").orElse("");
    String value = "";
    boolean valued = false;
    boolean formula = false;
    while (!sheet.ends("c") && sheet.next()) {
      if (sheet.starts("f")) {
        formula = true;
      } else if (sheet.starts("v")) {
        value = sheet.text();
        valued = type.equals("str") || !value.isBlank();
      } else if (sheet.starts("is")) {
        value = SharedTexts.runs(sheet, "is");
        valued = true;
      }
    }
    if (formula && !valued) {
      oddities.formula(column, row);
    }
    return valued ? shown(type, style, value, column, row) : "";
  }

  private String shown(String type, String style, String value, int column, int row)
      throws IOException {
    return switch (type) {
      case "n" -> number(style, value.strip(), column, row);
      case "s" -> text(texts.at(value), column, row);
      case "str", "inlineStr" -> text(value, column, row);
      case "b" -> value.strip().equals("1") ? "TRUE" : "FALSE";
      case "e", "d" -> value.strip();
      default -> throw WorkbookFault.damaged("t=" + type);
    };
  }

  private String number(String style, String value, int column, int row) throws IOException {
    if (value.chars().anyMatch(c -> "+-.0123456789eE".indexOf(c) < 0)) {
      throw WorkbookFault.damaged(CellName.letters(column) + row);
    }
    CellStyles.ShownAs shown = styles.of(style);
    return shown == CellStyles.ShownAs.NUMBER ? value : dates.text(value, shown);
  }

  private String text(String text, int column, int row) {
    String oneLine = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    boolean digits = !oneLine.isEmpty() && oneLine.chars().allMatch(CellReader::inNumbers);
    if (digits && oneLine.chars().anyMatch(Character::isDigit)) {
      oddities.textNumber(column, row);
    }
    return oneLine.indexOf('"') < 0 ? oneLine : '"' + oneLine.replace("\"", "\"\"") + '"';
  }

  private static boolean inNumbers(int character) {
    return "+-.,'eE \u00a0\u202f".indexOf(character) >= 0 || Character.isDigit(character);
  }
}
