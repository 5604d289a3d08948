package caryatid.sheet;

import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.Channel;
import caryatid.recording.ExportForm;
import caryatid.recording.ForceUnit;
import caryatid.recording.LengthUnit;
import caryatid.recording.MeasuringLine;
import caryatid.recording.MeasuringLine.Sense;
import caryatid.recording.MomentUnit;
import caryatid.recording.PlateDescription;
import caryatid.recording.PlateDescription.ForceIs;
import caryatid.recording.PlateLayout;
import caryatid.recording.PlateLayout.ExportOrigin;
import caryatid.recording.PlateLayout.Extent;
import caryatid.recording.PlateLayout.TrueOrigin;
import caryatid.recording.Sensors;
import caryatid.recording.TimeBase;
import caryatid.recording.TimeUnit;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DescriptionReaderTest {
  private static PlateDescription read(String more) throws BadInput {
    return Sheets.description(Sheets.DESCRIPTION + more);
  }

  private static PlateLayout plate(String line) throws BadInput {
    return read("plates: [{name: plate 1, " + line + "}]\n").plates().get(0);
  }

  @Test
  void aDescriptionNeedsNoMoreThanAName() throws BadInput {
    assertThat(read(""))
        .isEqualTo(
            new PlateDescription(
                "Level plate",
                ExportForm.UNSTATED,
                TimeBase.UNSTATED,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                false));
  }

  @Test
  void theFormOfTheExportIsRead() throws BadInput {
    PlateDescription read =
        read(
            "export: {encoding: windows-1252, delimiter: tab, decimal-mark: comma, header-line: 5,"
                + " first-data-line: 7, columns: [Time, Fz], recording: 2}\n");
    assertThat(read.form())
        .isEqualTo(
            new ExportForm(
                Optional.of("windows-1252"),
                Optional.of('\t'),
                Optional.of(','),
                OptionalInt.of(5),
                OptionalInt.of(7),
                List.of("Time", "Fz"),
                OptionalInt.of(2)));
  }

  @ParameterizedTest
  @CsvSource({"comma, ','", "semicolon, ;", "blank, ' '"})
  void delimitersGoByTheirNames(String word, char delimiter) throws BadInput {
    assertThat(read("export: {delimiter: " + word + "}\n").form().delimiter()).contains(delimiter);
  }

  @ParameterizedTest
  @CsvSource({"s, S", "ms, MS", "us, US"})
  void timeComesFromAColumnInItsUnit(String word, TimeUnit unit) throws BadInput {
    assertThat(read("time: {column: Time, unit: " + word + "}\n").time())
        .isEqualTo(new TimeBase(Optional.of("Time"), Optional.of(unit), OptionalDouble.empty()));
  }

  @Test
  void timeComesFromARate() throws BadInput {
    assertThat(read("time: {rate-hz: 62.5}\n").time().rateHz()).hasValue(62.5);
  }

  @Test
  void axesAreReadWithTheirSigns() throws BadInput {
    assertThat(read("axes: {right: -y, anterior: +x, up: -z}\n").axes())
        .contains(new Axes(Direction.MINUS_Y, Direction.PLUS_X, Direction.MINUS_Z));
    assertThat(read("axes: {right: +z, anterior: -x, up: +y}\n").axes())
        .contains(new Axes(Direction.PLUS_Z, Direction.MINUS_X, Direction.PLUS_Y));
  }

  @Test
  void forceIsOnThePersonOrOnThePlate() throws BadInput {
    assertThat(read("force-is: on the person\n").forceIs()).contains(ForceIs.ON_THE_PERSON);
    assertThat(read("force-is: on the plate\n").forceIs()).contains(ForceIs.ON_THE_PLATE);
  }

  @Test
  void aPlateIsReadWithAllItStates() throws BadInput {
    PlateLayout plate =
        plate(
            "columns: {force-z: Fz, cop-x: CoPx}, units: {force: kg, moment: N mm, cop: inch},"
                + " edges-mm: {left: -200, right: 201, rear: -300, front: 302},"
                + " true-origin-mm: {x: 0.5, y: -1, z: -40},"
                + " export-origin-mm: {right: 3, anterior: -4}");
    assertThat(plate)
        .isEqualTo(
            new PlateLayout(
                "plate 1",
                Map.of(Channel.FORCE_Z, "Fz", Channel.COP_X, "CoPx"),
                Optional.of(LengthUnit.INCH),
                Optional.of(ForceUnit.KG),
                Optional.of(MomentUnit.N_MM),
                Optional.of(new Extent(-200, 201, -300, 302)),
                Optional.of(new TrueOrigin(0.5, -1, -40)),
                Optional.of(new ExportOrigin(3, -4)),
                Optional.empty()));
  }

  @Test
  void loadCellsAreRead() throws BadInput {
    assertThat(
            plate(
                    "cells: [{column: A, right-mm: -100, anterior-mm: 150},"
                        + " {column: B, right-mm: 100, anterior-mm: 0}]")
                .sensors())
        .contains(
            new Sensors.LoadCells(
                List.of(new Sensors.LoadCell("A", -100, 150), new Sensors.LoadCell("B", 100, 0))));
  }

  @Test
  void eightRawChannelsAreReadWithTheirCalibration() throws BadInput {
    String columns =
        "columns: {fx12: A, fx34: B, fy14: C, fy23: D, fz1: E, fz2: F, fz3: G, fz4: H}";
    Sensors sensors =
        plate(
                "eight-channels: {"
                    + columns
                    + ", a-mm: 120, b-mm: 200, az0-mm: -48, horizontal-n-per-unit: 2,"
                    + " vertical-n-per-unit: 3}")
            .sensors()
            .orElseThrow();
    assertThat(sensors).isInstanceOf(Sensors.EightChannels.class);
    Sensors.EightChannels eight = (Sensors.EightChannels) sensors;
    assertThat(eight.columns())
        .hasSize(8)
        .containsEntry(Sensors.RawChannel.FX12, "A")
        .containsEntry(Sensors.RawChannel.FZ4, "H");
    assertThat(List.of(eight.aMm(), eight.bMm(), eight.az0Mm()))
        .containsExactly(120.0, 200.0, -48.0);
    assertThat(List.of(eight.horizontalNPerUnit(), eight.verticalNPerUnit()))
        .containsExactly(2.0, 3.0);
  }

  @Test
  void oneLoadCellIsRefused() {
    assertThat(
            withLines("plates: [{name: a, cells: [{column: A, right-mm: 0, anterior-mm: 0}]}]\n"))
        .containsExactly(
            "plate.yaml line 3, column 27: one load cell tells no centre of pressure. List all of"
                + " the plate's cells.");
  }

  @Test
  void whatTheUnloadedPlateShowsIsRemovedOnlyWhenAsked() throws BadInput {
    assertThat(read("").removeUnloadedOffset()).isFalse();
    assertThat(read("remove-unloaded-offset: yes\n").removeUnloadedOffset()).isTrue();
  }

  @Test
  void newtonMetresAreWrittenWithABlank() throws BadInput {
    assertThat(plate("units: {moment: N m}").momentUnit()).contains(MomentUnit.N_M);
    assertThat(withLines("plates: [{name: a, units: {moment: Nm}}]\n"))
        .containsExactly(
            "plate.yaml line 3, column 36: `moment`: expected one of: N m, N mm; found 'Nm'. Write"
                + " one of these words.");
  }

  @Test
  void measuringLinesAreReadInBothSenses() throws BadInput {
    assertThat(
            read("measuring-lines:\n"
                    + "  - {name: rear edge, forward-from-mm: -300, registration-mm: 1}\n"
                    + "  - {name: midline, rightward-from-mm: 2, registration-mm: 0.5}\n")
                .lines())
        .containsExactly(
            new MeasuringLine("rear edge", Sense.FORWARD, -300, 1),
            new MeasuringLine("midline", Sense.RIGHTWARD, 2, 0.5));
  }

  /** Validation: 180 degrees are pi, by definition. */
  @Test
  void accuracyIsReadInRadiansAndFractions() throws BadInput {
    var accuracy =
        read("accuracy: {cop-mm: 3, level-deg: 0.18, force-percent: 0.5}\n").accuracy().get();
    assertThat(accuracy.copMm()).isEqualTo(3);
    assertThat(accuracy.levelRad()).isCloseTo(3.14159265358979e-3, within(1e-15));
    assertThat(accuracy.forceFraction()).isEqualTo(0.005);
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
  void aCommaCannotBeDelimiterAndDecimalMark() {
    assertThat(withLines("export: {delimiter: comma, decimal-mark: comma}\n"))
        .containsExactly(
            "plate.yaml line 3, column 42: the comma cannot be both `delimiter` and `decimal-mark`."
                + " Open the export in a text editor and see which of the two it is.");
  }

  @Test
  void theHeaderStandsAboveTheData() throws BadInput {
    assertThat(read("export: {header-line: 6, first-data-line: 7}\n").form().headerLine())
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
                "plates: [{name: a}, {name: a}]\n"
                    + "measuring-lines:\n"
                    + "  - {name: e, forward-from-mm: 0, registration-mm: 1}\n"
                    + "  - {name: e, rightward-from-mm: 0, registration-mm: 1}\n"))
        .containsExactly(
            "plate.yaml line 3, column 28: the plate 'a' is described twice. Give each plate a name"
                + " of its own.",
            "plate.yaml line 6, column 12: the measuring line 'e' is described twice. Give each"
                + " line a name of its own.");
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
                "measuring-lines:\n"
                    + "  - {name: a, registration-mm: 1}\n"
                    + "  - {name: b, forward-from-mm: 0, rightward-from-mm: 0, registration-mm: 1}\n"))
        .containsExactly(
            "plate.yaml line 4, column 5: it is not said where the measuring line 'a' lies. Add"
                + " `forward-from-mm` for a line one measures forward from, or `rightward-from-mm`"
                + " for one measured from to the right.",
            "plate.yaml line 5, column 5: the measuring line 'b' has both `forward-from-mm` and"
                + " `rightward-from-mm`. Keep one; describe a corner as two lines.");
  }
}
