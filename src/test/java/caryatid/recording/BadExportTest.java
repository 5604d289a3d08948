package caryatid.recording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.PlateDescription.ForceIs;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads when a file cannot be used; each sentence whole. */
class BadExportTest {
  private static final PlateDescription USUAL = Described.usual();

  private static Described.Plate plate() {
    return new Described.Plate("plate 1").units();
  }

  private static void refused(
      NamedBytes export, PlateDescription description, String... sentences) {
    assertThat(Exports.refusals(export, description)).containsExactly(sentences);
  }

  @Test
  void anEmptyFile() {
    refused(
        Exports.text(""),
        USUAL,
        "stand.csv: expected a force plate's text export, found an empty file. Export again.");
  }

  @Test
  void namesWithoutRows() {
    refused(
        Exports.of("Subject: K7", "Time,Fz,CoPx,CoPy"),
        USUAL,
        "stand.csv line 2: expected rows of numbers below the names, found none. Export again with"
            + " the sample values included.");
  }

  @Test
  void proseIsNoTable() {
    refused(
        Exports.of("Dear colleague", "the stand went well."),
        USUAL,
        "stand.csv: expected a table of numbers with two columns or more, found none in 2 lines."
            + " Export again with the sample values included.");
  }

  @Test
  void bytesThatAreNoText() {
    refused(
        NamedBytes.of("stand.xls", new byte[] {(byte) 0xd0, (byte) 0xcf, 0, 0, 0, 1, 2, 3}),
        USUAL,
        "stand.xls: expected text, found bytes that no text has. Export as text (CSV, tab or"
            + " semicolon separated) instead of the program's own format.");
  }

