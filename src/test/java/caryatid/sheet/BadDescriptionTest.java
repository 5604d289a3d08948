package caryatid.sheet;

import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.PlateDescription;
import caryatid.remark.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused in a plate description, and in which words. */
class BadDescriptionTest {
  private static PlateDescription read(String more) throws BadInput {
    return Sheets.description(Sheets.DESCRIPTION + more);
  }

  @Test
  void anUnknownEncodingIsRefused() {
    for (String encoding : List.of("UTF-9", "not an encoding!")) {
      assertThat(withLines("export: {encoding: " + encoding + "}\n"))
          .containsExactly(
              "plate.yaml line 3, column 20: `encoding`: the encoding '"
                  + encoding
                  + "' is not known. Write for example UTF-8, ISO-8859-1 or windows-1252.");
    }
  }

  @Test
  void oneDirectionAloneIsRefusedUnlessThePlateMeasuresNoOther() throws BadInput {
    String columns = "plates: [{name: p, columns: {cop-y: y, force-z: Fz}";
    String alone =
        "plate.yaml line 3, column 37: `cop-y` alone gives the centre of pressure in one direction;"
            + " the other, or the moments, are missing. Name their columns. If the plate measures"
            + " fore and aft only, add `measures: fore and aft`. One that measures sideways only"
            + " cannot be used.";
    assertThat(withLines(columns + "}]\n")).containsExactly(alone);
    assertThat(withLines(columns + ", measures: both}]\n")).containsExactly(alone);
    assertThat(read("plates: [{name: p, columns: {cop-y: y, cop-x: x}}]\n").plates()).hasSize(1);
    assertThat(read("plates: [{name: p, columns: {cop-z: z, moment-x: m}}]\n").plates()).hasSize(1);
  }

  @Test
  void aPlateMeasuresBothDirectionsOrForeAndAft() throws BadInput {
    String columns = "plates: [{name: p, columns: {cop-y: y}, measures: ";
    assertThat(read(columns + "fore and aft}]\n").plates().get(0).measures())
        .isEqualTo(MeasuredDirections.FORE_AND_AFT);
    assertThat(read("plates: [{name: p}]\n").plates().get(0).measures())
        .isEqualTo(MeasuredDirections.BOTH);
    assertThat(withLines("plates: [{name: p, measures: sideways}]\n"))
        .containsExactly(
            "plate.yaml line 3, column 30: `measures`: expected one of: both, fore and aft; found"
                + " 'sideways'. Write one of these words.");
  }

  @Test
  void aCommaCannotBeDelimiterAndDecimalMark() {
    assertThat(withLines("export: {delimiter: comma, decimal-mark: comma}\n"))
        .containsExactly(
            "plate.yaml line 3, column 42: the comma cannot be both `delimiter` and `decimal-mark`."
                + " Open the export in a text editor and see which of the two it is.");
  }

