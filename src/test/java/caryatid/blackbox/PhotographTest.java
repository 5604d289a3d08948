package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoPhotograph;
import caryatid.demo.PdfText;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photographs are kept upright, as the picture alone, and shown in the record's report. */
class PhotographTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void start() {
    clinic = new Clinic(folder.resolve("there"));
    clinic.start();
  }

  private Path written(BufferedImage picture, String format) throws IOException {
    Path file = folder.resolve("foot." + format);
    return Files.write(file, DemoPhotograph.written(picture, format));
  }

  private Path turned(BufferedImage picture, int orientation) throws IOException {
    return Files.write(folder.resolve("foot.jpg"), DemoPhotograph.turned(picture, orientation));
  }

  private Run keep(Path file, String... more) {
    List<String> all =
        Stream.concat(
                Stream.of("note", "text=socket", "--by", "AB", "--keep", "photograph=" + file),
                Stream.of(more))
            .toList();
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  private List<Path> kept(String start) throws IOException {
    try (Stream<Path> files = Files.walk(clinic.folder())) {
      return files.filter(f -> f.getFileName().toString().startsWith(start)).toList();
    }
  }

  private static void show(BufferedImage kept, int width, int height, String corners) {
    assertThat(kept.getWidth()).isEqualTo(width);
    assertThat(kept.getHeight()).isEqualTo(height);
    StringBuilder seen = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      seen.append(
          letter(
              new Color(
                  kept.getRGB(width / 4 + i % 2 * width / 2, height / 4 + i / 2 * height / 2))));
    }
    assertThat(seen).hasToString(corners);
  }

  private static char letter(Color colour) {
    if (colour.getRed() > 128) {
      return 'R';
    } else if (colour.getGreen() > 128) {
      return 'G';
    }
    return colour.getBlue() > 128 ? 'B' : 'K';
  }

  /** Where each corner goes follows from the table of Exif 2.32, tag Orientation. */
  @ParameterizedTest
  @CsvSource({
    "1, 200, 120, RGBK",
    "2, 200, 120, GRKB",
    "3, 200, 120, KBGR",
    "4, 200, 120, BKRG",
    "5, 120, 200, RBGK",
    "6, 120, 200, BRKG",
    "7, 120, 200, KGBR",
    "8, 120, 200, GKRB",
    "9, 200, 120, RGBK"
  })
  void aPhotographIsTurnedUprightAndKeptWithoutWhatTheCameraWrote(
      int orientation, int width, int height, String corners) throws IOException {
    Run run = keep(turned(DemoPhotograph.corners(200, 120), orientation), "--original", "drop");
    assertThat(run.err()).isEmpty();
    assertThat(kept("photograph-foot.jpg")).hasSize(1);
    byte[] bytes = Files.readAllBytes(kept("photograph-foot.jpg").get(0));
    assertThat(new String(bytes, StandardCharsets.ISO_8859_1))
        .doesNotContain("Exif", DemoPhotograph.SERIAL, "E13.4");
    File file = kept("photograph-foot.jpg").get(0).toFile();
    show(ImageIO.read(file), width, height, corners);
    try (Stream<Path> all = Files.walk(clinic.folder())) {
      for (Path each : all.filter(Files::isRegularFile).toList()) {
        assertThat(Files.readString(each, StandardCharsets.ISO_8859_1))
            .doesNotContain(DemoPhotograph.SERIAL);
      }
    }
  }

  @Test
  void theOriginalIsKeptByteForByteWhereThatIsMeant() throws IOException {
    Path original = turned(DemoPhotograph.corners(200, 120), 6);
    assertThat(keep(original, "--original", "keep").err()).isEmpty();
    assertThat(kept("other-foot.jpg").get(0)).hasSameBinaryContentAs(original);
    assertThat(kept("photograph-foot.jpg")).hasSize(1);
  }

  @Test
  void whatBecomesOfTheOriginalHasToBeSaid() throws IOException {
    Path original = turned(DemoPhotograph.corners(200, 120), 1);
    assertThat(keep(original).err())
        .isEqualTo(
            original
                + ": a photograph's file may hold the place, the time and a camera's serial number;"
                + " the record keeps the picture without them. Say what becomes of the original:"
                + " --original drop, or --original keep to keep it as well.\n");
    assertThat(kept("photograph")).isEmpty();
  }

  @Test
  void aPngStaysOneAndALargePictureIsMadeSmaller() throws IOException {
    assertThat(keep(written(DemoPhotograph.corners(4000, 1000), "png"), "--original", "drop").err())
        .isEmpty();
    show(ImageIO.read(kept("photograph-foot.png").get(0).toFile()), 1600, 400, "RGBK");
  }

  @ParameterizedTest
  @ValueSource(strings = {"no picture", ""})
  void whatIsNoPictureIsRefused(String text) throws IOException {
    Path file = folder.resolve("foot.jpg");
    Files.writeString(file, text);
    assertThat(keep(file, "--original", "drop").err())
        .isEqualTo(
            file
                + ": expected a photograph as JPEG or PNG, found something else. Save it as JPEG or"
                + " PNG.\n");
  }

  @Test
  void aPictureThatWasCutIsRefused() throws IOException {
    byte[] png = Files.readAllBytes(written(DemoPhotograph.corners(200, 120), "png"));
    Path file = folder.resolve("foot.png");
    Files.write(file, java.util.Arrays.copyOf(png, 60));
    assertThat(keep(file, "--original", "drop").err())
        .startsWith(file + ": the photograph cannot be read (");
    assertThat(kept("photograph")).isEmpty();
  }

  @Test
  void theReportShowsThePictureWithItsEntry() throws IOException {
    keep(turned(DemoPhotograph.corners(200, 120), 6), "--original", "drop");
    Path report = folder.resolve("record.pdf");
    assertThat(clinic.record("report", "K7-right", "--out", report.toString()).err()).isEmpty();
    byte[] pdf = Files.readAllBytes(report);
    assertThat(PdfText.running(pdf)).contains("Photographs", "Entry 2, ", "foot.jpg");
    int pictures = 0;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getXObjectNames()) {
          pictures += page.getResources().isImageXObject(name) ? 1 : 0;
        }
      }
    }
    assertThat(pictures).isEqualTo(1);
  }
}
