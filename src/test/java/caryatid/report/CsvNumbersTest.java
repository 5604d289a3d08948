package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What every column of the table for spreadsheets holds, from a result in which no two numbers are
 * alike; worked out by hand as in {@link ReportNumbersTest}.
 */
class CsvNumbersTest {
  /** The expected numbers are given to so many digits. */
  private static final Offset<Double> ROUNDING = Offset.offset(5e-6);

  private static List<String> line(int number) {
    String csv = new String(Csv.of(Numbered.result()), StandardCharsets.UTF_8);
    return List.of(csv.split("\r\n")[number].split(",", -1));
  }

  private static String cell(int row, String column) {
    return line(row).get(line(0).indexOf(column));
  }

  @ParameterizedTest
  @CsvSource({
    "offset-mm, 47.3, -12.6, 5.8",
    "standard-uncertainty-mm, 4.491102, 5.357238, 5.933801",
    "degrees-of-freedom, 4, 7, ",
    "expanded-95-mm, 12.469299, 12.667855, 11.630037",
    "recommended-mm, 44, -4, 2",
    "lowest-mm, 37, -9, -1",
    "highest-mm, 55, 5, 10",
    "probability-within, 0.873, 0.031, 0.964"
  })
  void everyColumnOfNumbersHoldsItsOwn(String column, Double first, Double second, Double third) {
    Double[] expected = {first, second, third};
    for (int i = 0; i < expected.length; i++) {
      if (expected[i] == null) {
        assertThat(cell(i + 1, column)).isEmpty();
      } else {
        assertThat(Double.parseDouble(cell(i + 1, column))).isCloseTo(expected[i], ROUNDING);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "state, 1, 1, 1",
    "wearer, DEMO-7, DEMO-7, DEMO-7",
    "stood-at, 2026-03-04T10:15+01:00, 2026-03-04T10:15+01:00, 2026-03-04T10:15+01:00",
    "plane, sagittal, sagittal, frontal",
    "side, right, right, right",
    "landmark, ankle axis, knee centre, knee centre",
    "line-of, right-foot, right-foot, right-foot",
    "verdict, inside-too-close, outside, within",
    "source, ankle leaflet, knee leaflet, another knee leaflet"
  })
  void everyColumnOfWordsHoldsItsOwn(String column, String first, String second, String third) {
    assertThat(List.of(cell(1, column), cell(2, column), cell(3, column)))
        .containsExactly(first, second, third);
  }

  @Test
  void noColumnIsLeftOut() {
    assertThat(line(0)).hasSize(8 + 9);
    assertThat(line(3)).hasSize(8 + 9);
  }
}
