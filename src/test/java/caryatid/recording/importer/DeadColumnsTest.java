package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.Sensors.RawChannel;
import caryatid.remark.BadInput;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A column that holds one number under load is dead: whoever stands, sways. */
class DeadColumnsTest {
  private static final String FORCES = "Fx,Fy,Fz,Mx,My,Mz";
  private static final String PRESSURE = "Fx,Fy,Fz,CoPx,CoPy";

  /** Six seconds at 100 Hz in which every column varies but the dead ones. */
  private static NamedBytes export(String header, String... dead) {
    return export(header, 600, dead);
  }

  private static NamedBytes export(String header, int rows, String... dead) {
    List<String> names = List.of(header.split(","));
    return Exports.text(
        header
            + "\n"
            + IntStream.range(0, rows)
                .mapToObj(i -> row(names, i, Arrays.asList(dead)))
                .collect(Collectors.joining("\n"))
            + "\n");
  }

  private static String row(List<String> names, int i, List<String> dead) {
    return names.stream()
        .map(name -> dead.contains(name) ? "7" : number(name, i))
        .collect(Collectors.joining(","));
  }

  private static String number(String name, int i) {
    double mean = name.startsWith("F") && !name.matches("F[xy].*") ? 300 : 5;
    double swing = name.startsWith("M") ? 1000 : 10;
    return String.valueOf(mean + swing * Math.sin(i / 50.0 + name.hashCode()));
  }

  private static List<String> refusals(NamedBytes export, Described.Plate plate) {
    return Exports.refusals(export, new Described().rate(100).plate(plate).get());
  }

  private static String refusal(String column) {
    return "stand.csv: plate 1: expected column '"
        + column
        + "' to vary as somebody sways, found one and the same number in all 600 samples under"
        + " load. The centre of pressure depends on it, so the channel seems to be dead. Check the"
        + " plate and its cable, and that the column was exported, and record again.";
  }

  @Test
  void aDeadMomentIsRefused() {
    Described.Plate plate = plate().trueOrigin(0, 0, 0);
    assertThat(refusals(export(FORCES), plate)).isEmpty();
    assertThat(refusals(export(FORCES, "Mx"), plate)).containsExactly(refusal("Mx"));
    assertThat(refusals(export(FORCES, "My"), plate)).containsExactly(refusal("My"));
    assertThat(refusals(export(FORCES, "Mz"), plate)).isEmpty();
  }

  @Test
  void aDeadVerticalForceIsRefusedWhereTheCentreComesOfMoments() {
    assertThat(refusals(loaded("Fz,Mx,My"), plate().trueOrigin(0, 0, 0)))
        .containsExactly(refusal("Fz"));
    assertThat(refusals(loaded("Fz,CoPx,CoPy"), plate())).isEmpty();
  }

  /** A vertical force that stands still at 700 N. */
  private static NamedBytes loaded(String header) {
    List<String> names = List.of(header.split(","));
    return Exports.text(
        header
            + "\n"
            + IntStream.range(0, 600)
                .mapToObj(i -> "700," + number(names.get(1), i) + "," + number(names.get(2), i))
                .collect(Collectors.joining("\n"))
            + "\n");
  }

  @Test
  void aDeadCentreOfPressureIsRefused() {
    assertThat(refusals(export(PRESSURE), plate())).isEmpty();
    assertThat(refusals(export(PRESSURE, "CoPx"), plate())).containsExactly(refusal("CoPx"));
    assertThat(refusals(export(PRESSURE, "CoPy"), plate())).containsExactly(refusal("CoPy"));
    assertThat(refusals(export("CoPx,CoPy", "CoPy"), plate())).containsExactly(refusal("CoPy"));
  }

  @Test
  void aDeadMomentBesideAnExportedCentreOfPressureIsNoRefusal() {
    assertThat(refusals(export("Fz,Mx,CoPx,CoPy", "Mx"), plate())).isEmpty();
  }

  @Test
  void aDeadHorizontalForceIsRefusedWhereTheOriginLiesBelowTheSurface() {
    Described.Plate below = plate().trueOrigin(0, 0, -40);
    assertThat(refusals(export(FORCES), below)).isEmpty();
    assertThat(refusals(export(FORCES, "Fx", "Fy"), below))
        .containsExactly(refusal("Fx"), refusal("Fy"));
  }

  @Test
  void anotherDeadHorizontalForceOnlyWithholdsWhatNeedsIt() throws BadInput {
    PlateDescription described = new Described().rate(100).plate(plate()).get();
    Recording whole = Exports.read(export(PRESSURE), described);
    assertThat(whole.plates().get(0).horizontal()).isPresent();
    Recording dead = Exports.read(export(PRESSURE, "Fy"), described);
    assertThat(dead.plates().get(0).horizontal()).isEmpty();
    assertThat(Exports.remarks(dead))
        .contains(
            "plate 1: column 'Fy' holds one and the same number in all 600 samples under load. The"
                + " measured force's line and everything else that needs the horizontal force are"
                + " left out.");
  }

  @Test
  void aDeadLoadCellIsRefused() {
    Described.Plate cells =
        plate()
            .sensors(
                new Sensors.LoadCells(
                    List.of(
                        new Sensors.LoadCell("F1", -100, 0), new Sensors.LoadCell("F2", 100, 0))));
    assertThat(refusals(export("F1,F2"), cells)).isEmpty();
    assertThat(refusals(export("F1,F2", "F2"), cells)).containsExactly(refusal("F2"));
  }

  @Test
  void aDeadRawChannelIsRefused() {
    assertThat(refusals(raw(), eight(-48))).isEmpty();
    assertThat(refusals(raw("FZ3"), eight(-48))).containsExactly(refusal("FZ3"));
    assertThat(refusals(raw("FX12"), eight(-48))).containsExactly(refusal("FX12"));
    assertThat(refusals(raw("FX12"), eight(0))).isEmpty();
  }

  private static NamedBytes raw(String... dead) {
    String header = Stream.of(RawChannel.values()).map(Enum::name).collect(Collectors.joining(","));
    return export(header, dead);
  }

  private static Described.Plate eight(double az0Mm) {
    Map<RawChannel, String> columns =
        Stream.of(RawChannel.values()).collect(Collectors.toMap(Function.identity(), Enum::name));
    return new Described.Plate("plate 1")
        .sensors(new Sensors.EightChannels(columns, 120, 200, az0Mm, 1, 1));
  }

  /** A coarse channel may not change for a moment. */
  @Test
  void fiveSecondsUnderLoadAreNeededToTell() {
    assertThat(refusals(export(PRESSURE, 499, "CoPx"), plate())).isEmpty();
    assertThat(refusals(export(PRESSURE, 500, "CoPx"), plate())).hasSize(1);
  }

  @Test
  void whatAColumnHoldsWithoutLoadDoesNotBringItToLife() {
    String unloaded = "Fz,CoPx,CoPy\n" + "0,0,0\n".repeat(50);
    String loaded =
        IntStream.range(0, 600)
            .mapToObj(i -> "700,7," + number("CoPy", i))
            .collect(Collectors.joining("\n"));
    assertThat(refusals(Exports.text(unloaded + loaded + "\n"), plate()))
        .containsExactly(refusal("CoPx"));
  }
}
