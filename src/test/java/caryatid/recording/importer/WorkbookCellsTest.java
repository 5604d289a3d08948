package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;
import static caryatid.recording.importer.Exports.read;
import static caryatid.recording.workbook.MadeWorkbook.row;
import static caryatid.recording.workbook.MadeWorkbook.sample;
import static caryatid.recording.workbook.MadeWorkbook.stand;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.recording.workbook.MadeWorkbook;
import caryatid.remark.BadInput;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What cells of a workbook mean, and which are refused by their names. */
class WorkbookCellsTest {
  private static final PlateDescription USUAL = new Described().plate(plate()).get();

  private static NamedBytes sheet(String rows) {
    return new MadeWorkbook().sheet("Sheet1", rows).file();
  }

  /** A stand whose sixth row, line 7 of the sheet, is another. */
  private static NamedBytes with(String seventh) {
    return sheet(standWith(seventh));
  }

  private static String standWith(String seventh) {
    return stand().replace(sample(7, 5), seventh);
  }

  private static void assertStand(Recording recording) {
    assertThat(recording.timeS().size()).isEqualTo(12);
    assertThat(recording.rateHz()).isCloseTo(100, within(2e-3));
    assertThat(recording.plates().get(0).upN().orElseThrow().at(5)).isEqualTo(805);
    assertThat(recording.plates().get(0).copAnteriorMm().at(11)).isEqualTo(2);
  }

  @Test
  void aStandIsRead() throws BadInput {
    assertStand(read(sheet(stand()), USUAL));
  }

  @Test
  void aDecimalMarkOfTextExportsDoesNotMatter() throws BadInput {
    ExportLayout text = ExportLayout.UNSTATED.as(';', ',');
    assertStand(read(sheet(stand()), new Described().form(text).plate(plate()).get()));
  }

  @Test
  void sharedAndFormattedTextsAreNamesAsTheyAreShown() throws BadInput {
    NamedBytes export =
        new MadeWorkbook()
            .texts(
                "<t>Time\n(s)</t>",
                "<r><t>F</t></r><r><rPr><b/></rPr><t>z (N)</t></r><rPh><t>x</t></rPh>")
            .sheet(
                "S",
                row(
                        1,
                        "<c t=\"s\"><v>0</v></c>",
                        "<c t=\"s\"><v>1</v></c>",
                        "CoPx (mm)",
                        "CoPy (mm)")
                    + stand(2, 12))
            .file();
    assertStand(read(export, USUAL));
  }

  /** Validation: day 46085 is 2026-03-04 in spreadsheets, by the calendar: 126 years, 32 leap. */
  @Test
  void timesAreReadByTheirFormatFromEitherStart() throws BadInput {
    assertStand(read(clocked(new MadeWorkbook(), 46085), USUAL));
    assertStand(read(clocked(new MadeWorkbook().from1904(), 46085 - 1462), USUAL));
    assertThat(ExportDate.of(clocked(new MadeWorkbook(), 46085)))
        .containsExactly(LocalDate.of(2026, 3, 4));
    assertThat(ExportDate.of(clocked(new MadeWorkbook().from1904(), 46085 - 1462)))
        .containsExactly(LocalDate.of(2026, 3, 4));
  }

  private static NamedBytes clocked(MadeWorkbook workbook, int day) {
    StringBuilder rows = new StringBuilder(row(1, "Time", "Fz (N)", "CoPx (mm)", "CoPy (mm)"));
    for (int i = 0; i < 12; i++) {
      double days = day + (10.25 * 3600 + i / 100.0) / 86_400;
      rows.append(
          row(
              2 + i,
              "<c s=\"1\"><v>" + days + "</v></c>",
              Integer.toString(800 + i),
              Integer.toString(10 + i),
              Integer.toString(-20 + 2 * i)));
    }
    return workbook.formats("d\\.m\\.yyyy\\ hh:mm:ss.000").sheet("S", rows.toString()).file();
  }

  @Test
  void aNumberThatBecameADateIsRefused() {
    assertRefused(
        new MadeWorkbook()
            .formats("[$-407]d\\.\\ mmm")
            .sheet("Sheet1", standWith(row(7, "0.05", "<c s=\"1\"><v>46143</v></c>", "15", "-10")))
            .file(),
        USUAL,
        "stand.xlsx Sheet1!B7: expected a number, found '2026-05-01'. Empty the cell or export"
            + " again.");
  }

