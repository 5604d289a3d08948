package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import caryatid.demo.DemoPhotograph;
import caryatid.format.Json;
import caryatid.sheet.yaml.InputValue;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Base64;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs can make a report too large for a bundle. */
class LargeReportTest extends StubSending {
  /** Of nothing but chance, which no format makes smaller: 7.2 MB. */
  private void photograph(int seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    BufferedImage picture = new BufferedImage(1600, 1500, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 1600 * 1500; i++) {
      picture.setRGB(i % 1600, i / 1600, random.nextInt(1 << 24));
    }
    Files.write(folder.resolve("foot.png"), DemoPhotograph.written(picture, "png"));
    fitting.add(
        "note",
        "14:0" + seed,
        "text=socket",
        "--keep",
        "photograph=" + fitting.file("foot.png"),
        "--original",
        "drop");
  }

  @Test
  void oneOf15MbIsSentAndALargerOneIsNotBundled() throws IOException {
    photograph(1);
    photograph(2);
    Run sent = send();
    assertThat(sent.err()).isEmpty();
    assertThat(sent.out()).contains("All were read back and compared.");
    assertThat(system.stored.toString()).hasSizeBetween(18_000_000, 20_000_000);
    photograph(3);
    Run refused = fitting.bundle("large.json");
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err())
        .isEqualTo(
            "K7-right: the report has 22 MB, but a bundle holds at most 15 MB. Photographs make it"
                + " so large: correct their entries with smaller ones, or give the report as a file"
                + " (record report).\n");
    assertThat(folder.resolve("large.json")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({"15000000, 15", "15000001, 16"})
  void megabytesAreRoundedUp(int bytes, int megabytes) {
    assertThat(ReportDocument.megabytes(bytes)).isEqualTo(megabytes);
  }

  /** The largest report that fits is read back. */
  @Test
  void theLargestReportIsReadAsJson() throws IOException {
    String data = Base64.getEncoder().encodeToString(new byte[ReportDocument.MOST_MB * 1_000_000]);
    InputValue read =
        Json.read(("{\"data\":\"" + data + "\"}").getBytes(StandardCharsets.US_ASCII), "it");
    assertThat(FhirTree.text(read, "data").orElseThrow()).hasSize(20_000_000);
  }
}
