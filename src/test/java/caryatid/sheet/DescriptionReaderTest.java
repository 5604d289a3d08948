package caryatid.sheet;

import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.PlateLayout.Extent;
import caryatid.recording.model.PlateLayout.TrueOrigin;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
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
                ExportLayout.UNSTATED,
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
    assertThat(read.layout())
        .isEqualTo(
            new ExportLayout(
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
    assertThat(read("export: {delimiter: " + word + "}\n").layout().delimiter())
        .contains(delimiter);
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
            "columns: {force-z: Fz, cop-x: CoPx, cop-y: CoPy},"
                + " units: {force: kg, moment: N mm, cop: inch},"
                + " edges-mm: {left: -200, right: 201, rear: -300, front: 302},"
                + " true-origin-mm: {x: 0.5, y: -1, z: -40},"
                + " export-origin-mm: {right: 3, anterior: -4}");
    assertThat(plate)
        .isEqualTo(
            new PlateLayout(
                "plate 1",
                Map.of(Channel.FORCE_Z, "Fz", Channel.COP_X, "CoPx", Channel.COP_Y, "CoPy"),
                Optional.of(LengthUnit.INCH),
                Optional.of(ForceUnit.KG),
                Optional.of(MomentUnit.N_MM),
                Optional.of(new Extent(-200, 201, -300, 302)),
                Optional.of(new TrueOrigin(0.5, -1, -40)),
                Optional.of(new ExportOrigin(3, -4)),
                Optional.empty(),
                MeasuredDirections.BOTH));
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
            read("""
            measuring-lines:
              - {name: rear edge, forward-from-mm: -300, registration-mm: 1}
              - {name: midline, rightward-from-mm: 2, registration-mm: 0.5}
            """)
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
    assertThat(accuracy.leanRad()).isEqualTo(Math.toRadians(0.7));
  }

  @Test
  void theLeanOfAPlateCanBeStated() throws BadInput {
    var accuracy =
        read("accuracy: {cop-mm: 3, level-deg: 0, force-percent: 0.5, lean-deg: 0.3}\n")
            .accuracy()
            .get();
    assertThat(accuracy.leanRad()).isEqualTo(Math.toRadians(0.3));
  }
}
