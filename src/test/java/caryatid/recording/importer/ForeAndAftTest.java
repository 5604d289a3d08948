package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sensors;
import caryatid.remark.BadInput;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Plates that measure fore and aft only. Validation by construction. */
class ForeAndAftTest {
  private static final int ROWS = 600;

  private static double foreMm(int i) {
    return 20 + 4 * Math.cos(0.07 * i) + Math.sin(0.9 * i);
  }

  private static double meanMm() {
    return IntStream.range(0, ROWS).mapToDouble(ForeAndAftTest::foreMm).sum() / ROWS;
  }

  private static double upN(int i) {
    return 800 + 3 * Math.sin(0.3 * i);
  }

  private static NamedBytes export(String header, IntFunction<double[]> row) {
    return Exports.text(
        header
            + "\n"
            + IntStream.range(0, ROWS)
                .mapToObj(row)
                .map(
                    cells ->
                        Arrays.stream(cells)
                            .mapToObj(cell -> String.format(Locale.ROOT, "%.6f", cell))
                            .collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n"))
            + "\n");
  }

  private static NamedBytes pressure() {
    return export("Fz,CoPy", i -> new double[] {upN(i), foreMm(i)});
  }

  private static PlateDescription described(Described.Plate plate) {
    return new Described().rate(100).plate(plate).get();
  }

  private static PlateTrack track(NamedBytes export, PlateDescription description) throws BadInput {
    return Exports.read(export, description).plates().get(0);
  }

  private static void assertForeAndAftAlone(PlateTrack track) {
    assertThat(track.copRightMm()).isEmpty();
    assertThat(track.usable().count()).isEqualTo(ROWS);
    for (int i = 0; i < ROWS; i++) {
      assertThat(track.copAnteriorMm().at(i)).isCloseTo(foreMm(i), within(1e-3));
    }
  }

  @Test
  void anExportedCentreIsRead() throws BadInput {
    Recording recording = Exports.read(pressure(), described(plate().foreAndAft()));
    assertForeAndAftAlone(recording.plates().get(0));
    assertThat(recording.plates().get(0).upN().orElseThrow().at(7)).isCloseTo(upN(7), within(1e-3));
    assertThat(Exports.remarks(recording))
        .contains(
            "plate 1 measures fore and aft only: nothing can be said about the frontal plane.");
  }

  @Test
  void aCentreAloneIsReadWhenItCrossesZero() throws BadInput {
    NamedBytes export =
        export(
            "Time (s),CoPy", i -> new double[] {i / 100.0, Math.rint(10 * (foreMm(i) - 20)) / 10});
    PlateTrack track = track(export, new Described().plate(plate().foreAndAft()).get());
    assertThat(track.copRightMm()).isEmpty();
    assertThat(IntStream.range(0, ROWS).filter(i -> track.copAnteriorMm().at(i) == 0)).isNotEmpty();
    assertThat(track.usable().count()).isEqualTo(ROWS);
  }

  @Test
  void forcesAndOneMomentGiveTheCentre() throws BadInput {
    // y = (Mx - z0 Fy) / Fz, with z0 the true origin's height.
    NamedBytes export =
        export(
            "Fy,Fz,Mx",
            i -> {
              double pushN = 2 * Math.sin(0.2 * i);
              return new double[] {pushN, upN(i), upN(i) * foreMm(i) - 40 * pushN};
            });
    assertForeAndAftAlone(track(export, described(plate().trueOrigin(0, 0, -40).foreAndAft())));
  }

  @Test
  void loadCellsInFrontAndBehindGiveTheCentre() throws BadInput {
    NamedBytes export =
        export(
            "A,B",
            i -> {
              double front = upN(i) * (foreMm(i) + 200) / 400;
              return new double[] {front, upN(i) - front};
            });
    Described.Plate plate =
        new Described.Plate("plate 1")
            .sensors(
                new Sensors.LoadCells(
                    List.of(new Sensors.LoadCell("A", 0, 200), new Sensors.LoadCell("B", 0, -200))))
            .force(ForceUnit.N)
            .foreAndAft();
    assertForeAndAftAlone(track(export, described(plate)));
  }

  @Test
  void columnsOfTheOtherDirectionAreNotUsed() throws BadInput {
    NamedBytes export =
        export(
            "Fx,Fy,Fz,CoPx,CoPy",
            i -> new double[] {500, 1 + Math.sin(i), upN(i), i == 9 ? 1e9 : 7, foreMm(i)});
    PlateTrack track = track(export, described(plate().foreAndAft()));
    assertForeAndAftAlone(track);
    assertThat(track.horizontal()).isEmpty();
  }

  @Test
  void aColumnAcrossTheAxesIsRefused() {
    Axes turned = new Axes(Direction.MINUS_Y, Direction.PLUS_X, Direction.PLUS_Z);
    Exports.assertRefused(
        pressure(),
        new Described().rate(100).axes(turned).plate(plate().foreAndAft()).get(),
        "stand.csv: plate 1: by the axes in the plate description cop-x is needed, which the export"
            + " does not have. Correct the axes, or name its column in the description.");
  }

  @Test
  void theEdgesInFrontAndBehindCount() throws BadInput {
    assertForeAndAftAlone(
        track(pressure(), described(plate().edges(-1, 1, -300, 300).foreAndAft())));
    Exports.assertRefused(
        pressure(),
        described(plate().edges(-200, 200, -300, 0).foreAndAft()),
        "stand.csv: plate 1: the centre of pressure lies in front of the plate or behind it, on"
            + " average "
            + String.format(Locale.ROOT, "%.1f", meanMm())
            + " mm forward; the plate reaches from \u2212300.0 mm to 0.0 mm. Check the"
            + " units, the axes, the sensors' places or true-origin-mm, and the edges in the plate"
            + " description.");
  }

  @Test
  void aMeanThatWasSubtractedIsRefused() {
    double mean = meanMm();
    Exports.assertRefused(
        export("Fz,CoPy", i -> new double[] {upN(i), foreMm(i) - mean}),
        described(plate().foreAndAft()),
        "stand.csv: plate 1: the centre of pressure is zero on average in every direction measured,"
            + " although it sways: its mean seems to have been subtracted, so it no longer shows"
            + " where the wearer stood. Export the centre of pressure as the plate measured it.");
  }

  @Test
  void aDeadColumnIsRefused() {
    assertThat(
            Exports.refusals(
                export("Fz,CoPy", i -> new double[] {upN(i), 20}), described(plate().foreAndAft())))
        .hasSize(1)
        .allMatch(refusal -> refusal.contains("expected column 'CoPy' to vary"));
  }

  @Test
  void whatIsNotDescribedAsMeasuringOneDirectionIsAskedFor() {
    Exports.assertRefused(
        pressure(),
        described(plate()),
        "stand.csv: plate 1: the columns known by name give the centre of pressure in one"
            + " horizontal direction alone. If the other direction is in the export, name its"
            + " column under columns and delete the line measures. If the plate measures fore and"
            + " aft only, write measures: fore and aft. One that measures sideways only cannot be"
            + " used.");
    Inspection seen = Importer.inspect(pressure(), Optional.empty());
    assertThat(seen.sampled()).isEmpty();
    assertThat(seen.draft().plates().get(0).columns())
        .containsOnlyKeys(Channel.FORCE_Z, Channel.COP_Y);
  }

  /** A centre in one direction beside all forces and moments: the moments give both. */
  @Test
  void momentsGiveBothWhereTheCentreIsThereInOneDirection() throws BadInput {
    for (String name : List.of("CoPx", "CoPy")) {
      NamedBytes export =
          export(
              "Fz,Mx,My," + name,
              i ->
                  new double[] {
                    upN(i), upN(i) * foreMm(i), -upN(i) * (5 + Math.sin(i)), 12 + Math.sin(2.0 * i)
                  });
      PlateTrack track = track(export, described(plate().trueOrigin(0, 0, 0)));
      assertThat(track.copAnteriorMm().at(7)).isCloseTo(foreMm(7), within(1e-3));
      assertThat(track.copRightMm().orElseThrow().at(7)).isCloseTo(5 + Math.sin(7), within(1e-3));
    }
  }

  @Test
  void theUnitIsAskedForAsOfAnyPlate() {
    assertThat(
            Exports.refusals(
                pressure(),
                described(new Described.Plate("plate 1").force(ForceUnit.N).foreAndAft())))
        .hasSize(1)
        .allMatch(refusal -> refusal.contains("centre of pressure"));
  }
}