  @Test
  void textInACell() {
    refused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,abc,1,2", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3, column Fz: expected a number, found 'abc'. Empty the cell or export"
            + " again.");
  }

  @Test
  void aRaggedRow() {
    refused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3: expected 4 cells, found 3. Delete the row or export again.");
  }

  @Test
  void aFileThatEndsWithinARow() {
    refused(
        Exports.text("Time,Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n0.02,80"),
        USUAL,
        "stand.csv line 4: the file ends within a row: expected 4 cells, found 2. It may still be"
            + " being written; wait and export again, or delete the row.");
  }

  @Test
  void aLineThatIsNoRow() {
    refused(
        Exports.of("Time,Fz,CoPx,CoPy", "0.00,800,1,2", "pause", "0.01,800,1,2", "0.02,800,1,2"),
        USUAL,
        "stand.csv line 3: expected a row of numbers as above and below, found 'pause'. Delete the"
            + " line if it is no sample, or export again.");
  }

  /** A quote that opens and never closes may have taken a number's first digit with it. */
  @Test
  void aQuoteThatIsNotClosed() {
    refused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1,\"2", "0.02,800,1,2", "0.03,800,1,2"),
        USUAL,
        "stand.csv line 3: expected a row of numbers as above and below, found '0.01,800,1,\"2'."
            + " Delete the line if it is no sample, or export again.");
  }

  @Test
  void anotherDecimalMark() {
    refused(
        Exports.of("Time;Fz;CoPx;CoPy", "0.00;800.5;1;2", "0.01;800,5;1;2", "0.02;800.5;1;2"),
        new Described()
            .form(
                new ExportForm(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of('.'),
                    java.util.OptionalInt.empty(),
                    java.util.OptionalInt.empty(),
                    List.of(),
                    java.util.OptionalInt.empty()))
            .plate(plate())
            .get(),
        "stand.csv line 3, column Fz: expected decimals behind a point as in the other rows, found"
            + " '800,5'. Correct the cell or export again.");
  }

  @Test
  void commaAsDelimiterAndAsDecimalMark() {
    refused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0,00,800,5,1,0,2,0", "0,01,800,6,1,0,2,0", "0,02,800,6,1,0,2,0"),
        USUAL,
        "stand.csv line 2: expected as many names as cells in a row, found 4 names above 8 cells:"
            + " the comma seems to be both delimiter and decimal mark. Export again with a decimal"
            + " point, or with semicolon or tab between the cells.");
  }

  @Test
  void commasThatMayPartThousands() {
    refused(
        Exports.of(
            "Frame;Fz;CoPx;CoPy",
            "1;1,800;1,250;2,125",
            "2;1,801;1,251;2,126",
            "3;1,802;1,252;2,127"),
        new Described().rate(100).plate(plate()).get(),
        "stand.csv line 2: expected numbers whose decimal mark is plain, found commas such as in"
            + " '1,800' that may part decimals or thousands. Add to the plate description: export:"
            + " {decimal-mark: comma}, or point if they part thousands.");
  }

  @Test
  void aMissingColumn() {
    refused(
        Exports.rows("Time,Fz,X,Y", "0.0#,800,1,2", 3),
        new Described()
            .plate(
                plate()
                    .column(Channel.COP_X, "CoPx")
                    .column(Channel.COP_Y, "Y")
                    .column(Channel.FORCE_Z, "Fz"))
            .get(),
        "stand.csv line 1, column CoPx: the plate description names column 'CoPx', which the file"
            + " does not have. It has: Time, Fz, X, Y. Correct the name in the description.");
  }

  @Test
  void aColumnThatIsThereTwice() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy,Fz,CoPx,CoPy", "0.0#,800,1,2,700,3,4", 3),
        new Described().get(),
        "stand.csv line 1: several columns are called 'Fz', so that it cannot be told which is"
            + " meant. Give all columns names of their own in the plate description: export:"
            + " {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}",
        "stand.csv line 1: several columns are called 'CoPx', so that it cannot be told which is"
            + " meant. Give all columns names of their own in the plate description: export:"
            + " {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}",
        "stand.csv line 1: several columns are called 'CoPy', so that it cannot be told which is"
            + " meant. Give all columns names of their own in the plate description: export:"
            + " {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}");
  }

  @Test
  void noForcePlateInTheFile() {
    refused(
        Exports.rows("Time,knee angle,hip angle", "0.0#,12,3", 3),
        new Described().get(),
        "stand.csv line 1: expected a centre of pressure, or forces and moments, found the columns:"
            + " Time, knee angle, hip angle. If they are there under other names, add to the plate"
            + " description under plates, with your names: columns: {cop-x: CoPx, cop-y: CoPy,"
            + " force-z: Fz}");
  }

  @Test
  void columnsWithoutNames() {
    refused(
        Exports.of("0.00,800,1,2", "0.01,800,1,2", "0.02,800,1,2"),
        new Described().get(),
        "stand.csv: the 4 columns have no names. Add to the plate description, one name a column:"
            + " export: {columns: [Time, Fz, CoPx, CoPy]}");
  }

  @Test
  void unitsAndAxesThatAreStatedNowhere() {
    assertThat(
            Exports.refusals(
                Exports.rows("Time,Fx,Fy,Fz,Mx,My,Mz", "0.0#,1,2,800,3,4,5", 3), Optional.empty()))
        .containsExactly(
            "stand.csv: the unit of force is stated nowhere (plate 1): in N it is the weight of 81.6 kg,"
                + " in kg of 800.0 kg. Add to the plate description under the plate: units: {force: N},"
                + " or kg.",
            "stand.csv: the unit of moment is stated nowhere (plate 1). Add to the plate description"
                + " under the plate: units: {moment: N m}, or N mm.",
            "stand.csv: where the moments' zero point lies is stated nowhere (plate 1). Add to the"
                + " plate description under the plate, from the plate's papers, seen from the centre"
                + " of its top surface in the export's axes: true-origin-mm: {x: 0, y: 0, z: -40}",
            "stand.csv: which of the export's axes point to the person's right, forward and up is"
                + " stated nowhere. Add to the plate description, with your plate's directions: axes:"
                + " {right: +x, anterior: +y, up: +z}");
  }

  @Test
  void theCentresUnitIsStatedNowhere() {
    refused(
        Exports.rows("Time,CoPx,CoPy", "0.0#,1,2", 3),
        new Described().get(),
        "stand.csv: the unit of the centre of pressure is stated nowhere (plate 1). From the export's"
            + " zero it lies\nup to 2.0 mm if it is in mm,\nup to 20.0 mm if in cm,\nup to 2000.0 mm if"
            + " in m,\nup to 50.8 mm if in inch.\nAdd to the plate description under the plate: units:"
            + " {cop: mm}, or cm, m, inch.");
  }

  @Test
  void anUnknownUnit() {
    refused(
        Exports.rows("Time (s),Fz (stone),CoPx (mm),CoPy (mm)", "0.0#,80,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (stone): expected a unit of force, found 'stone'. Export in"
            + " another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or inch for the"
            + " centre of pressure.");
  }

  @Test
  void voltsWithoutCalibration() {
    refused(
        Exports.rows("Time (s),Fz (V),CoPx (mm),CoPy (mm)", "0.0#,8,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (V): expected a unit of force, found 'V': raw sensor values say"
            + " nothing without the plate's calibration. Export forces in N, or describe the sensors"
            + " under the plate: eight-channels, with horizontal-n-per-unit and"
            + " vertical-n-per-unit.");
  }

  @Test
  void countsWithoutCalibration() {
    refused(
        Exports.rows("Time (s),Fz (counts),CoPx (mm),CoPy (mm)", "0.0#,2048,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (counts): expected a unit of force, found 'counts': raw sensor"
            + " values say nothing without the plate's calibration. Export forces in N, or describe"
            + " the sensors under the plate: eight-channels, with horizontal-n-per-unit and"
            + " vertical-n-per-unit.");
  }

  @Test
  void unitsThatContradict() {
    refused(
        Exports.rows("Time (s),Fz (N),CoPx (cm),CoPy (cm)", "0.0#,800,1,2", 3),
        USUAL,
        "stand.csv line 1, column CoPx (cm): the unit is given here as cm, and elsewhere as mm."
            + " Correct the plate description's units, or the export.");
  }

  @Test
  void noRate() {
    refused(
        Exports.rows("Fz,CoPx,CoPy", "800,1,2", 3),
        USUAL,
        "stand.csv: the sampling rate of the 3 rows is stated nowhere. Add to the plate description:"
            + " time: {rate-hz: 1000}");
  }

  @Test
  void aTimeUnitThatMayBeAnother() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "#,800,1,2", 5),
        USUAL,
        "stand.csv line 1, column Time: the unit of the times in 'Time' is stated nowhere and more"
            + " than one is possible. Add to the plate description: time: {column: Time, unit: ms},"
            + " or s, us; if the column counts samples: time: {rate-hz: 1000}");
  }

  @Test
  void timesInMillisecondsThatCanOnlyBeMicroseconds() {
    refused(
        Exports.rows("time_ms,Fz,CoPx,CoPy", "#000,800,1,2", 5),
        USUAL,
        "stand.csv line 1, column time_ms: the unit is given as ms, which would make 1.0 Hz, no rate"
            + " of a force plate; in us it would be 1000.0 Hz. Add to the plate description: time:"
            + " {column: time, unit: us}");
  }

  @Test
  void timesThatTheDescriptionTakesForSecondsAndAreMilliseconds() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "#,800,1,2", 5),
        new Described().time("Time", TimeUnit.S).plate(plate()).get(),
        "stand.csv line 1, column Time: the plate description gives the unit of the times as s, which"
            + " would make 1.0 Hz, no rate of a force plate; in ms it would be 1000.0 Hz. Correct in"
            + " it: time: {column: Time, unit: ms}; if 1.0 Hz is right, write that as rate-hz"
            + " instead.");
  }

  /** 10 Hz is the slowest rate of a plate. */
  @Test
  void tenHertzInSecondsIsARateAndNineIsNot() {
    assertThat(slow("0.1")).isEmpty();
    assertThat(slow("0.11")).singleElement().asString().contains("would make 9.1 Hz");
  }

  private static List<String> slow(String step) {
    StringBuilder rows = new StringBuilder("Time (s),Fz,CoPx,CoPy\n");
    for (int i = 0; i < 10; i++) {
      rows.append(i * Double.parseDouble(step)).append(",800,1,2\n");
    }
    return Exports.refusals(Exports.text(rows.toString()), USUAL);
  }

  @Test
  void aColumnWithTwoMeanings() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,800,1,2", 3),
        new Described()
            .plate(
                plate()
                    .column(Channel.COP_X, "CoPx")
                    .column(Channel.COP_Y, "CoPx")
                    .column(Channel.FORCE_Z, "Time"))
            .get(),
        "stand.csv line 1, column Time: the plate description gives column 'Time' two meanings. Give"
            + " each its own column in it.",
        "stand.csv line 1, column CoPx: the plate description gives column 'CoPx' two meanings. Give"
            + " each its own column in it.");
  }

  @Test
  void anUnknownUnitInARowOfUnits() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy\ns,N,furlong,furlong", "0.0#,800,1,2", 3),
        new Described()
            .plate(
                new Described.Plate("plate 1")
                    .column(Channel.COP_X, "CoPx")
                    .column(Channel.COP_Y, "CoPy")
                    .column(Channel.FORCE_Z, "Fz"))
            .get(),
        "stand.csv line 2, column CoPx: expected a unit of the centre of pressure, found 'furlong'."
            + " Export in another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or inch"
            + " for the centre of pressure.",
        "stand.csv line 2, column CoPy: expected a unit of the centre of pressure, found 'furlong'."
            + " Export in another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or inch"
            + " for the centre of pressure.");
  }

  /** The remedy names what the centre of pressure was computed from. */
  @Test
  void aComputedCentreBesideThePlate() {
    refused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,0,0,800,16000,-240000", 3),
        new Described().plate(plate().trueOrigin(0, 0, -40).edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure from forces and moments lies beside the plate, on"
            + " average 300.0 mm to the right and 20.0 mm forward; the plate reaches from −200.0 mm to"
            + " 200.0 mm and from −300.0 mm to 300.0 mm. Check the unit of the moments (units:"
            + " moment), true-origin-mm, the axes and the edges in the plate description.");
  }

  @Test
  void cellsWhoseCentreLiesBesideThePlate() {
    Sensors cells =
        new Sensors.LoadCells(
            List.of(new Sensors.LoadCell("A", 250, 0), new Sensors.LoadCell("B", 260, 0)));
    refused(
        Exports.rows("Time,A,B", "0.0#,400,400", 3),
        new Described().plate(plate().sensors(cells).edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure from the sensors lies beside the plate, on average"
            + " 255.0 mm to the right and 0.0 mm forward; the plate reaches from −200.0 mm to 200.0 mm"
            + " and from −300.0 mm to 300.0 mm. Check the sensors' columns and places and the edges in"
            + " the plate description.");
  }

  /** 20.5 mm apart all the time, and so in one direction and its opposite that the mean is 0. */
  @Test
  void anExportedCentreThatContradictsTheMoments() {
    Described.Plate moments = plate().trueOrigin(0, 0, -40);
    String sentence =
        "stand.csv: plate 1: the exported centre of pressure and the one from forces and moments are"
            + " 20.5 mm apart (root mean square); on average the computed one lies %s to the right and"
            + " 0.0 mm forward. One of them is wrong: check the units of moment and centre of"
            + " pressure, true-origin-mm and the axes in the plate description. If the export's"
            + " moments are not about that origin, leave their columns out of it.";
    String names = "Time,Fx,Fy,Fz,Mx,My,CoPx,CoPy\n";
    refused(
        Exports.text(names + "0.00,0,0,800,16000,0,20.5,20\n0.01,0,0,800,16000,0,20.5,20\n"),
        new Described().plate(moments).get(),
        sentence.formatted("−20.5 mm"));
    refused(
        Exports.text(names + "0.00,0,0,800,16000,0,20.5,20\n0.01,0,0,800,16000,0,-20.5,20\n"),
        new Described().plate(moments).get(),
        sentence.formatted("0.0 mm"));
    assertThat(
            Exports.refusals(
                Exports.text(names + "0.00,0,0,800,16000,0,20,20\n0.01,0,0,800,16000,0,20,20\n"),
                new Described().plate(moments).get()))
        .isEmpty();
  }

  @Test
  void timeThatRunsBack() {
    refused(
        Exports.of(
            "Time,Fz,CoPx,CoPy", "0.00,800,1,2", "0.01,800,1,2", "-0.01,800,1,2", "0.00,800,1,2"),
        new Described().time("Time", TimeUnit.S).plate(plate()).get(),
        "stand.csv line 4, column Time: expected a later time than the row above (0.01 s), found"
            + " −0.01 s. Several recordings may have been joined; cut them apart, or export again.");
  }

  @Test
  void nobodyOnThePlate() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,19,1,2", 3),
        USUAL,
        "stand.csv: expected somebody on the plate, found no vertical force of 20 N or more. Export"
            + " the recording of a stand.");
  }

  @Test
  void centreBesideThePlate() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,800,250,20", 3),
        new Described().plate(plate().edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure lies beside the plate, on average 250.0 mm to the"
            + " right and 20.0 mm forward; the plate reaches from −200.0 mm to 200.0 mm and from"
            + " −300.0 mm to 300.0 mm. Check the unit (units: cop), the axes and the edges in the"
            + " plate description.");
  }

  @Test
  void aForceOfTheOtherSense() {
    refused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,-800,1,2", 3),
        new Described().forceIs(ForceIs.ON_THE_PERSON).plate(plate()).get(),
        "stand.csv: plate 1: the plate description says that the exported force is the one on the"
            + " person, but with the axes given there it is the one on the plate: loaded, the force"
            + " on the person points up. Correct force-is or axes.");
  }

  @Test
  void leftHandedAxesWithMoments() {
    refused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,1,2,800,3,4", 3),
        new Described()
            .axes(new Axes(Direction.MINUS_X, Direction.PLUS_Y, Direction.PLUS_Z))
            .plate(plate().trueOrigin(0, 0, -40))
            .get(),
        "stand.csv: these axes are left-handed (axes: {right: -x, anterior: +y, up: +z}), in which"
            + " forces and moments have no meaning. Correct one sign in the plate description.");
  }

  @Test
  void aTrueOriginAboveTheSurface() {
    refused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,1,2,800,3,4", 3),
        new Described().plate(plate().trueOrigin(0, 0, 40)).get(),
        "stand.csv: the plate description puts the moments' zero point of plate 1 above the plate's"
            + " top surface. It is seen from the surface: negative where the export's axis points up."
            + " Correct the sign in true-origin-mm.");
  }

  @Test
  void momentsBelowTheSurfaceWithoutHorizontalForces() {
    refused(
        Exports.rows("Time,Fz,Mx,My", "0.0#,800,3,4", 3),
        new Described().plate(plate().trueOrigin(0, 0, -40)).get(),
        "stand.csv: plate 1: with the moments' zero point below the surface, the horizontal forces"
            + " are needed, too. Add to the plate description under the plate, with your name:"
            + " columns: {force-x: Fx}, or export the forces.",
        "stand.csv: plate 1: with the moments' zero point below the surface, the horizontal forces"
            + " are needed, too. Add to the plate description under the plate, with your name:"
            + " columns: {force-y: Fx}, or export the forces.");
  }

  @Test
  void severalPlatesWhoseOriginsAreUnknown() {
    refused(
        Exports.rows(
            "Time (s),Fz1 (N),CoPx1 (mm),CoPy1 (mm),Fz2 (N),CoPx2 (mm),CoPy2 (mm)",
            "0.0#,400,1,2,400,3,4",
            3),
        new Described().get(),
        "stand.csv: with several plates, where each one's zero lies must be known (plate 1, plate 2)."
            + " Add to the plate description under each plate: export-origin-mm: {right: 0, anterior:"
            + " 0}; all 0 if the export counts all plates from one common zero.");
  }

  @Test
  void severalRecordingsInOneFile() {
    String one = "Time,Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n0.02,800,1,2\n";
    refused(
        Exports.text(one + one),
        USUAL,
        "stand.csv: holds 2 recordings, in lines 2-4, 6-8. Say which is meant; add to the plate"
            + " description: export: {recording: 1}");
  }

  @Test
  void allProblemsAreListedUpToTheCap() {
    NamedBytes export = Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,x,1,2", 60);
    List<String> refusals = Exports.refusals(export, USUAL);
    assertThat(refusals).hasSize(BadInput.CAP);
    assertThat(refusals.get(0)).startsWith("stand.csv line 2, column Fz: ");
    assertThat(refusals.get(49)).startsWith("stand.csv line 51, column Fz: ");
  }

  @Test
  void aFolderInPlaceOfAFile(@TempDir Path folder) {
    NamedBytes export =
        new NamedBytes() {
          @Override
          public String name() {
            return "stands";
          }

          @Override
          public InputStream open() throws IOException {
            return Files.newInputStream(folder);
          }
        };
    refused(
        export,
        USUAL,
        "stands: cannot be read (Is a directory). Check that it is there, is a file and may be"
            + " opened.");
  }
}
