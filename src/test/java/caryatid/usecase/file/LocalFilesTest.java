package caryatid.usecase.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.wording.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LocalFilesTest {
  private static final byte[] BYTES = {1, 2, 3};

  private final FileAccess files = new LocalFiles();

  @TempDir private Path folder;

  @Test
  void whatIsWrittenIsReadBackAndLeavesNothingBesideIt() throws Exception {
    Path path = folder.resolve("new/out.pdf");
    files.requireFree(new Output(path, false));
    files.write(new Output(path, false), BYTES);
    assertThat(files.read(path).readAll()).isEqualTo(BYTES);
    assertThat(files.find(path)).isPresent();
    assertThat(folder.resolve("new")).isDirectoryContaining(path::equals).isNotEmptyDirectory();
    assertThat(folder.resolve("new").toFile().list()).containsExactly("out.pdf");
  }

  @Test
  void nothingIsOverwrittenUnasked() throws Exception {
    Path path = Files.write(folder.resolve("out.pdf"), new byte[] {9});
    String said =
        path
            + ": already exists, and nothing is overwritten without being asked. Choose another"
            + " name or folder, or add --replace.";
    assertRefused(() -> files.requireFree(new Output(path, false)), said);
    assertRefused(() -> files.write(new Output(path, false), BYTES), said);
    assertThat(path).hasBinaryContent(new byte[] {9});
    files.requireFree(new Output(path, true));
    files.write(new Output(path, true), BYTES);
    assertThat(path).hasBinaryContent(BYTES);
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefusedEarly() throws Exception {
    Path file = Files.write(folder.resolve("file"), BYTES);
    assertRefused(
        () -> files.requireFree(new Output(file.resolve("out.pdf"), false)),
        file + ": expected a folder for the report, found a file. Choose a folder with --out.");
  }

  /** That the disk does not do it is no fault of what was given. */
  @Test
  void aFolderThatCannotBeMadeIsAFailureOfTheStore() throws Exception {
    Path file = Files.write(folder.resolve("file"), BYTES);
    Path path = file.resolve("below/out.pdf");
    assertThatThrownBy(() -> files.write(new Output(path, false), BYTES))
        .isInstanceOfSatisfying(
            StoreFailure.class,
            e ->
                assertThat(says(e.problems()))
                    .startsWith(path + ": cannot be written: " + file)
                    .endsWith(
                        ". Check the folder and the space left, or choose another folder with"
                            + " --out."));
  }

  @Test
  void anInputIsAFileThatIsThere() {
    assertRefused(
        () -> files.read(folder.resolve("none.csv")),
        folder.resolve("none.csv")
            + ": expected a file, found nothing of that name. Check the name and the folder.");
    assertRefused(
        () -> files.read(folder),
        folder + ": expected a file, found a folder. Give the file in it.");
    assertThat(files.find(folder)).isEmpty();
    assertThat(files.find(folder.resolve("none.csv"))).isEmpty();
  }

  private static void assertRefused(ThrowingCallable call, String said) {
    assertThatThrownBy(call)
        .isInstanceOfSatisfying(
            BadInput.class, e -> assertThat(says(e.problems())).isEqualTo(said));
  }

  private static String says(List<Problem> problems) {
    assertThat(problems).hasSize(1);
    return Wording.in(Locale.ENGLISH).say(problems.get(0));
  }
}
