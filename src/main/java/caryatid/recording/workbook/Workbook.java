package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** A workbook: its sheets, and each one's text. */
public final class Workbook {
  /** Bytes of a file at the most; a million rows of eight columns are about as large. */
  public static final int MOST_BYTES = 64 << 20;

  private final int bytes;
  private final WorkbookZip zip;
  private final SheetList list;
  private final SharedTexts texts;
  private final CellStyles styles;

  private Workbook(byte[] content) throws IOException {
    this.bytes = content.length;
    this.zip = new WorkbookZip(content);
    this.list = new SheetList(zip);
    Optional<String> shared = list.part("sharedStrings");
    Optional<String> looks = list.part("styles");
    this.texts = shared.isPresent() ? SharedTexts.of(part(shared.get())) : new SharedTexts();
    this.styles = looks.isPresent() ? CellStyles.of(part(looks.get())) : new CellStyles();
  }

  private XmlPart part(String name) throws IOException {
    return new XmlPart(name, zip.open(name));
  }

  /** Whether a file is a zip, which a workbook is. */
  public static boolean recognises(byte[] start) {
    return start.length > 3 && start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4;
  }

  /**
   * Opens a workbook.
   *
   * @param content all of the file
   * @throws WorkbookFault if it is none, or larger than is read
   * @throws IOException if its zip cannot be read
   */
  public static Workbook open(byte[] content) throws IOException {
    if (content.length > MOST_BYTES) {
      throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
    }
    return new Workbook(content);
  }

  /** The sheets of cells, in the order of their tabs. */
  public List<Sheet> sheets() {
    return list.sheets();
  }

  /**
   * A sheet as UTF-8 text, tabs between the cells, a line for each row; read while it is asked for.
   *
   * @param oddities takes what the text does not show; complete at the text's end
   */
  public InputStream text(Sheet sheet, SheetOddities oddities) throws IOException {
    SerialDate dates = new SerialDate(list.from1904());
    CellReader cells = new CellReader(texts, styles, dates, oddities);
    SheetRows rows = new SheetRows(part(sheet.part()), cells, oddities);
    return new SheetLines(rows, 100L * bytes + (1 << 20));
  }
}
