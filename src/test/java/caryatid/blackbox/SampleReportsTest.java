package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Makes the reports in {@code reports} again and compares them byte by byte. To write them anew
 * after a change that is meant: {@code mvn -Dfast -Dreports.write test -Dtest=SampleReportsTest}.
 */
class SampleReportsTest {
  private static final Path REPORTS = Path.of("reports");
  private static final Path SAMPLES = Path.of("sample-recordings");

  /** A sample stand: the report's name, its recordings, and the sheet and plate in its folder. */
  private record Sample(
      String name, String folder, String sheet, String plate, String... recordings) {
    String[] command(Path out) {
      List<String> words = new ArrayList<>(List.of("check"));
      Stream.of(recordings).map(this::path).forEach(words::add);
      words.addAll(
          List.of("--trial", path(sheet), "--plate", path(plate), "--out", out.toString()));
      return words.toArray(String[]::new);
    }

    private String path(String file) {
      return SAMPLES.resolve(folder).resolve(file).toString();
    }
  }

  private static final List<Sample> ALL =
      List.of(
          new Sample(
              "k7-barefoot",
              "k7",
              "barefoot.yaml",
              "plate.yaml",
              "barefoot-1.csv",
              "barefoot-2.csv",
              "barefoot-3.csv"),
          new Sample("k7-shoe", "k7", "shoe.yaml", "plate-pressure.yaml", "shoe.csv"),
          new Sample("m4-barefoot", "m4", "barefoot.yaml", "plates.yaml", "barefoot.txt"),
          new Sample("m4-shoe", "m4", "shoe.yaml", "plates.yaml", "shoe.txt"));

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> theSampleReportsAreWhatTheProgramMakes() {
    return ALL.stream()
        .map(sample -> DynamicTest.dynamicTest(sample.name(), () -> compare(sample)));
  }

  private void compare(Sample sample) throws IOException {
    Path out = folder.resolve(sample.name());
    Run run = Run.caryatid(sample.command(out));
    assertThat(run.code()).as(run.err()).isZero();
    byte[] made = Files.readAllBytes(onlyFileIn(out));
    Path kept = REPORTS.resolve(sample.name() + ".pdf");
    if (System.getProperty("reports.write") != null) {
      Files.write(kept, made);
    }
    assertThat(Files.readAllBytes(kept)).as(kept.toString()).isEqualTo(made);
  }

  /** The way from a kept report back to its result, without the files it was made from. */
  @TestFactory
  Stream<DynamicTest> theSampleReportsReproduceTheirResults() {
    return ALL.stream()
        .map(sample -> DynamicTest.dynamicTest(sample.name(), () -> reproduce(sample)));
  }

  private static void reproduce(Sample sample) {
    Run run = Run.caryatid("check", REPORTS.resolve(sample.name() + ".pdf").toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().strip()).endsWith("is reproduced from the files inside it.");
  }

  private static Path onlyFileIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList().get(0);
    }
  }
}
