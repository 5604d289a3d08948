package caryatid.recording.importer;

import static caryatid.recording.importer.Exports.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.PlateDescription;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a person reads of units that are missing, unknown or contradict; each sentence whole. */
class BadUnitsTest {
  private static final PlateDescription USUAL = Described.usual();

  @Test
  void unitsAndAxesThatAreStatedNowhere() {
    assertThat(
            Exports.refusals(
                Exports.rows("Time,Fx,Fy,Fz,Mx,My,Mz", "0.0#,1,2,800,3,4,5", 3), Optional.empty()))
        .containsExactly(
            "stand.csv: the unit of force is stated nowhere (plate 1): in N it is the weight"
                + " of 81.6 kg, in kg of 800.0 kg. Add to the plate description under the plate:"
                + " units: {force: unknown}, with N or kg for unknown.",
            "stand.csv: the unit of moment is stated nowhere (plate 1). Add to the plate"
                + " description under the plate: units: {moment: unknown}, with N m or N mm for"
                + " unknown.",
            "stand.csv: nothing states where the moments' zero point lies (plate 1). Add to the"
                + " plate description under the plate, from the plate's papers, measured from the"
                + " centre of its top surface along the export's axes, with numbers for unknown:"
                + " true-origin-mm: {x: unknown, y: unknown, z: unknown}",
            "stand.csv: nothing states which of the export's axes point to the person's right,"
                + " forward and up. Add to the plate description: axes: {right: unknown, anterior:"
                + " unknown, up: unknown}, with +x, -x, +y, -y, +z or -z for each unknown. To find"
                + " out, step on the empty plate and lean forward, then to the right: the numbers"
                + " of the centre of pressure show which axis that is, and whether it rises or"
                + " falls.");
  }

  @Test
  void theCentresUnitIsStatedNowhere() {
    assertRefused(
        Exports.rows("Time,CoPx,CoPy", "0.0#,1,2", 3),
        new Described().get(),
        "stand.csv: the unit of the centre of pressure is stated nowhere (plate 1). Its"
            + " middle lies this far from the export's zero:\n2.0 mm if it is in mm,\n20.0 mm"
            + " if in cm,\n2000.0 mm if in m,\n50.8 mm if in inch.\nAdd to the plate"
            + " description under the plate: units: {cop: unknown}, with mm, cm, m or inch for"
            + " unknown.");
  }

  @Test
  void anUnknownUnit() {
    assertRefused(
        Exports.rows("Time (s),Fz (stone),CoPx (mm),CoPy (mm)", "0.0#,80,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (stone): expected a unit of force, found 'stone'. Export in"
            + " another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or inch for"
            + " the centre of pressure.");
  }

  @Test
  void voltsWithoutCalibration() {
    assertRefused(
        Exports.rows("Time (s),Fz (V),CoPx (mm),CoPy (mm)", "0.0#,8,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (V): expected a unit of force, found 'V': raw sensor values"
            + " say nothing without the plate's calibration. Export forces in N, or describe the"
            + " sensors under the plate: eight-channels, with horizontal-n-per-unit and"
            + " vertical-n-per-unit.");
  }

  @Test
  void countsWithoutCalibration() {
    assertRefused(
        Exports.rows("Time (s),Fz (counts),CoPx (mm),CoPy (mm)", "0.0#,2048,1,2", 3),
        new Described().plate(new Described.Plate("plate 1").force(ForceUnit.N)).get(),
        "stand.csv line 1, column Fz (counts): expected a unit of force, found 'counts': raw sensor"
            + " values say nothing without the plate's calibration. Export forces in N, or describe"
            + " the sensors under the plate: eight-channels, with horizontal-n-per-unit and"
            + " vertical-n-per-unit.");
  }

  @Test
  void unitsThatContradict() {
    assertRefused(
        Exports.rows("Time (s),Fz (N),CoPx (cm),CoPy (cm)", "0.0#,800,1,2", 3),
        USUAL,
        "stand.csv line 1, column CoPx (cm): the unit is given here as cm, and elsewhere as mm."
            + " Correct the plate description's units, or the export.");
  }

  @Test
  void anUnknownUnitInARowOfUnits() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy\ns,N,furlong,furlong", "0.0#,800,1,2", 3),
        new Described()
            .plate(
                new Described.Plate("plate 1")
                    .column(Channel.COP_X, "CoPx")
                    .column(Channel.COP_Y, "CoPy")
                    .column(Channel.FORCE_Z, "Fz"))
            .get(),
        "stand.csv line 2, column CoPx: expected a unit of the centre of pressure, found 'furlong'."
            + " Export in another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or"
            + " inch for the centre of pressure.",
        "stand.csv line 2, column CoPy: expected a unit of the centre of pressure, found 'furlong'."
            + " Export in another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or"
            + " inch for the centre of pressure.");
  }
}
