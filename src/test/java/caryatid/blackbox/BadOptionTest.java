package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the check command says of files and stretches it cannot take: whole messages. */
class BadOptionTest {
  @TempDir private Path path;

  private Folder folder;

  @BeforeEach
  void prepare() throws IOException {
    folder = new Folder(path);
  }

  @Test
  void anOutputThatIsThere() throws IOException {
    Files.createDirectories(path.resolve("out"));
    Files.writeString(path.resolve("out/stand-report.pdf"), "kept");
    Run run = folder.check();
    assertThat(folder.complaint(run))
        .isEqualTo(
            "out/stand-report.pdf: already exists, and nothing is overwritten without being asked."
                + " Choose another name or folder, or add --replace.");
    assertThat(run.code()).isEqualTo(1);
    assertThat(path.resolve("out/stand-report.pdf")).hasContent("kept");
  }

  @Test
  void aFolderInPlaceOfAFile() {
    Run run = Run.caryatid("check", path.toString(), "--trial", folder.file("sheet.yaml"));
    assertThat(run.err().strip())
        .isEqualTo(path + ": expected a file, found a folder. Give the file in it.");
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void aFileThatIsNotThere() {
    String name = folder.file("nothing.csv");
    Run run = Run.caryatid("check", name, "--trial", folder.file("sheet.yaml"));
    assertThat(run.err().strip())
        .isEqualTo(
            name + ": expected a file, found nothing of that name. Check the name and the folder.");
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void theSameStandGivenTwice() {
    Run run =
        Run.caryatid(
            "check",
            folder.file("stand.csv"),
            folder.file("stand.csv"),
            "--trial",
            folder.file("sheet.yaml"),
            "--plate",
            folder.file("plate.yaml"),
            "--json");
    assertThat(folder.complaint(run))
        .startsWith(
            "stand.csv: holds the same bytes as stand.csv; a stand counts once. Leave one"
                + " of them"
                + " out, or give the recording that was meant.");
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void aStretchThatEndsBeforeItBegins() {
    Run run = folder.check("--from", "9", "--to", "3");
    assertThat(run.err()).startsWith("--from must be before --to");
    assertThat(run.code()).isEqualTo(2);
  }
}
