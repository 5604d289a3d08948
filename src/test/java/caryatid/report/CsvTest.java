package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Read back by an independent reader of CSV. */
class CsvTest {
  private static List<CSVRecord> read(Demo demo) throws IOException {
    String text = new String(Csv.of(demo.result()), StandardCharsets.UTF_8);
    return CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(new StringReader(text))
        .getRecords();
  }

  @Test
  void holdsARowForEachFindingWithTheNumbersOfTheJson() throws IOException {
    List<CSVRecord> rows = read(Demo.transtibial(Side.RIGHT).line(80, 60.123456789));
    assertThat(rows).hasSize(3);
    assertThat(rows.get(1).get("landmark")).isEqualTo("knee centre");
    assertThat(Double.parseDouble(rows.get(1).get("offset-mm"))).isEqualTo(60.123456789 - 42);
    assertThat(rows.get(1).get("lowest-mm")).isEqualTo("5");
    assertThat(rows.get(1).get("verdict")).isEqualTo("inside-too-close");
  }

  @Test
  void noTextStartsAFormulaAndNoNumberIsChanged() throws IOException {
    Demo demo =
        Demo.empty(Side.LEFT)
            .wearer("=1+1")
            .landmark("@point, \"x\"", LandmarkKind.OTHER, 100, 80, 300, 3)
            .target(Plane.SAGITTAL, "@point, \"x\"", -15, 10, 10);
    CSVRecord row = read(demo).get(0);
    assertThat(row.get("wearer")).isEqualTo("'=1+1");
    assertThat(row.get("landmark")).isEqualTo("'@point, \"x\"");
    assertThat(row.get("recommended-mm")).isEqualTo("-15");
  }
}
