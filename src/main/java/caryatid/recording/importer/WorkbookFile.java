package caryatid.recording.importer;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.table.ColumnMapping;
import caryatid.recording.table.ExportText;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.recording.workbook.Sheet;
import caryatid.recording.workbook.SheetOddities;
import caryatid.recording.workbook.Workbook;
import caryatid.recording.workbook.WorkbookFault;
import caryatid.remark.Argument;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A workbook's first stage: the tables of its sheets, each read as text is. */
final class WorkbookFile {
  private static final int START = 4;

  private final String file;
  private final byte[] content;

  private WorkbookFile(String file, byte[] content) {
    this.file = file;
    this.content = content;
  }

  /** The file, if its first bytes are those of a workbook. */
  static Optional<WorkbookFile> of(NamedBytes export) {
    try {
      return Workbook.recognises(export.readAtMost(START))
          ? Optional.of(new WorkbookFile(export.name(), export.readAtMost(Workbook.MOST_BYTES + 1)))
          : Optional.empty();
    } catch (IOException e) {
      // The text's reader says why it cannot be read.
      return Optional.empty();
    }
  }

  /** The tables of all sheets, and of which sheet each is. */
  SheetTables tables(ExportLayout layout, Function<HeaderBlock, ColumnMapping> planner) {
    StageMessages nothing = StageMessages.none(file);
    try {
      Workbook workbook = Workbook.open(content);
      List<ReadSheet> read = new ArrayList<>();
      for (Sheet sheet : workbook.sheets()) {
        read.add(sheet(workbook, sheet, layout, planner));
      }
      return new SheetTables(read, nothing);
    } catch (WorkbookFault e) {
      return new SheetTables(List.of(), nothing.withProblem(e.problem(), e.arguments()));
    } catch (IOException e) {
      return new SheetTables(
          List.of(), nothing.withProblem(ImportProblem.WORKBOOK_DAMAGED, Argument.text("zip")));
    }
  }

  /**
   * How the text of each sheet begins, one after the other; nothing of a workbook that cannot be
   * read.
   *
   * @param most bytes of each at the most
   */
  byte[] starts(int most) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    try {
      Workbook workbook = Workbook.open(content);
      for (Sheet sheet : workbook.sheets()) {
        try (InputStream text = workbook.text(sheet, new SheetOddities())) {
          all.write(text.readNBytes(most));
          all.write('\n');
        }
      }
      return all.toByteArray();
    } catch (IOException e) {
      return new byte[0];
    }
  }

  private ReadSheet sheet(
      Workbook workbook,
      Sheet sheet,
      ExportLayout layout,
      Function<HeaderBlock, ColumnMapping> planner)
      throws IOException {
    SheetOddities oddities = new SheetOddities();
    try (InputStream text = workbook.text(sheet, oddities)) {
      Outcome<List<ParsedTable>> tables = ExportText.tabbed(text, layout, planner, file);
      // Merged cells stand behind the rows; a table with many problems is not read to its end.
      text.transferTo(OutputStream.nullOutputStream());
      return new ReadSheet(sheet, tables, oddities);
    }
  }
}
