package caryatid.sheet;

import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.Sensors;
import caryatid.recording.model.Sensors.EightChannels;
import caryatid.recording.model.Sensors.LoadCell;
import caryatid.recording.model.Sensors.LoadCells;
import caryatid.recording.model.Sensors.RawChannel;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Raw sensors in a plate description. */
class SensorSectionTest {
  private static final String PLATE = "plates:\n  - name: a\n";
  private static final String CELLS =
      PLATE
          + """
              cells:
                - {column: C1, right-mm: -180, anterior-mm: 0}
                - {column: C2, right-mm: 180, anterior-mm: 20}
          """;
  private static final String CHANNELS =
      """
          eight-channels:
            columns: {fx12: a, fx34: b, fy14: c, fy23: d, fz1: e, fz2: f, fz3: g, fz4: h}
            a-mm: 120
            b-mm: 200
            az0-mm: -48
            horizontal-n-per-unit: -25.5
            vertical-n-per-unit: 50
      """;

  private static Optional<Sensors> sensors(String lines) throws BadInput {
    return Sheets.description(Sheets.DESCRIPTION + lines).plates().get(0).sensors();
  }

  @Test
  void aPlateWithoutRawSensorsHasNone() throws BadInput {
    assertThat(sensors(PLATE)).isEmpty();
  }

  @Test
  void loadCellsAreReadWithTheirPlaces() throws BadInput {
    assertThat(sensors(CELLS))
        .contains(new LoadCells(List.of(new LoadCell("C1", -180, 0), new LoadCell("C2", 180, 20))));
  }

  @Test
  void eightChannelsAreReadWithTheirCalibration() throws BadInput {
    Map<RawChannel, String> columns =
        Map.of(
            RawChannel.FX12, "a",
            RawChannel.FX34, "b",
            RawChannel.FY14, "c",
            RawChannel.FY23, "d",
            RawChannel.FZ1, "e",
            RawChannel.FZ2, "f",
            RawChannel.FZ3, "g",
            RawChannel.FZ4, "h");
    assertThat(sensors(PLATE + CHANNELS))
        .contains(new EightChannels(columns, 120, 200, -48, -25.5, 50));
  }

  @Test
  void oneCellAloneIsRefused() {
    assertThat(withLines(CELLS.replaceAll(".*C2.*\n", "")))
        .containsExactly(
            "plate.yaml line 6, column 7: one load cell alone says nothing about where the load is."
                + " Describe all cells of the plate.");
  }

  @Test
  void twoKindsOfSensorsAreRefused() {
    assertThat(withLines(CELLS + CHANNELS))
        .containsExactly(
            "plate.yaml line 9, column 7: both `cells` and `eight-channels` are given, but a plate"
                + " has one kind of sensors. Keep the one the export has.");
  }

  @Test
  void aCalibrationOfNothingIsRefused() {
    assertThat(withLines(PLATE + CHANNELS.replace("-25.5", "0")))
        .containsExactly(
            "plate.yaml line 10, column 30: the calibration is 0. Write the newtons in one exported"
                + " unit, as the plate's calibration sheet gives them.");
  }

  @Test
  void aMissingChannelIsRefused() {
    assertThat(withLines(PLATE + CHANNELS.replace(", fz4: h", "")))
        .containsExactly(
            "plate.yaml line 6, column 16: `fz4` is missing. Add the line `fz4: ...` here.");
  }

  @Test
  void aFileMayHoldSeveralRecordings() throws BadInput {
    assertThat(
            Sheets.description(Sheets.DESCRIPTION + "export: {recording: 2}\n")
                .layout()
                .recording())
        .hasValue(2);
  }
}
