package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What nobody would write is refused in a sentence. */
class StrangeInputTest {
  @TempDir private Path path;

  private String refusal(Folder folder) {
    Run run = folder.check();
    assertThat(run.code()).as(run.err()).isEqualTo(1);
    return folder.complaint(run);
  }

  @Test
  void anotherVersionOfYaml() throws IOException {
    assertThat(refusal(new Folder(path).sheet("trial-sheet: 1", "%YAML 3.0\n---\ntrial-sheet: 1")))
        .isEqualTo(
            "sheet.yaml: expected YAML of version 1, found a line that names another version. Leave"
                + " out the line that begins with %YAML.");
  }

  @Test
  void aFileNameThatIsNone() throws IOException {
    assertThat(
            refusal(
                new Folder(path).sheet("trial-sheet: 1", "trial-sheet: 1\nbased-on: \"a\\0b\"")))
        .startsWith("sheet.yaml line 3, column 11: there is no file");
  }

  @Test
  void timesThatStandStill() throws IOException {
    Folder folder =
        new Folder(path)
            .recording(
                lines ->
                    IntStream.range(0, lines.size())
                        .mapToObj(
                            i -> i < 2 ? lines.get(i) : lines.get(i).replaceFirst("^[^,]*", "0.5"))
                        .toList());
    assertThat(refusal(folder))
        .contains(
            "stand.csv: expected times that go on from row to row, found the same time from the"
                + " first row to the last.");
  }

  @Test
  void aYearFarAway() throws IOException {
    assertThat(
            refusal(
                new Folder(path).sheet("2026-03-04T10:40+01:00", "+999999999-03-04T10:40+01:00")))
        .contains("expected date, time and offset from UTC");
    assertThat(
            Run.caryatid("record", "add", "A1", "note", "--at", "+999999999-01-01T00:00Z").code())
        .isEqualTo(2);
  }

  @Test
  void landmarksThatAreMeasuredFromEachOther() throws IOException {
    String chain =
        IntStream.range(1, 300)
            .mapToObj(
                i ->
                    "  - name: c"
                        + i
                        + "\n    forward-of-landmark-mm: 1\n    kind: other\n    landmark: c"
                        + (i - 1)
                        + "\n    up-mm: 100\n    marking-mm: 3\n")
            .collect(Collectors.joining());
    String first =
        "  - name: c0\n"
            + "    kind: other\n"
            + "    forward-mm: 300\n"
            + "    forward-from: rear edge\n"
            + "    up-mm: 100\n"
            + "    marking-mm: 3\n";
    String err = refusal(new Folder(path).sheet("landmarks:\n", "landmarks:\n" + first + chain));
    List<String> lines = err.lines().toList();
    assertThat(lines.get(0))
        .endsWith(
            "the landmark 'c11' is measured from 'c10', that one from another, and so on for more"
                + " than 10 landmarks, and each adds uncertainty. Measure it from a line.");
  }

  @Test
  void aReportWhoseSheetIsBasedOnOneInAnotherFolderIsCheckedAgain() throws IOException {
    Folder folder = new Folder(path);
    Path old = Files.createDirectories(path.resolve("old"));
    Files.copy(path.resolve("sheet.yaml"), old.resolve("earlier.yaml"));
    folder.sheet("trial-sheet: 1", "trial-sheet: 1\nbased-on: old/earlier.yaml");
    Run made = folder.check();
    assertThat(made.code()).as(made.err()).isZero();
    Run again = Run.caryatid("check", path.resolve("out/stand-report.pdf").toString());
    assertThat(again.err()).isEmpty();
    assertThat(again.code()).isZero();
  }
}
