package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;
import static caryatid.recording.importer.Exports.refusals;
import static caryatid.recording.workbook.MadeWorkbook.row;
import static caryatid.recording.workbook.MadeWorkbook.stand;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.workbook.MadeWorkbook;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Workbooks that are none, damaged, or made to do harm. */
class HostileWorkbookTest {
  private static final PlateDescription USUAL = new Described().plate(plate()).get();

  private static final String LARGE =
      "stand.xlsx: the workbook is larger than what is read: 64 MB packed, 100 times that"
          + " unpacked, 1000 columns. Delete what is not needed, or save the sheet as text (CSV).";

  private static String senseless(String where) {
    return "stand.xlsx: the workbook makes no sense at "
        + where
        + ". Open it in a spreadsheet program and save it again, or save the sheet as text (CSV).";
  }

  private static final String OTHER =
      "stand.xlsx: expected text, C3D or .xlsx, found an older or protected spreadsheet or another"
          + " packed file. Open it and save the sheet as .xlsx without a password, or as text"
          + " (CSV, tab or semicolon separated).";

  private static MadeWorkbook made() {
    return new MadeWorkbook().sheet("Sheet1", stand());
  }

  private static NamedBytes bytes(byte[] bytes) {
    return NamedBytes.of("stand.xlsx", bytes);
  }

  /** Validation: the first bytes of a compound file (MS-CFB 2.2): older or encrypted workbooks. */
  @Test
  void anOlderOrProtectedWorkbookIsToBeSavedAnew() {
    byte[] compound = new byte[512];
    System.arraycopy(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0}, 0, compound, 0, 4);
    assertRefused(bytes(compound), USUAL, OTHER);
  }

  @Test
  void anotherZipIsNoWorkbook() {
    assertRefused(made().part("_rels/.rels", "<Relationships/>").file(), USUAL, OTHER);
    assertRefused(made().part("xl/workbook.xml", "<document/>").file(), USUAL, OTHER);
  }

  @Test
  void aZipThatIsCutIsRefused() {
    byte[] whole = made().bytes();
    assertRefused(bytes(Arrays.copyOf(whole, 40)), USUAL, senseless("zip"));
    for (int length = 4; length < whole.length; length += 7) {
      refusals(bytes(Arrays.copyOf(whole, length)), USUAL);
    }
  }

  @Test
  void aDocumentTypeIsRefusedAndNothingOfItIsRead() {
    String entities =
        "<!DOCTYPE sst [<!ENTITY a SYSTEM \"file:///etc/hostname\"><!ENTITY b \"&a;&a;\">]>";
    assertRefused(
        made()
            .texts()
            .part("xl/sharedStrings.xml", entities + "<sst><si><t>&b;</t></si></sst>")
            .file(),
        USUAL,
        senseless("xl/sharedStrings.xml"));
  }

  @Test
  void whatUnpacksToAHundredTimesItsSizeIsRefused() {
    String blanks = " ".repeat(1 << 15) + "<x/>";
    assertRefused(
        made().part("xl/worksheets/sheet9.xml", "<x>" + blanks.repeat(1 << 10) + "</x>").file(),
        USUAL,
        LARGE);
  }

  @Test
  void oneEndlessPieceOfMarkupIsRefused() {
    assertRefused(
        made().part("xl/styles.xml", "<x a=\"" + "y".repeat(3 << 20) + "\"/>").file(),
        USUAL,
        LARGE);
  }

  @Test
  void aSheetThatIsAlmostEmptyCostsNoMemory() {
    String far = row(1, "a") + "<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>";
    assertRefused(new MadeWorkbook().sheet("S", far).file(), USUAL, LARGE);
    String low = row(1, "1", "2") + row(1_048_576, "3", "4");
    assertThat(refusals(new MadeWorkbook().sheet("S", low).file(), USUAL)).isNotEmpty();
  }

  @Test
  void rowsAndCellsOutOfOrderAreRefused() {
    String twice = row(5, "1", "2") + row(5, "1", "2");
    assertRefused(new MadeWorkbook().sheet("S", twice).file(), USUAL, senseless("row 5"));
    String back = "<row r=\"1\"><c r=\"B1\"><v>1</v></c><c r=\"A1\"><v>1</v></c></row>";
    assertRefused(new MadeWorkbook().sheet("S", back).file(), USUAL, senseless("A1"));
  }

  @Test
  void partsOutsideTheFileAreNotSought() {
    assertRefused(
        made()
            .part(
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id=\"s1\" TargetMode=\"External\""
                    + " Type=\"x/worksheet\" Target=\"file:///etc/hostname\"/></Relationships>")
            .file(),
        USUAL,
        senseless("Sheet1"));
    assertThat(refusals(made().part("../../escape.xml", "<x/>").file(), USUAL)).isEmpty();
  }

  @Test
  void aPartTwiceIsRefused() {
    assertRefused(
        made().part("XL/Workbook.xml", "<workbook/>").file(), USUAL, senseless("XL/Workbook.xml"));
  }

  /** Every refusal has words; whatever else comes out is a recording. */
  @Test
  void changedBytesBreakNothing() {
    byte[] whole = made().texts("<t>x</t>").formats("d").bytes();
    Random random = new Random(20);
    for (int i = 0; i < 300; i++) {
      byte[] changed = whole.clone();
      changed[4 + random.nextInt(whole.length - 4)] = (byte) random.nextInt();
      refusals(bytes(changed), USUAL);
    }
  }

  @Test
  void changedCharactersBreakNothing() {
    char[] rows = stand().toCharArray();
    Random random = new Random(21);
    for (int i = 0; i < 300; i++) {
      char[] changed = rows.clone();
      changed[random.nextInt(rows.length)] = (char) (32 + random.nextInt(95));
      refusals(new MadeWorkbook().sheet("S", String.valueOf(changed)).file(), USUAL);
    }
  }
}
