package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clinic remembers plate descriptions by the columns of an export. */
class ClinicPlateTest {
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final Path PLATE = K7.resolve("plate.yaml");

  @TempDir private Path folder;

  private Run clinic(String... arguments) {
    List<String> all = new ArrayList<>(List.of("clinic"));
    all.addAll(Arrays.asList(arguments));
    all.addAll(List.of("--records", records()));
    return Run.caryatid(all.toArray(String[]::new));
  }

  private String records() {
    return folder.resolve("records").toString();
  }

  private Run remember(Path plate, String... more) {
    List<String> all = new ArrayList<>(List.of("plate", export().toString(), plate.toString()));
    all.addAll(Arrays.asList(more));
    return clinic(all.toArray(String[]::new));
  }

  private static Path export() {
    return K7.resolve("barefoot-1.csv");
  }

  private Run check(String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "check",
                export().toString(),
                "--trial",
                K7.resolve("barefoot.yaml").toString(),
                "--json",
                "--records",
                records()));
    all.addAll(Arrays.asList(more));
    return Run.caryatid(all.toArray(String[]::new));
  }

  @Test
  void aPlateThatWasRememberedNeedsNotBeGivenAgain() {
    assertThat(check().code()).isEqualTo(1);
    assertThat(remember(PLATE).out())
        .startsWith("Remembered " + PLATE + " for exports with these ");
    Run known = check();
    Run given = check("--plate", PLATE.toString());
    assertThat(known.code()).isZero();
    assertThat(known.out()).isEqualTo(given.out());
    assertThat(known.err())
        .isEqualTo(
            "Plate description: plate.yaml, which the clinic remembers for these columns.\n");
    assertThat(given.err()).isEmpty();
    assertThat(clinic("show").out()).startsWith("plate.yaml: ");
  }

  @Test
  void anExportWithOtherColumnsIsNotTakenForThePlates() throws IOException {
    remember(PLATE);
    Path other = folder.resolve("other.csv");
    Files.writeString(other, Files.readString(export()).replaceFirst("Fz", "Fzz"));
    Run run =
        Run.caryatid(
            "check",
            other.toString(),
            "--trial",
            K7.resolve("barefoot.yaml").toString(),
            "--json",
            "--records",
            records());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).doesNotContain("which the clinic remembers");
  }

  @Test
  void anotherDescriptionForTheSameColumnsIsAskedFor() throws IOException {
    remember(PLATE);
    assertThat(remember(PLATE).code()).isZero();
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, Files.readString(PLATE) + "# moved\n");
    assertThat(remember(other).err())
        .isEqualTo(
            other
                + ": another description (plate.yaml) is remembered for exports with these columns."
                + " Give --replace to forget that one.\n");
    assertThat(remember(other, "--replace").code()).isZero();
    assertThat(clinic("show").out()).startsWith("other.yaml: ");
  }

  @Test
  void aDescriptionThatDoesNotFitIsNotRemembered() throws IOException {
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(wrong, "plate-description: 1\n");
    assertThat(remember(wrong).code()).isEqualTo(1);
    assertThat(clinic("show").out()).isEqualTo("Nothing is remembered in " + records() + ".\n");
  }

  @Test
  void whatANewerVersionRememberedIsSaidToBeNewer() throws IOException {
    remember(PLATE);
    Path file = folder.resolve("records/clinic/clinic.json");
    Files.writeString(file, Files.readString(file).replace("\"clinic\" : 1", "\"clinic\" : 2"));
    assertThat(clinic("show").err())
        .isEqualTo(
            file + ": written by a newer version of this program (form 2). Use that version.\n");
  }
}
