package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.Sensors;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What a person reads where a plate, its axes or its origins cannot be; each sentence whole. */
class BadPlatesTest {
  private static final PlateDescription USUAL = Described.usual();

  /** The remedy names what the centre of pressure was computed from. */
  @Test
  void aComputedCentreBesideThePlate() {
    assertRefused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,0,0,800,16000,-240000", 3),
        new Described().plate(plate().trueOrigin(0, 0, -40).edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure from forces and moments lies off the plate,"
            + " on average 300.0 mm to the right and 20.0 mm forward; the plate reaches from −200.0"
            + " mm to 200.0 mm and from −300.0 mm to 300.0 mm. Check the unit of the moments"
            + " (units: moment), true-origin-mm, the axes and the edges in the plate description.");
  }

  @Test
  void aForceInNewtonsThatIsTakenForKilograms() {
    assertRefused(
        Exports.rows("Time,Fz,X,Y", "0.0#,700,1,2", 3),
        new Described()
            .plate(
                plate()
                    .force(ForceUnit.KG)
                    .column(Channel.FORCE_Z, "Fz")
                    .column(Channel.COP_X, "X")
                    .column(Channel.COP_Y, "Y"))
            .get(),
        "stand.csv: plate 1: the force on the plate is the weight of 700.0 kg, more than any"
            + " person's. Check the unit of force (units: force) in the plate description.");
  }

  /** Metres: a standard deviation of 17 mm, which 99 of 100 people do not reach. */
  @Test
  void metresThatAreTakenForMillimetresMoveByLessThanAnyPerson() {
    assertRefused(
        swaying(0.024),
        USUAL,
        "stand.csv: plate 1: the centre of pressure moves by less than a twentieth of a millimetre"
            + " (standard deviation), less than any person's. Check its unit (units: cop) in the"
            + " plate description, or, where it is computed from forces and moments, theirs; if"
            + " they are right, nobody stood there.");
    assertThat(Exports.refusals(swaying(0.08), USUAL)).isEmpty();
  }

  /** A sine of an amplitude fore and aft, half of it sideways, 6 s at 100 Hz. */
  private static NamedBytes swaying(double amplitude) {
    StringBuilder rows = new StringBuilder("Time,Fz,CoPx,CoPy\n");
    for (int i = 0; i < 600; i++) {
      double y = amplitude * Math.sin(i / 50.0);
      rows.append(
          String.format(Locale.ROOT, "%.2f,700,%.5f,%.5f\n", i / 100.0, 0.02 + y / 2, 0.04 + y));
    }
    return Exports.text(rows.toString());
  }

