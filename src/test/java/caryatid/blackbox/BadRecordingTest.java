package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the check command says of a recording it cannot use: whole messages, nothing written. */
class BadRecordingTest {
  @TempDir private Path path;

  private Folder folder;

  @BeforeEach
  void prepare() throws IOException {
    folder = new Folder(path);
  }

  private void refused(String... complaints) {
    Run run = folder.check();
    assertThat(folder.complaint(run)).isEqualTo(String.join(System.lineSeparator(), complaints));
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(path.resolve("out")).doesNotExist();
  }

  private static UnaryOperator<List<String>> cell(int line, int column, String text) {
    return lines -> {
      List<String> changed = new ArrayList<>(lines);
      changed.set(line - 1, withCell(lines.get(line - 1), column, text));
      return changed;
    };
  }

  private static UnaryOperator<List<String>> column(int column, Function<Integer, String> text) {
    return lines -> {
      List<String> changed = new ArrayList<>(lines);
      for (int i = 2; i < lines.size(); i++) {
        changed.set(i, withCell(lines.get(i), column, text.apply(i)));
      }
      return changed;
    };
  }

  private static String withCell(String line, int column, String text) {
    String[] cells = line.split(",");
    cells[column] = text;
    return String.join(",", cells);
  }

  private static UnaryOperator<List<String>> withoutColumn(int column) {
    return lines -> lines.stream().map(line -> dropCell(line, column)).toList();
  }

  private static String dropCell(String line, int column) {
    List<String> cells = new ArrayList<>(List.of(line.split(",")));
    cells.remove(column);
    return String.join(",", cells);
  }

  @Test
  void aColumnThatIsMissing() throws IOException {
    folder.recording(withoutColumn(3));
    refused(
        "stand.csv line 1, column CoPy: the plate description names column 'CoPy',"
            + " which the file"
            + " does not have. It has: Time, Fz, CoPx. Correct the name in the description.");
  }

  @Test
  void textInACell() throws IOException {
    folder.recording(cell(103, 1, "abc"));
    refused(
        "stand.csv line 103, column Fz: expected a number, found 'abc'. Empty the cell or"
            + " export again.");
  }

  @Test
  void aRowWithTooFewCells() throws IOException {
    folder.recording(
        lines -> {
          List<String> changed = new ArrayList<>(lines);
          changed.set(52, dropCell(lines.get(52), 3));
          return changed;
        });
    refused("stand.csv line 53: expected 4 cells, found 3. Delete the row or export again.");
  }

  @Test
  void anEmptyFile() throws IOException {
    folder.recording(lines -> List.of());
    refused("stand.csv: expected a force plate's text export, found an empty file. Export again.");
  }

  @Test
  void namesWithoutRows() throws IOException {
    folder.recording(lines -> lines.subList(0, 2));
    refused(
        "stand.csv line 1: expected rows of numbers below the names, found none. Export"
            + " again with"
            + " the sample values included, as plain numbers without units.");
  }

  @Test
  void noTimeAndNoRate() throws IOException {
    folder.recording(withoutColumn(0)).description("time: {column: Time, unit: s}\n", "");
    refused(
        "stand.csv: the sampling rate of the 2000 rows is stated nowhere. Add to the"
            + " plate description, with the rate in Hz for unknown: time: {rate-hz: unknown}");
  }

  @Test
  void timeThatRunsBack() throws IOException {
    folder.recording(cell(203, 0, "-1.0"));
    refused(
        "stand.csv line 203, column Time: expected a later time than the row above (1.99 s), found"
            + " −1.00 s. Several recordings may have been joined; separate them, or export"
            + " again.");
  }

  @Test
  void aPlateNobodyStandsOn() throws IOException {
    folder.recording(column(1, i -> "1.2"));
    refused(
        "stand.csv: expected somebody on the plate, found no vertical force of 20 N or"
            + " more. Export"
            + " the recording of a stand.");
  }

  @Test
  void walkingInsteadOfStanding() throws IOException {
    folder.recording(
        column(1, i -> String.valueOf(380 + Math.round(300 * StrictMath.sin(i * 0.06)))));
    refused(
        "stand.csv: expected quiet standing, with a vertical force (right foot's line) that varies"
            + " by at most 30.0 % of its mean (standard deviation), found 55.7 %; in plain standing"
            + " it is about 13.0 % or less. This is walking, squatting, sitting down, jumping or"
            + " stepping on and off; record a quiet stand.");
  }

  @Test
  void aCentreOfPressureBesideThePlate() throws IOException {
    folder.recording(column(2, i -> i % 2 == 0 ? "17999" : "18001"));
    refused(
        "stand.csv: plate 1: the centre of pressure lies off the plate, on average 18000.0 mm to"
            + " the right and −6.5 mm forward; the plate reaches from −200.0 mm to 200.0 mm and"
            + " from −300.0 mm to 300.0 mm. Check the unit (units: cop), export-origin-mm, the axes"
            + " and the edges in the plate description.");
  }

  @Test
  void aStretchTooShortToBeAStand() {
    Run run = folder.check("--from", "3", "--to", "7.9");
    assertThat(folder.complaint(run))
        .isEqualTo(
            "stand.csv: expected at least 5.00 s in the part set by hand, found 4.90 s. Its times"
                + " count from the first sample, and the recording lasts 20.00 s. Set a longer"
                + " part.");
    assertThat(run.code()).isEqualTo(1);
  }
}
