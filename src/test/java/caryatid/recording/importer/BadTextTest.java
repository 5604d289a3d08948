package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads of a file whose text or rows are damaged; each sentence whole. */
class BadTextTest {
  private static final PlateDescription USUAL = Described.usual();

  @Test
  void anEmptyFile() {
    assertRefused(
        Exports.text(""),
        USUAL,
        "stand.csv: expected a force plate's text export, found an empty file. Export again.");
  }

  @Test
  void namesWithoutRows() {
    assertRefused(
        Exports.of("Subject: K7", "Time,Fz,CoPx,CoPy"),
        USUAL,
        "stand.csv line 2: expected rows of numbers below the names, found none. Export again with"
            + " the sample values included, as plain numbers without units.");
  }

  @Test
  void proseIsNoTable() {
    assertRefused(
        Exports.of("Dear colleague", "the stand went well."),
        USUAL,
        "stand.csv: expected a table of numbers with two columns or more, found none in 2 lines."
            + " Export again with the sample values included.");
  }

  @Test
  void bytesThatAreNoText() {
    assertRefused(
        NamedBytes.of("stand.xls", new byte[] {(byte) 0xd0, (byte) 0xcf, 0, 0, 0, 1, 2, 3}),
        USUAL,
        "stand.xls: expected text, found bytes that no text has. Export as text (CSV, tab or"
            + " semicolon separated) instead of the program's own format.");
  }

  @Test
  void textInACell() {
    assertRefused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,abc,1,2", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3, column Fz: expected a number, found 'abc'. Empty the cell or export"
            + " again.");
  }

  @Test
  void aRaggedRow() {
    assertRefused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3: expected 4 cells, found 3. Delete the row or export again.");
  }

  @Test
  void aFileThatEndsWithinARow() {
    assertRefused(
        Exports.text("Time,Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n0.02,80"),
        USUAL,
        "stand.csv line 4: the file ends within a row: expected 4 cells, found 2. It may still be"
            + " being written; wait and export again, or delete the row.");
  }

  @Test
  void aLineThatIsNoRow() {
    assertRefused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "pause", "0.01,800,1,2", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3: expected a row of numbers as above and below, found 'pause'. Delete the"
            + " line if it is no sample, or export again.");
  }

  /** A quote that opens and never closes may have taken a number's first digit with it. */
  @Test
  void aQuoteThatIsNotClosed() {
    assertRefused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1,\"2", "0.02,800,1,2", "0.03,800,1,2"),
        USUAL,
        "stand.csv line 3: expected a row of numbers as above and below, found '0.01,800,1,\"2'."
            + " Delete the line if it is no sample, or export again.");
  }

  @Test
  void anotherDecimalMark() {
    assertRefused(
        Exports.of("Time;Fz;CoPx;CoPy", "0.00;800.5;1;2", "0.01;800,5;1;2", "0.02;800.5;1;2"),
        new Described()
            .form(
                new ExportLayout(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of('.'),
                    java.util.OptionalInt.empty(),
                    java.util.OptionalInt.empty(),
                    List.of(),
                    java.util.OptionalInt.empty()))
            .plate(plate())
            .get(),
        "stand.csv line 3, column Fz: expected a point as decimal mark as in the other rows, found"
            + " '800,5'. Correct the cell or export again.");
  }

  @Test
  void commaAsDelimiterAndAsDecimalMark() {
    assertRefused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0,00,800,5,1,0,2,0", "0,01,800,6,1,0,2,0", "0,02,800,6,1,0,2,0"),
        USUAL,
        "stand.csv line 2: expected as many names as cells in a row, found 4 names above 8 cells:"
            + " the comma seems to be both delimiter and decimal mark. Export again with a decimal"
            + " point, or with semicolon or tab between the cells.");
  }

  @Test
  void commasThatMayPartThousands() {
    assertRefused(
        Exports.of(
            "Frame;Fz;CoPx;CoPy",
            "1;1,800;1,250;2,125",
            "2;1,801;1,251;2,126",
            "3;1,802;1,252;2,127"),
        new Described().rate(100).plate(plate()).get(),
        "stand.csv line 2: the commas, as in '1,800', may be decimal marks or thousands separators."
            + " Add to the plate description: export: {decimal-mark: unknown}, with comma for"
            + " unknown, or with point if they separate thousands.");
  }

  /** Validation: byte 2 of a C3D file is 50 hex (The C3D File Format, user guide, header). */
  @Test
  void aMotionFileOfNoProcessorIsRefused() {
    byte[] file = new byte[1024];
    java.util.Arrays.fill(file, (byte) 'x');
    file[0] = 2;
    file[1] = 0x50;
    assertRefused(
        NamedBytes.of("stand.c3d", file),
        new Described().get(),
        "stand.c3d: the C3D file makes no sense at byte 515. Save it again in the laboratory's"
            + " program, or export the force plates as text (CSV).");
  }

  @Test
  void severalRecordingsInOneFile() {
    String one = "Time,Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n0.02,800,1,2\n";
    assertRefused(
        Exports.text(one + one),
        USUAL,
        "stand.csv: holds 2 recordings, in lines 2-4, 6-8. Say which is meant; add to"
            + " the plate description, with its number for unknown: export: {recording:"
            + " unknown}");
  }

  @Test
  void allProblemsAreListedUpToTheCap() {
    NamedBytes export = Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,x,1,2", 60);
    List<String> refusals = Exports.refusals(export, USUAL);
    assertThat(refusals).hasSize(BadInput.CAP);
    assertThat(refusals.get(0)).startsWith("stand.csv line 2, column Fz: ");
    assertThat(refusals.get(49)).startsWith("stand.csv line 51, column Fz: ");
  }

  @Test
  void aFolderInPlaceOfAFile(@TempDir Path folder) {
    NamedBytes export =
        new NamedBytes() {
          @Override
          public String name() {
            return "stands";
          }

          @Override
          public InputStream open() throws IOException {
            return Files.newInputStream(folder);
          }
        };
    assertRefused(
        export,
        USUAL,
        "stands: cannot be read (Is a directory). Check that it is there, is a file and may be"
            + " opened.");
  }
}
