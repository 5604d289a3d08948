package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static caryatid.recording.importer.Exports.assertRefused;

import caryatid.recording.model.Channel;
import org.junit.jupiter.api.Test;

/** What a person reads where a column is missing or may be another; each sentence whole. */
class BadColumnsTest {
  @Test
  void aMissingColumn() {
    assertRefused(
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
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy,Fz,CoPx,CoPy", "0.0#,800,1,2,700,3,4", 3),
        new Described().get(),
        "stand.csv line 1: several columns are called 'Fz', so it is unclear which"
            + " is meant. Give each column a different name in the plate description:"
            + " export: {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}",
        "stand.csv line 1: several columns are called 'CoPx', so it is unclear"
            + " which is meant. Give each column a different name in the plate"
            + " description: export: {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}",
        "stand.csv line 1: several columns are called 'CoPy', so it is unclear"
            + " which is meant. Give each column a different name in the plate"
            + " description: export: {columns: [Time, Fz, CoPx, CoPy, Fz, CoPx, CoPy]}");
  }

  @Test
  void noForcePlateInTheFile() {
    assertRefused(
        Exports.rows("Time,knee angle,hip angle", "0.0#,12,3", 3),
        new Described().get(),
        "stand.csv line 1: expected a centre of pressure, or forces and moments, found the columns:"
            + " Time, knee angle, hip angle. If they are there under other names, add to the plate"
            + " description under plates, with your names for unknown: columns: {cop-x: unknown,"
            + " cop-y: unknown, force-z: unknown}; with forces and moments in its place: columns:"
            + " {force-x: unknown, force-y: unknown, force-z: unknown, moment-x: unknown, moment-y:"
            + " unknown, moment-z: unknown}; if these are load cells, where each of them stands:"
            + " cells: [{column: unknown, right-mm: unknown, anterior-mm: unknown}]");
  }

  /** As where names stand in several lines, which quotes hold together. */
  @Test
  void describedNamesInAFileWithoutAnyAreSaidOnce() {
    assertRefused(
        Exports.of("\"Time", "(s)\",\"Fz", "(N)\"", "0.00,800,1,2", "0.01,800,1,2", "0.02,800,1,2"),
        new Described()
            .plate(plate().column(Channel.FORCE_Z, "Fz").column(Channel.COP_X, "X"))
            .get(),
        "stand.csv: the 4 columns have no names. Add to the plate description, one name per column"
            + " in place of each unknown: export: {columns: [unknown, unknown]}");
  }

  @Test
  void columnsWithoutNames() {
    assertRefused(
        Exports.of("0.00,800,1,2", "0.01,800,1,2", "0.02,800,1,2"),
        new Described().get(),
        "stand.csv: the 4 columns have no names. Add to the plate description, one name per column"
            + " in place of each unknown: export: {columns: [unknown, unknown]}");
  }

  @Test
  void aColumnWithTwoMeanings() {
    assertRefused(
        Exports.rows("Time,Fz,CoPx,CoPy", "0.0#,800,1,2", 3),
        new Described()
            .plate(
                plate()
                    .column(Channel.COP_X, "CoPx")
                    .column(Channel.COP_Y, "CoPx")
                    .column(Channel.FORCE_Z, "Time"))
            .get(),
        "stand.csv line 1, column Time: the plate description gives column 'Time' two meanings."
            + " Give each its own column in it.",
        "stand.csv line 1, column CoPx: the plate description gives column 'CoPx' two meanings."
            + " Give each its own column in it.");
  }
}
