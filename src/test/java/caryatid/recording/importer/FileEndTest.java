package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.BadInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

/** Files that are packed, or end where no row ends. Validation by construction. */
class FileEndTest {
  private static final String COP = "CoPx (mm),CoPy (mm)";

  private static final String COP_AND_FORCE = "Fz (N)," + COP;

  /** A last number without a line end behind it, and with fewer digits than all others. */
  @Test
  void aLastNumberThatSeemsCutIsLeftOut() throws BadInput {
    String rows = COP_AND_FORCE + "\n" + "800.5,1.25,20.75\n".repeat(20);
    Recording cut = Exports.readAt100Hz(Exports.text(rows + "800.5,1.25,2"));
    assertThat(cut.plates().get(0).usable().count()).isEqualTo(20);
    assertThat(Exports.remarks(cut))
        .contains(
            "The file ends without a line end, and its last number, 2 in line 22, has fewer digits"
                + " than the others in its column: it seems cut off and is left out. The file may"
                + " have been copied while it was being written.");
    for (String whole : List.of("20.75", "19.50", "NaN")) {
      assertThat(Exports.readAt100Hz(Exports.text(rows + "800.5,1.25," + whole)).remarks())
          .noneMatch(r -> r.topic() == RecordingRemark.LAST_CUT);
    }
    assertThat(Exports.readAt100Hz(Exports.text(rows + "800.5,1.25,2\n")).remarks())
        .noneMatch(r -> r.topic() == RecordingRemark.LAST_CUT);
  }

  /** Numbers whose trailing zeros are left out are not cut. */
  @Test
  void numbersOfManyLengthsAreNotTakenForCut() throws BadInput {
    String rows = COP_AND_FORCE + "\n" + "800.5,1.25,20.75\n800,1,21\n".repeat(20);
    assertThat(Exports.readAt100Hz(Exports.text(rows + "800.5,1.25,2")).remarks())
        .noneMatch(r -> r.topic() == RecordingRemark.LAST_CUT);
  }

  @Test
  void aLastTimeThatSeemsCutIsRefused() {
    String rows = "Fz (N),CoPx (mm),CoPy (mm),Time (s)\n";
    for (int i = 0; i < 20; i++) {
      rows += String.format(Locale.ROOT, "800,1,2,%.3f%n", i / 100.0);
    }
    assertThat(Exports.refusals(Exports.text(rows + "800,1,2,0.2"), new Described().get()))
        .containsExactly(
            "stand.csv line 22, column Time (s): expected a time, found '0.2'. Delete the row or"
                + " export again.");
  }

  @Test
  void aGzippedFileIsUnpacked() throws BadInput, IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(packed)) {
      out.write((COP_AND_FORCE + "\n800,1,2\n800,1,2\n").getBytes(StandardCharsets.UTF_8));
    }
    byte[] bytes = packed.toByteArray();
    Recording recording = Exports.readAt100Hz(NamedBytes.of("stand.csv.gz", bytes));
    assertThat(recording.plates().get(0).copRightMm().orElseThrow().at(1)).isEqualTo(1);
    assertThat(recording.provenance().bytes()).isEqualTo(bytes.length);
  }

  @Test
  void aGzippedFileThatIsCutIsRefused() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(packed)) {
      out.write((COP_AND_FORCE + "\n800,1,2\n800,1,2\n").getBytes(StandardCharsets.UTF_8));
    }
    byte[] cut = java.util.Arrays.copyOf(packed.toByteArray(), packed.size() - 12);
    assertThat(
            Exports.refusals(NamedBytes.of("stand.csv.gz", cut), new Described().rate(100).get()))
        .singleElement()
        .asString()
        .isEqualTo(
            "stand.csv.gz: expected a complete gz-compressed file, found one that ends"
                + " early or is damaged. Copy it again, or compress the export again.");
  }

  /** FIPS 180-4, the 512-bit digest of "abc", as NIST's example prints it (from memory). */
  @Test
  void theBytesAreCountedAndDigested() throws BadInput {
    Provenance provenance =
        Provenance.of(NamedBytes.of("abc", "abc".getBytes(StandardCharsets.UTF_8)));
    assertThat(provenance.bytes()).isEqualTo(3);
    assertThat(provenance.sha512())
        .isEqualTo(
            "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a"
                + "2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f");
  }
}
