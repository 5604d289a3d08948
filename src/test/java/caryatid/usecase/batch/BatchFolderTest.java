package caryatid.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which exports belong to which sheet, by their names alone. */
class BatchFolderTest {
  private static final Optional<Path> NONE = Optional.empty();

  @TempDir Path folder;

  private void files(String... names) throws IOException {
    for (String name : names) {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      String what = name.contains("plate") ? "plate-description: 1\n" : "trial-sheet: 1\n";
      Files.writeString(file, name.endsWith(".yaml") ? "# invented\n" + what : "t;f\n");
    }
  }

  private List<BatchState> states() throws BadInput {
    return BatchFolder.states(folder, NONE, "", Optional.empty());
  }

  private List<String> found() throws BadInput {
    return states().stream()
        .map(
            s ->
                s.name()
                    + " <- "
                    + s.recordings().stream()
                        .map(r -> r.getFileName().toString())
                        .collect(Collectors.joining(" ")))
        .toList();
  }

  private static List<String> said(BatchState state) {
    return state.problems().stream()
        .map(Wording.in(Locale.ENGLISH)::sayWithin)
        .map(BatchFolderTest::first)
        .toList();
  }

  private static String first(String sentence) {
    return sentence.split("\\. ")[0];
  }

  @Test
  void aSheetHasTheExportsOfItsNameAndItsStands() throws Exception {
    files("shoe.yaml", "shoe.csv", "bare.yaml", "bare-1.csv", "bare_2.txt", "bare 3.TSV");
    assertThat(found())
        .containsExactly("bare <- bare 3.TSV bare-1.csv bare_2.txt", "shoe <- shoe.csv");
  }

  @Test
  void lettersNameStandsToo() throws Exception {
    files("stand-2.yaml", "stand-2a.csv", "stand-2b.csv", "stand-2-c.csv");
    assertThat(found()).containsExactly("stand-2 <- stand-2-c.csv stand-2a.csv stand-2b.csv");
  }

  /**
   * {@code stand-10.csv} is no stand of {@code stand-1.yaml}, with a sheet of its own or without.
   */
  @Test
  void aLongerNumberIsAnotherState() throws Exception {
    files("stand-1.yaml", "stand-1.csv", "stand-10.csv");
    assertThat(found()).containsExactly("stand-1 <- stand-1.csv", "stand-10.csv <- stand-10.csv");
    assertThat(said(states().get(1)))
        .containsExactly(
            "expected a trial sheet of the same name (stand.yaml for stand.csv or stand-1.csv), and"
                + " found none");
  }

  @Test
  void theSheetOfExactlyItsNameHasAnExport() throws Exception {
    files("walk.yaml", "walk.csv", "walk-1.yaml", "walk-1.csv");
    assertThat(found()).containsExactly("walk-1 <- walk-1.csv", "walk <- walk.csv");
  }

  @Test
  void aSheetWithoutAnExportIsTold() throws Exception {
    files("shoe.yaml");
    assertThat(said(states().get(0)))
        .containsExactly(
            "expected an export of the same name in the trial sheet's folder, such as shoe-1.csv, and"
                + " found none");
  }

  @Test
  void eachFolderHasItsOwnPlate() throws Exception {
    files("a/shoe.yaml", "a/shoe.csv", "a/plate.yaml", "b/shoe.yaml", "b/shoe.csv");
    assertThat(states().stream().map(s -> s.name() + s.plate().isPresent()))
        .containsExactly("a/shoetrue", "b/shoefalse");
  }

  @Test
  void twoPlatesAreAsked() throws Exception {
    files("shoe.yaml", "shoe.csv", "plate-1.yaml", "plate-2.yaml");
    assertThat(said(states().get(0)))
        .containsExactly(
            "expected one plate description in the trial sheet's folder, and found plate-1.yaml,"
                + " plate-2.yaml");
    Path given = folder.resolve("plate-2.yaml");
    BatchState state = BatchFolder.states(folder, NONE, "", Optional.of(given)).get(0);
    assertThat(state.problems()).isEmpty();
    assertThat(state.plate()).contains(given);
  }

  @Test
  void aFolderThatIsNotThereIsTold() {
    assertThatThrownBy(() -> BatchFolder.states(folder.resolve("none"), NONE, "", Optional.empty()))
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(e.problems())
                    .extracting(Problem::topic)
                    .containsExactly(BatchProblem.NO_FOLDER));
  }

  /** YAML lets a key be written in several ways, and editors put a mark before the first. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\uFEFFtrial-sheet: 1\n",
        "'trial-sheet': 1\n",
        "\"trial-sheet\" : 1\n",
        "# invented\n  trial-sheet: 1\n",
        "{trial-sheet: 1}\n"
      })
  void aSheetIsKnownHoweverItsKeyIsWritten(String yaml) throws Exception {
    files("shoe.yaml", "shoe.csv", "shoe-1.csv");
    Files.writeString(folder.resolve("shoe-1.yaml"), yaml);
    assertThat(found()).containsExactly("shoe-1 <- shoe-1.csv", "shoe <- shoe.csv");
  }

  /** Whatever the file is, its export is no stand of another sheet. */
  @Test
  void anExportWithAYamlOfItsNameJoinsNoOtherSheet() throws Exception {
    files("shoe.yaml", "shoe.csv", "shoe-1.csv");
    Files.writeString(folder.resolve("shoe-1.yaml"), "notes: later\n");
    assertThat(found()).containsExactly("shoe <- shoe.csv", "shoe-1.csv <- shoe-1.csv");
  }

  @Test
  void whatIsMadeIsNoInputAndLinksAreNotFollowed() throws Exception {
    files("shoe.yaml", "shoe.csv", "out/findings.csv");
    Files.createSymbolicLink(folder.resolve("lost.csv"), folder.resolve("shoe.csv"));
    Optional<Path> out = Optional.of(folder.resolve("out"));
    assertThat(BatchFolder.states(folder, out, "", Optional.empty()))
        .extracting(BatchState::name)
        .containsExactly("shoe");
  }

  @Test
  void aFolderMayBeALink() throws Exception {
    files("real/shoe.yaml", "real/shoe.csv");
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("real"));
    assertThat(BatchFolder.states(link, NONE, "", Optional.empty())).hasSize(1);
  }
}
