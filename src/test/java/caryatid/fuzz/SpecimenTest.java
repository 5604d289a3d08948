package caryatid.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The comparison that the fuzzing relies on tells a moved finding from an unmoved one. */
class SpecimenTest {
  @TempDir private Path folder;

  @Test
  void aRecordingThatWasMovedExplainsAMovedFindingAndTheSoundOneDoesNot() throws IOException {
    for (Specimen specimen : new Specimen[] {Specimen.pressure(), Specimen.forces()}) {
      Path cut = shortened(specimen.recording());
      Run run = Run.caryatid(specimen.check(cut));
      assertThat(run.err()).isEmpty();
      FuzzFailures found = FuzzFailures.in(run.out());
      assertThat(specimen.sound().moved(found, "sagittal knee centre")).isNotZero();
      assertThat(specimen.justifies(cut, found)).isTrue();
      assertThat(specimen.justifies(cut, elsewhere(found))).isFalse();
      assertThat(specimen.sound().differsInSilence(elsewhere(specimen.sound()))).isTrue();
      assertThat(specimen.sound().differsInSilence(specimen.sound())).isFalse();
    }
  }

  @Test
  void aCommentSaysNothingAndAnotherNumberDoes() throws IOException {
    Path sheet = Specimen.pressure().sheet();
    String text = Files.readString(sheet);
    Path comment = Files.writeString(folder.resolve("a.yaml"), text + "# later\n");
    Path number = Files.writeString(folder.resolve("b.yaml"), text.replace("302", "303"));
    assertThat(Yaml.says(sheet, comment)).isFalse();
    assertThat(Yaml.says(sheet, number)).isTrue();
  }

  /** Without its last second or more. */
  private Path shortened(Path recording) throws IOException {
    String[] lines = Files.readString(recording).split("\n");
    int count = lines.length * 19 / 20;
    return Files.writeString(
        folder.resolve("cut.csv"), String.join("\n", Arrays.copyOf(lines, count)) + "\n");
  }

  private static FuzzFailures elsewhere(FuzzFailures found) {
    TreeMap<String, Double> offsets = new TreeMap<>(found.offsetsMm());
    offsets.replaceAll((name, mm) -> mm + 0.6);
    return new FuzzFailures(offsets, found.verdicts(), found.remarks(), found.fromS(), found.toS());
  }
}