  @Test
  void cellsWhoseCentreLiesBesideThePlate() {
    Sensors cells =
        new Sensors.LoadCells(
            List.of(new Sensors.LoadCell("A", 250, 0), new Sensors.LoadCell("B", 260, 0)));
    assertRefused(
        Exports.rows("Time,A,B", "0.0#,400,400", 3),
        new Described().plate(plate().sensors(cells).edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure from the sensors lies off the plate, on"
            + " average 255.0 mm to the right and 0.0 mm forward; the plate reaches from −200.0 mm"
            + " to 200.0 mm and from −300.0 mm to 300.0 mm. Check the sensors' columns and places"
            + " and the edges in the plate description.");
  }

  /** 20.5 mm apart all the time, and so in one direction and its opposite that the mean is 0. */
  @Test
  void anExportedCentreThatContradictsTheMoments() {
    Described.Plate moments = plate().trueOrigin(0, 0, -40);
    String sentence =
        "stand.csv: plate 1: the exported centre of pressure and the one from forces and moments"
            + " are 20.5 mm apart (root mean square); on average the computed one lies %s to the"
            + " right and 0.0 mm forward. One of them is wrong: check the units of moment and"
            + " centre of pressure, true-origin-mm and the axes in the plate description. If the"
            + " export's moments are not about that origin, leave their columns out of it.";
    String names = "Time,Fx,Fy,Fz,Mx,My,CoPx,CoPy\n";
    assertRefused(
        Exports.text(names + "0.00,0,0,800,16000,0,20.5,20\n0.01,0,0,800,16000,0,20.5,20\n"),
        new Described().plate(moments).get(),
        sentence.formatted("−20.5 mm"));
    assertRefused(
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
  void nobodyOnThePlate() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,19,1,2", 3),
        USUAL,
        "stand.csv: expected somebody on the plate, found no vertical force of 20 N or more. Export"
            + " the recording of a stand.");
  }

  @Test
  void centreBesideThePlate() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,800,250,20", 3),
        new Described().plate(plate().edges(-200, 200, -300, 300)).get(),
        "stand.csv: plate 1: the centre of pressure lies off the plate, on average 250.0 mm to the"
            + " right and 20.0 mm forward; the plate reaches from −200.0 mm to 200.0 mm and from"
            + " −300.0 mm to 300.0 mm. Check the unit (units: cop), export-origin-mm, the axes and"
            + " the edges in the plate description.");
  }

  @Test
  void aForceOfTheOtherSense() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,-800,1,2", 3),
        new Described().forceIs(ForceIs.ON_THE_PERSON).plate(plate()).get(),
        "stand.csv: plate 1: the plate description says that the exported force is the one on the"
            + " person, but with the axes given there it is the one on the plate: loaded, the force"
            + " on the person points up. Correct force-is or axes.");
  }

  @Test
  void leftHandedAxesWithMoments() {
    assertRefused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,1,2,800,3,4", 3),
        new Described()
            .axes(new Axes(Direction.MINUS_X, Direction.PLUS_Y, Direction.PLUS_Z))
            .plate(plate().trueOrigin(0, 0, -40))
            .get(),
        "stand.csv: these axes are left-handed (axes: {right: -x, anterior: +y, up: +z}), so forces"
            + " and moments would have no meaning. One sign is wrong: have somebody lean to the"
            + " right, then forward, and correct the axis whose numbers go the other way. If both"
            + " go as the axes say, reverse the sign of up, and check `force-is`, which turns with"
            + " it.");
  }

  /** A centre of pressure has a meaning in them, but a wrong sign would not show. */
  @Test
  void leftHandedAxesWithACentreOfPressureAloneAreRemarkedOn() throws BadInput {
    NamedBytes export = Exports.rows("Time (s),COPx (mm),COPy (mm)", "0.0#,1#,2#", 9);
    assertThat(remarks(export, new Axes(Direction.MINUS_X, Direction.PLUS_Y, Direction.PLUS_Z)))
        .contains(
            "These axes are left-handed (axes: {right: -x, anterior: +y, up: +z}). A centre of"
                + " pressure alone does not show whether a sign is wrong, which would swap left and"
                + " right, or front and rear. Lean to the right, then forward, and check that the"
                + " numbers go where the axes say.");
    assertThat(remarks(export, new Axes(Direction.MINUS_X, Direction.PLUS_Y, Direction.MINUS_Z)))
        .noneMatch(remark -> remark.contains("left-handed"));
  }

  private static List<String> remarks(NamedBytes export, Axes axes) throws BadInput {
    return Exports.read(export, new Described().axes(axes).plate(plate()).get()).remarks().stream()
        .map(Exports.WORDING::say)
        .toList();
  }

  @Test
  void aTrueOriginAboveTheSurface() {
    assertRefused(
        Exports.rows("Time,Fx,Fy,Fz,Mx,My", "0.0#,1,2,800,3,4", 3),
        new Described().plate(plate().trueOrigin(0, 0, 40)).get(),
        "stand.csv: the plate description puts the moments' zero point of plate 1 above the plate's"
            + " top surface. It is measured from the surface: negative where the export's axis"
            + " points up. Correct the sign in true-origin-mm.");
  }

  @Test
  void momentsBelowTheSurfaceWithoutHorizontalForces() {
    assertRefused(
        Exports.rows("Time,Fz,Mx,My", "0.0#,800,3,4", 3),
        new Described().plate(plate().trueOrigin(0, 0, -40)).get(),
        "stand.csv: plate 1: with the moments' zero point below the surface, the horizontal forces"
            + " are needed too. Add to the plate description under the plate, with your name for"
            + " unknown: columns: {force-x: unknown}, or export the forces.",
        "stand.csv: plate 1: with the moments' zero point below the surface, the horizontal forces"
            + " are needed too. Add to the plate description under the plate, with your name for"
            + " unknown: columns: {force-y: unknown}, or export the forces.");
  }

  @Test
  void severalPlatesWhoseOriginsAreUnknown() {
    assertRefused(
        Exports.rows(
            "Time (s),Fz1 (N),CoPx1 (mm),CoPy1 (mm),Fz2 (N),CoPx2 (mm),CoPy2 (mm)",
            "0.0#,400,1,2,400,3,4",
            3),
        new Described().get(),
        "stand.csv: with several plates, the place of each one's zero must be known (plate"
            + " 1, plate 2). Add to the plate description under each plate, with numbers for"
            + " unknown: export-origin-mm: {right: unknown, anterior: unknown}; all 0 if the"
            + " export counts all plates from one common zero.");
  }
}
