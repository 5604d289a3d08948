package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.UnderstoodFact;
import caryatid.remark.BadInput;
import caryatid.sheet.DescriptionReader;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Small invented exports, each of one peculiarity, with their descriptions and what must be
 * understood of them. All hold the same stand: sample i, at i/100 s, has its centre of pressure 10
 * + i mm to the right and -20 + 2 i mm forward, under 800 + i N, with 3 N to the right and -5 N
 * forward where horizontal force was recorded. The workbooks were written by programs independent
 * of this one: {@code workbook} and {@code workbook-of-two-stands} with openpyxl 3.0.9, {@code
 * workbook-with-clock} with XlsxWriter 3.0.2, both as Debian 12 has them.
 */
class SpecimensTest {
  /** Six significant digits of the largest numbers in the files. */
  private static final double ROUNDING = 1e-3;

  private static final List<String> EXPORTS = List.of(".csv", ".txt", ".xlsx");

  private static Path folder() {
    try {
      return Path.of(SpecimensTest.class.getResource("/caryatid/recording/specimens").toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      return files.sorted().toList();
    }
  }

  private static boolean isExport(Path file) {
    return EXPORTS.stream().anyMatch(file.toString()::endsWith);
  }

  private static Path partner(Path file, String extension) {
    String name = file.getFileName().toString();
    return file.resolveSibling(name.substring(0, name.lastIndexOf('.')) + extension);
  }

  private static NamedBytes bytes(Path file) throws IOException {
    return NamedBytes.of(file.getFileName().toString(), Files.readAllBytes(file));
  }

  private static Optional<PlateDescription> description(Path export) throws IOException, BadInput {
    Path file = partner(export, ".yaml");
    return Files.exists(file) ? Optional.of(DescriptionReader.read(bytes(file))) : Optional.empty();
  }

  @Test
  void noPartnerIsMissing() throws IOException {
    List<Path> alone = new ArrayList<>();
    for (Path file : files()) {
      boolean paired =
          isExport(file)
              ? Files.exists(partner(file, ".understood"))
              : EXPORTS.stream().anyMatch(ending -> Files.exists(partner(file, ending)));
      if (!paired) {
        alone.add(file.getFileName());
      }
    }
    assertThat(alone).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> eachSpecimenIsUnderstoodAsItsPartnerSays() throws IOException {
    return files().stream()
        .filter(SpecimensTest::isExport)
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static void check(Path export) throws IOException, BadInput {
    String understood = understood(export);
    Path golden = partner(export, ".understood");
    if (Boolean.getBoolean("specimens.write")) {
      Files.writeString(golden, understood);
    }
    assertThat(understood).isEqualTo(Files.readString(golden, StandardCharsets.UTF_8));
  }

  /** Validation: the numbers the files were made from. */
  @TestFactory
  Stream<DynamicTest> eachReadableSpecimenHoldsTheStandItWasMadeFrom() throws IOException {
    return files().stream()
        .filter(SpecimensTest::isExport)
        .map(
            file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> checkTruth(file)));
  }

  private static void checkTruth(Path export) throws IOException, BadInput {
    Optional<PlateDescription> description = description(export);
    if (!Importer.inspect(bytes(export), description).complete()) {
      return;
    }
    Recording recording = Importer.read(bytes(export), description);
    PlateTrack plate = recording.plates().get(0);
    assertThat(recording.timeS().size()).isEqualTo(12);
    // Spreadsheets keep times to 0.9 microseconds; two of them in 0.11 s.
    double rate = export.toString().endsWith(".xlsx") ? 2e-3 : 1e-6;
    assertThat(recording.rateHz()).isCloseTo(100, within(rate));
    for (int i = 0; i < 12; i++) {
      assertThat(plate.copRightMm().orElseThrow().at(i)).isCloseTo(10 + i, within(ROUNDING));
      assertThat(plate.copAnteriorMm().at(i)).isCloseTo(-20 + 2 * i, within(ROUNDING));
      if (plate.upN().isPresent()) {
        assertThat(plate.upN().get().at(i)).isCloseTo(800 + i, within(ROUNDING));
      }
      if (plate.horizontal().isPresent()) {
        assertThat(plate.horizontal().get().rightN().at(i)).isCloseTo(3, within(ROUNDING));
        assertThat(plate.horizontal().get().anteriorN().at(i)).isCloseTo(-5, within(ROUNDING));
      }
    }
  }

  private static String understood(Path export) throws IOException, BadInput {
    Optional<PlateDescription> description = description(export);
    Inspection inspection = Importer.inspect(bytes(export), description);
    StringBuilder text = new StringBuilder();
    for (UnderstoodFact each : inspection.understood()) {
      String sentence = Exports.WORDING.fill(each.aspect().code(), each.arguments());
      line(text, sentence + " (" + Exports.WORDING.word(each.basis()) + ")");
    }
    inspection.remarks().forEach(r -> line(text, "remark: " + Exports.WORDING.say(r)));
    inspection.questions().forEach(q -> line(text, "question: " + Exports.WORDING.say(q)));
    inspection.problems().forEach(p -> line(text, "problem: " + Exports.WORDING.say(p)));
    if (inspection.complete()) {
      Importer.read(bytes(export), description).plates().forEach(p -> line(text, summary(p)));
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String line) {
    text.append(line.replace('\u00a0', ' ')).append('\n');
  }

  private static String summary(PlateTrack track) {
    int last = track.copRightMm().orElseThrow().size() - 1;
    return track.plate() + ": " + sample(track, 0) + " to " + sample(track, last);
  }

  private static String sample(PlateTrack track, int i) {
    String force = track.upN().map(up -> number(up.at(i)) + " N at ").orElse("");
    return force
        + number(track.copRightMm().orElseThrow().at(i))
        + ", "
        + number(track.copAnteriorMm().at(i))
        + " mm"
        + (track.usable().at(i) ? "" : " left out");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value + 0.0);
  }
}
