package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.calibration.Figures.Figure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Consistency: the page of the calibration shows the ranges of the numbers next to it. */
class CalibrationPageTest {
  private static final Path PAGE = Path.of("docs", "calibration.md");
  private static final Path NUMBERS = Path.of("docs", "calibration.csv");

  @Test
  void eachTableOfThePageIsComputedFromTheNumbers() throws IOException {
    String page = Files.readString(PAGE);
    Map<String, Table> tables = Summaries.of(Figures.read(NUMBERS));
    assertThat(page.split("<!-- table: ", -1)).hasSize(tables.size() + 1);
    tables.forEach(
        (name, table) ->
            assertThat(page)
                .contains("<!-- table: " + name + " -->\n" + table + "<!-- end of table -->"));
  }

  @Test
  void eachTableOfRealStandsWhoseNumbersAreKeptIsComputedFromThem() throws IOException {
    String page = Files.readString(Path.of("docs", "real-data.md"));
    Map<String, Table> tables = Summaries.ofReal(Figures.read(Path.of("docs", "real-data.csv")));
    assertThat(tables).hasSize(2);
    tables.forEach(
        (name, table) ->
            assertThat(page)
                .contains("<!-- table: " + name + " -->\n" + table + "<!-- end of table -->"));
  }

  @Test
  void aNumberBeyondTheOthersWidensItsRange() throws IOException {
    List<Figure> figures = new ArrayList<>(Figures.read(NUMBERS));
    figures.add(new Figure("stands", "held-back", "moves that fade", "10 s", "coverage, %", "1"));
    assertThat(Summaries.of(figures).get("stands").toString()).contains("| 10 s | 1–88.3 | ");
  }

  @Test
  void numbersPutAgainTakeThePlaceOfTheOnesBefore(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("numbers.csv");
    Figures.put(
        file, "a", "known", new Table("family", "clinic", "coverage, %").row("x", "y", "1"));
    Figures.put(
        file, "b", "known", new Table("family", "clinic", "coverage, %").row("x", "y", "2"));
    Figures.put(
        file, "a", "known", new Table("family", "clinic", "coverage, %").row("x", "y", "3"));
    assertThat(Files.readString(file))
        .isEqualTo(
            "table,families,subject,case,quantity,value\n"
                + "b,known,x,y,\"coverage, %\",2\n"
                + "a,known,x,y,\"coverage, %\",3\n");
  }
}