  @Test
  void anErrorIsRefused() {
    assertRefused(
        with(row(7, "0.05", "805", "<c t=\"e\"><f>NA()</f><v>#N/A</v></c>", "-10")),
        USUAL,
        "stand.xlsx Sheet1!C7: expected a number, found '#N/A'. Empty the cell or export again.");
  }

  @Test
  void digitsAsTextAreRefused() {
    assertRefused(
        with(row(7, "0.05", "<c t=\"inlineStr\"><is><t>805</t></is></c>", "15", "-10")),
        USUAL,
        "stand.xlsx Sheet1!B7: expected a number, found digits that are stored as text. Such cells"
            + " in this column: 1. Convert them to numbers, or save the sheet as text (CSV).");
  }

  @Test
  void theValueOfAFormulaIsTakenAndOneWithoutIsRefused() throws BadInput {
    assertStand(read(with(row(7, "0.05", "<c><f>B6+1</f><v>805</v></c>", "15", "-10")), USUAL));
    assertRefused(
        with(row(7, "0.05", "<c><f>B6+1</f></c>", "15", "-10")),
        USUAL,
        "stand.xlsx Sheet1!B7: expected a number, found a formula without its value. Such cells: 1."
            + " Open the workbook in a spreadsheet program and save it again.");
  }

  @Test
  void hiddenCellsAreRefused() {
    String sentence =
        ": this cell is in a hidden row, column or sheet. Such cells: %d. Show or delete them and"
            + " save the workbook again.";
    assertRefused(
        with(sample(7, 5).replace("r=\"7\"", "r=\"7\" hidden=\"1\"")),
        USUAL,
        "stand.xlsx Sheet1!A7" + sentence.formatted(4));
    String columns = "<cols><col min=\"2\" max=\"2\" hidden=\"1\"/></cols>";
    assertRefused(
        new MadeWorkbook().sheet("Sheet1", "", columns, stand(), "").file(),
        USUAL,
        "stand.xlsx Sheet1!B1" + sentence.formatted(13));
    assertRefused(
        new MadeWorkbook().sheet("One's own", "state=\"veryHidden\"", "", stand(), "").file(),
        USUAL,
        "stand.xlsx 'One''s own'!A1" + sentence.formatted(1));
  }

  @Test
  void mergedCellsAreRefusedAmongTheNumbersAlone() throws BadInput {
    String merged = "<mergeCells><mergeCell ref=\"%s\"/></mergeCells>";
    String below =
        row(1, "An invented stand") + row(2, "Time (s)", "Fz (N)", "CoPx (mm)", "CoPy (mm)");
    assertStand(
        read(
            new MadeWorkbook()
                .sheet("S", "", "", below + stand(3, 12), merged.formatted("A1:D1"))
                .file(),
            USUAL));
    assertRefused(
        new MadeWorkbook()
            .sheet("S", "", "", below + stand(3, 12), merged.formatted("C4:C5"))
            .file(),
        USUAL,
        "stand.xlsx S!C4: expected one cell for each column, found merged cells. Unmerge them and"
            + " save the workbook again.");
  }

  @Test
  void whichSheetIsAskedAndAnsweredByItsNumber() throws BadInput {
    NamedBytes export =
        new MadeWorkbook()
            .sheet("Notes", row(1, "An invented wearer", "K7"))
            .sheet("Shoe", stand())
            .sheet("Empty", "")
            .sheet("No shoe", stand().replace("<v>805</v>", "<v>905</v>"))
            .file();
    assertRefused(
        export,
        USUAL,
        "stand.xlsx: holds 2 recordings, in lines Shoe!2-13, 'No shoe'!2-13. Say which is meant;"
            + " add to the plate description, with its number for unknown: export: {recording:"
            + " unknown}");
    Recording second = read(export, new Described().recording(2).plate(plate()).get());
    assertThat(second.plates().get(0).upN().orElseThrow().at(5)).isEqualTo(905);
  }

  @Test
  void emptyRowsAboveAndBetweenKeepTheirNumbers() {
    assertRefused(
        sheet(
            row(4, "Time (s)", "Fz (N)", "CoPx (mm)", "CoPy (mm)")
                + stand(7, 6)
                + row(14, "0.06", "x", "16", "-8")),
        USUAL,
        "stand.xlsx Sheet1!B14: expected a number, found 'x'. Empty the cell or export again.");
  }
}
