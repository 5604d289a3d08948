package caryatid.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Spoilt recordings, sheets and descriptions on the command line, in a program of 256 MB: no trace,
 * exit code 0, 1 or 2, each under two seconds; another finding without a remark only where a plain
 * reading of the spoilt file says the same.
 */
@Tag("proof")
class FuzzProofTest {
  private static final int MOST = 5000;

  @TempDir private Path folder;

  @Test
  void nothingThatIsSpoiltEndsInATrace() throws IOException, InterruptedException {
    int count = Integer.getInteger("spoilt", MOST);
    Path said = folder.resolve("said.txt");
    List<String> line =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx256m",
            "-Djava.awt.headless=true",
            "-Dcaryatid.failures=" + folder.resolve("failures"),
            "-cp",
            System.getProperty("java.class.path"),
            Fuzz.class.getName(),
            folder.toString(),
            Integer.toString(count),
            Integer.toString(count),
            Integer.toString(count * 2 / 5));
    Process process =
        new ProcessBuilder(line).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertThat(process.waitFor()).as(() -> text(said)).isZero();
    System.out.println("Fuzz: " + text(said).lines().reduce((first, last) -> last).orElse(""));
    assertThat(text(said)).startsWith("strange 0, refused ");
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }
}
