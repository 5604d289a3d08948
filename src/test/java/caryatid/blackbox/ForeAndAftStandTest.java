package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.PdfText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sample stand on a plate that is described as measuring fore and aft only: what its other column
 * holds is nobody's to see.
 */
class ForeAndAftStandTest {
  @TempDir private Path temp;

  /** The sample, what its column sideways holds multiplied and shifted. */
  private Folder folder(String name, double times, double shiftMm) throws IOException {
    return new Folder(Files.createDirectories(temp.resolve(name)))
        .recording(
            lines ->
                IntStream.range(0, lines.size())
                    .mapToObj(i -> i < 2 ? lines.get(i) : moved(lines.get(i), times, shiftMm))
                    .toList())
        .description("units: {force", "measures: fore and aft\n    units: {force");
  }

  private static String moved(String row, double times, double shiftMm) {
    String[] cells = row.split(",");
    cells[2] = String.format(Locale.ROOT, "%.3f", times * Double.parseDouble(cells[2]) + shiftMm);
    return String.join(",", cells);
  }

  /** What was printed and written, by file; digests of the recording itself left out. */
  private Map<String, String> written(Folder folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    Run run = folder.check("--forms", "pdf,html,csv,json,svg");
    assertThat(run.err()).isEmpty();
    all.put("printed", run.out().replace(folder.file(""), ""));
    all.put("json", folder.check("--json").out());
    try (Stream<Path> files = Files.list(Path.of(folder.file("out")))) {
      for (Path file : files.toList()) {
        String text =
            file.toString().endsWith(".pdf")
                ? PdfText.running(Files.readAllBytes(file))
                : Files.readString(file);
        all.put(file.getFileName().toString(), text);
      }
    }
    all.replaceAll(
        (file, text) -> file.matches(".*(html|pdf)") ? shortened(text) : withoutDigests(text));
    return all;
  }

  private static String withoutDigests(String text) {
    return text.replaceAll("[0-9a-f]{128}|\"bytes\" : \\d+|([0-9a-f]{16} ?){2,}", "#")
        .replaceAll("base64,[A-Za-z0-9+/=]+", "#");
  }

  /** Pages show the first figures of a digest. */
  private static String shortened(String text) {
    return withoutDigests(text).replaceAll("[0-9a-f]{8,}", "#");
  }

  @Test
  void nothingThatIsWrittenDependsOnTheOtherDirection() throws IOException {
    Map<String, String> one = written(folder("one", 1, 0));
    Map<String, String> other = written(folder("other", -3, 71.3));
    assertThat(one).hasSizeGreaterThanOrEqualTo(7);
    assertThat(other.keySet()).isEqualTo(one.keySet());
    one.forEach((file, text) -> assertThat(other.get(file)).as(file).isEqualTo(text));
  }

  /** Regression, and the reverse of the test above: the same files do show it otherwise. */
  @Test
  void ofAPlateThatMeasuresBothItIsShown() throws IOException {
    Folder both = folder("both", 1, 0).description("", "");
    Folder shifted = folder("shifted", -3, 71.3).description("", "");
    assertThat(shifted.check("--json").out()).isNotEqualTo(both.check("--json").out());
    assertThat(both.check("--json").out()).contains("\"cop-right-mm\"", "\"ellipse-mm2\"");
  }

  @Test
  void theSagittalPlaneIsAsOnAnyPlateAndTheFrontalOneWithheld() throws IOException {
    Folder alone = folder("alone", 1, 0);
    Map<String, String> written = written(alone);
    String printed = written.get("printed").replace('\u00a0', ' ');
    assertThat(printed)
        .contains(
            "the plate measures fore and aft only",
            "plate 1 measures fore and aft only: nothing can be said about the frontal plane.");
    assertThat(written.get("json"))
        .contains("\"LoadLineRemark.NOT_MEASURED\"", "\"cop-anterior-mm\"")
        .doesNotContain(
            "\"cop-right-mm\"",
            "\"sd-right-mm\"",
            "\"range-right-mm\"",
            "\"path-mm\"",
            "\"mean-speed-mm-per-s\"",
            "\"ellipse-mm2\"",
            "\"covariance-mm2\"",
            "\"mean-frequency-hz\"",
            "\"effective-right\"",
            "\"right-per-up\"");
    for (String file : List.of("stand-report.html", "stand-report.pdf")) {
      assertThat(written.get(file).replace('\u00a0', ' '))
          .as(file)
          .contains("the plate measures fore and aft only");
    }
    assertThat(written.get("stand-report.html")).contains("Sagittal, knee centre: load line");
  }

  @Test
  void theReportIsCheckedAgain() throws IOException {
    Folder folder = folder("kept", 1, 0);
    assertThat(folder.check("--forms", "pdf").err()).isEmpty();
    try (Stream<Path> files = Files.list(Path.of(folder.file("out")))) {
      Run again = Run.caryatid("check", files.findFirst().orElseThrow().toString());
      assertThat(again.err()).isEmpty();
      assertThat(again.code()).isZero();
    }
  }

  /**
   * By forces and moments; the report of the record and what it shows are printed from the kept.
   */
  @Test
  void theRecordKeepsItAndSaysWhatWasNotMeasured() {
    Fitting fitting =
        Fitting.of(temp.resolve("record"), Fitting.Kind.K7)
            .replace("plates.yaml", "^    units:", "    measures: fore and aft\n    units:")
            .start();
    Run kept = fitting.keep();
    assertThat(kept.err()).isEmpty();
    assertThat(kept.out()).contains("the plate measures fore and aft only");
    for (String command : List.of("show", "verify")) {
      Run run = fitting.record(command);
      assertThat(run.err()).as(command).isEmpty();
      assertThat(run.code()).as(command).isZero();
    }
    assertThat(fitting.record("show").out()).doesNotContain("NaN");
  }
}
