package caryatid.recording.importer;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.recording.track.HeaderFacts;
import caryatid.recording.workbook.CellName;
import caryatid.remark.Argument;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The tables of a workbook's sheets, of which one holds the plate. */
final class SheetTables {
  /** How numbers and columns are separated in text is no matter in a sheet. */
  private static final Set<ImportFact> OF_TEXT =
      EnumSet.of(ImportFact.DELIMITER, ImportFact.DECIMAL_MARK);

  private final List<ReadSheet> sheets;
  private final StageMessages failed;

  /**
   * @param failed why the workbook could not be read; nothing where it could
   */
  SheetTables(List<ReadSheet> sheets, StageMessages failed) {
    this.sheets = List.copyOf(sheets);
    this.failed = failed;
  }

  /** All tables, sheet by sheet. */
  List<ParsedTable> all() {
    return sheets.stream().flatMap(sheet -> sheet.tables().value().stream()).toList();
  }

  /** The table that holds the plate, with the messages of its sheet. */
  Stages.Parsed parsed(ExportLayout layout) {
    return all().isEmpty() ? none() : chosen(layout);
  }

  private Stages.Parsed none() {
    StageMessages messages =
        sheets.stream()
            .filter(sheet -> !sheet.tables().messages().has(ImportProblem.EMPTY))
            .findFirst()
            .map(sheet -> sheet.odd(Optional.empty()).and(sheet.tables().messages()))
            .orElse(failed.clean() ? failed.withProblem(ImportProblem.EMPTY) : failed);
    return new Stages.Parsed(Optional.empty(), Optional.empty(), messages, Optional.empty());
  }

  private Stages.Parsed chosen(ExportLayout layout) {
    Outcome<Optional<ParsedTable>> choice =
        new TableChoice(layout.recording(), failed.file(), this::prefix).choose(all());
    ParsedTable shown = choice.value().orElse(all().get(0));
    ReadSheet sheet = of(shown);
    StageMessages read = sheet.odd(Optional.of(shown)).and(sheet.tables().messages());
    boolean shifted = Stages.shifted(read);
    StageMessages messages = shifted ? read : read.and(choice.messages());
    return new Stages.Parsed(
        shifted ? Optional.empty() : choice.value(),
        Optional.of(shown),
        messages.and(facts(sheet, shown, layout)),
        Optional.of(sheet));
  }

  private String prefix(ParsedTable table) {
    return CellName.sheet(of(table).sheet().name()) + "!";
  }

  private ReadSheet of(ParsedTable table) {
    return sheets.stream().filter(sheet -> sheet.holds(table)).findFirst().orElseThrow();
  }

  private StageMessages facts(ReadSheet sheet, ParsedTable shown, ExportLayout layout) {
    StageMessages named =
        StageMessages.none(failed.file())
            .withFact(
                ImportFact.SHEET,
                Basis.CONCLUDED,
                Argument.text(sheet.sheet().name()),
                Argument.count(sheets.size()))
            .and(new HeaderFacts(shown, layout).of(failed.file()).without(OF_TEXT));
    return all().size() == 1
        ? named
        : named.withFact(
            ImportFact.OTHER_TABLES, Basis.CONCLUDED, Argument.count(all().size() - 1));
  }
}