  @Test
  void theHeaderStandsAboveTheData() throws BadInput {
    assertThat(read("export: {header-line: 6, first-data-line: 7}\n").layout().headerLine())
        .hasValue(6);
    assertThat(withLines("export: {header-line: 7, first-data-line: 7}\n"))
        .containsExactly(
            "plate.yaml line 3, column 23: `header-line` is 7, which is not above"
                + " `first-data-line`, 7. Count the lines of the export from 1 and correct one of"
                + " them.");
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "1.5", "1000001", "99999999999"})
  void aLineIsAWholeNumberFromOne(String line) {
    assertThat(withLines("export: {header-line: " + line + "}\n"))
        .containsExactly(
            "plate.yaml line 3, column 23: `header-line`: expected a whole number from 1 to"
                + " 1000000, found '"
                + line
                + "'. Correct it.");
  }

  @Test
  void aRateBesideAColumnIsRefused() {
    assertThat(withLines("time: {column: Time, rate-hz: 100}\n"))
        .containsExactly(
            "plate.yaml line 3, column 31: times come either from a column or from a rate. Keep"
                + " `rate-hz` alone, or delete it.");
  }

  @Test
  void aRateIsAboveNothing() throws BadInput {
    assertThat(read("time: {rate-hz: 0.001}\n").time().rateHz()).hasValue(0.001);
    assertThat(withLines("time: {rate-hz: 0}\n"))
        .containsExactly(
            "plate.yaml line 3, column 17: `rate-hz`: expected a number above 0 and at most"
                + " 1000000, found 0. Correct it; the key says its unit.");
  }

  @Test
  void twoDirectionsAlongOneAxisAreRefused() {
    assertThat(withLines("axes: {right: +x, anterior: -x, up: +z}\n"))
        .containsExactly(
            "plate.yaml line 3, column 7: `right`, `anterior` and `up` must lie along three"
                + " different axes. Give each of x, y and z once, for example {right: +x,"
                + " anterior: +y, up: +z}.");
  }

  @Test
  void namesStandOnce() {
    assertThat(
            withLines(
                """
                plates: [{name: a}, {name: a}]
                measuring-lines:
                  - {name: e, forward-from-mm: 0, registration-mm: 1}
                  - {name: e, rightward-from-mm: 0, registration-mm: 1}
                """))
        .containsExactly(
            "plate.yaml line 3, column 28: the plate 'a' is described twice. Give each plate its"
                + " own name.",
            "plate.yaml line 6, column 12: the measuring line 'e' is described twice. Give each"
                + " line its own name.");
  }

  @Test
  void aColumnServesOneChannel() {
    assertThat(withLines("plates: [{name: a, columns: {force-x: F, force-z: F}}]\n"))
        .containsExactly(
            "plate.yaml line 3, column 51: the column 'F' is given for two channels of this plate."
                + " Correct one of them.");
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 0, 1", "1, 0, 0, 1", "0, 1, 5, 5", "0, 1, 6, 5"})
  void edgesInTheWrongOrderAreRefused(int left, int right, int rear, int front) {
    String edges = "{left: %d, right: %d, rear: %d, front: %d}".formatted(left, right, rear, front);
    assertThat(withLines("plates:\n  - name: a\n    edges-mm: " + edges + "\n"))
        .containsExactly(
            "plate.yaml line 5, column 15: an edge lies on the wrong side of the opposite one:"
                + " `right` must be above `left`, `front` above `rear`. Correct the numbers.");
  }

  @Test
  void aMeasuringLineHasOneSense() {
    assertThat(
            withLines(
                """
                measuring-lines:
                  - {name: a, registration-mm: 1}
                  - {name: b, forward-from-mm: 0, rightward-from-mm: 0, registration-mm: 1}
                """))
        .containsExactly(
            "plate.yaml line 4, column 5: the place of the measuring line 'a' is missing. Add"
                + " `forward-from-mm` if you measure forward from it, or `rightward-from-mm` if you"
                + " measure to the right from it.",
            "plate.yaml line 5, column 5: the measuring line 'b' has both `forward-from-mm` and"
                + " `rightward-from-mm`. Keep one; describe a corner as two lines.");
  }

  /** Both sides of 20 mm, across and along. */
  @Test
  void platesThatCoverTheSameGroundAreRefused() throws BadInput {
    String first =
        "plates:\n  - {name: a, edges-mm: {left: -400, right: 0, rear: -300, front: 300}}\n";
    assertThat(read(first + plate(-20, 400, -300, 300)).plates()).hasSize(2);
    assertThat(read(first + plate(-400, 0, 280, 900)).plates()).hasSize(2);
    String refused =
        "plate.yaml line 4, column 3: the edges of “b” and “a” overlap by more than 20 mm."
            + " `edges-mm` are measured from the common zero of all plates, not from each plate's"
            + " centre. Correct the numbers.";
    assertThat(withLines(first + plate(-20.1, 400, -300, 300))).containsExactly(refused);
    assertThat(withLines(first + plate(-400, 0, 279.9, 900))).containsExactly(refused);
  }

  private static String plate(double left, double right, double rear, double front) {
    return "  - {name: b, edges-mm: {left: "
        + left
        + ", right: "
        + right
        + ", rear: "
        + rear
        + ", front: "
        + front
        + "}}\n";
  }
}
