package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sample stands with one channel spoilt, as a person would check them. */
class DeadChannelTest {
  private static final Path SAMPLES = Path.of("sample-recordings");

  @TempDir private Path folder;

  /** A sample's lines with one cell of each row from a line on changed. */
  private Path spoilt(String sample, String delimiter, int fromLine, int column, String text)
      throws IOException {
    List<String> lines = Files.readAllLines(SAMPLES.resolve(sample));
    Path file = folder.resolve(Path.of(sample).getFileName());
    Files.write(
        file,
        IntStream.range(0, lines.size())
            .mapToObj(
                i -> i < fromLine ? lines.get(i) : with(lines.get(i), delimiter, column, text))
            .toList());
    return file;
  }

  private static String with(String line, String delimiter, int column, String text) {
    String[] cells = line.split(delimiter);
    cells[column] = text;
    return String.join(delimiter, cells);
  }

  private Run check(Path recording, String sheet, String plate) {
    return Run.caryatid(
        "check",
        recording.toString(),
        "--trial",
        SAMPLES.resolve(sheet).toString(),
        "--plate",
        SAMPLES.resolve(plate).toString(),
        "--out",
        folder.resolve("out").toString());
  }

  private void refused(Run run, String complaint) {
    assertThat(run.err().replace(folder + "/", "").replace('\u00a0', ' ').strip())
        .isEqualTo(complaint);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("out")).doesNotExist();
  }

  private static String dead(String file, String plate, String column, int samples) {
    return file
        + ": "
        + plate
        + ": expected column '"
        + column
        + "' to vary as somebody sways, found one and the same number in all "
        + samples
        + " samples under load. The centre of pressure depends on it, so the channel seems to be"
        + " dead. Check the plate and its cable, and that the column was exported, and record again.";
  }

  private Run k7(int column, String text) throws IOException {
    return check(
        spoilt("k7/barefoot-1.csv", ";", 1, column, text), "k7/barefoot.yaml", "k7/plate.yaml");
  }

  @Test
  void aMomentOfAFootsPlateThatIsZeroIsRefused() throws IOException {
    refused(k7(4, "0,0"), dead("barefoot-1.csv", "plate 1", "Mx", 1800));
    refused(k7(5, "0,0"), dead("barefoot-1.csv", "plate 1", "My", 1800));
  }

  @Test
  void aMomentThatHoldsOneNumberIsRefused() throws IOException {
    refused(k7(5, "-6400,0"), dead("barefoot-1.csv", "plate 1", "My", 1800));
  }

  @Test
  void aMomentOfOneOfTwoPlatesThatIsZeroIsRefused() throws IOException {
    Path recording = spoilt("m4/shoe.txt", "\t", 6, 4, "0.0");
    refused(
        check(recording, "m4/shoe.yaml", "m4/plates.yaml"),
        dead("shoe.txt", "plate 1", "P1 Mx", 2500));
  }

  /** Beside a vertical force of 356 N or so. */
  @Test
  void aHorizontalForceLargerThanTheVerticalOneIsNotBelieved() throws IOException {
    Path recording = spoilt("k7/barefoot-1.csv", ";", 1, 1, "596,0");
    List<String> lines = Files.readAllLines(recording);
    Files.write(
        recording,
        IntStream.range(0, lines.size())
            .mapToObj(i -> i % 2 == 0 ? lines.get(i) : lines.get(i).replace("596,0", "596,2"))
            .toList());
    Run run = check(recording, "k7/barefoot.yaml", "k7/plate.yaml");
    assertThat(run.err())
        .contains("expected a mean horizontal force on plate 1 of at most 20.0\u00a0% of the");
    assertThat(run.code()).isEqualTo(1);
  }
}
