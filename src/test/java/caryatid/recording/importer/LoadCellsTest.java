package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Sensors;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Load cells: their units, and the whole weight beside them. Validation by construction. */
class LoadCellsTest {
  private static Described.Plate plate() {
    return new Described.Plate("plate 1")
        .sensors(
            new Sensors.LoadCells(
                List.of(new Sensors.LoadCell("A", -100, 0), new Sensors.LoadCell("B", 100, 0))));
  }

  private static PlateDescription described(Described.Plate plate) {
    return new Described().rate(100).plate(plate).get();
  }

  private static List<String> remarks(NamedBytes export, Described.Plate plate) throws BadInput {
    return Exports.remarks(Exports.read(export, described(plate))).stream()
        .filter(remark -> remark.contains("load cells"))
        .toList();
  }

  private static double force(String header, String row) throws BadInput {
    Recording recording = Exports.read(Exports.rows(header, row, 50), described(plate()));
    return recording.plates().get(0).upN().orElseThrow().at(7);
  }

  @Test
  void theUnitInTheHeaderCounts() throws BadInput {
    assertThat(force("A [kg],B [kg]", "40,42")).isCloseTo(82 * 9.80665, within(1e-9));
    assertThat(force("A (N),B (N)", "400,420")).isCloseTo(820, within(1e-9));
    assertThat(force("A,B\nkg,kg", "40,42")).isCloseTo(82 * 9.80665, within(1e-9));
  }

  @Test
  void aUnitThatContradictsTheDescriptionIsRefused() {
    assertThat(
            Exports.refusals(
                Exports.rows("A [kg],B [kg]", "40,42", 50), described(plate().force(ForceUnit.N))))
        .containsExactly(
            "stand.csv line 1, column A [kg]: the unit is given here as kg, and elsewhere as N."
                + " Correct the plate description's units, or the export.");
  }

  @Test
  void cellsInDifferentUnitsAreRefused() {
    assertThat(Exports.refusals(Exports.rows("A [kg],B [N]", "40,420", 50), described(plate())))
        .containsExactly(
            "stand.csv line 1, column B [N]: the unit is given here as N, and elsewhere as kg."
                + " Correct the plate description's units, or the export.");
  }

  @Test
  void rawCellsAreRefused() {
    assertThat(Exports.refusals(Exports.rows("A [mV],B [mV]", "40,42", 50), described(plate())))
        .hasSize(2)
        .allMatch(s -> s.contains("expected a unit of force, found 'mV'"));
  }

  @Test
  void aUnitThatIsStatedNowhereIsAskedFor() {
    assertThat(Exports.refusals(Exports.rows("A,B", "40,42", 50), described(plate())))
        .containsExactly(
            "stand.csv: the unit of force is stated nowhere (plate 1): in N it is the weight"
                + " of 8.4 kg, in kg of 82.0 kg. Add to the plate description under the plate:"
                + " units: {force: unknown}, with N or kg for unknown.");
  }

  @Test
  void aWeightThatIsNotTheSumOfItsCellsIsRemarked() throws BadInput {
    String remark =
        "plate 1: the load cells add up to 800 N, the column of the weight says 820 N. The cells"
            + " are used.";
    Described.Plate described = plate().force(ForceUnit.N).column(Channel.FORCE_Z, "Weight");
    assertThat(remarks(Exports.rows("A,B,Weight", "400,400,820", 50), described))
        .containsExactly(remark);
    assertThat(remarks(Exports.rows("A,B,Weight", "400,400,815", 50), described)).isEmpty();
  }

  /** A column whose name says it is the whole needs no description. */
  @Test
  void aWeightIsFoundByItsName() throws BadInput {
    for (String name : List.of("Weight", "Total", "sum (N)", "Fz", "total weight")) {
      assertThat(remarks(Exports.rows("A (N),B (N)," + name, "400,400,820", 50), plate()))
          .as(name)
          .hasSize(1);
      assertThat(remarks(Exports.rows("A (N),B (N)," + name, "400,400,800", 50), plate()))
          .as(name)
          .isEmpty();
    }
  }

  /** 100 mm times (420 - 400) N over 820 N are 2.4 mm to the right. */
  @Test
  void anExportedCentreThatIsNotTheCellsIsRemarked() throws BadInput {
    String header = "A (N),B (N),CoPx (cm),CoPy (cm)";
    assertThat(remarks(Exports.rows(header, "400,420,0.7,0", 50), plate())).isEmpty();
    assertThat(remarks(Exports.rows(header, "400,420,-0.36,0", 50), plate()))
        .containsExactly(
            "plate 1: the exported centre of pressure lies 6.0 mm from that of the load cells on"
                + " average. The cells are used; check their positions in the plate description.");
    assertThat(remarks(Exports.rows(header, "400,420,0,0.6", 50), plate())).hasSize(1);
    assertThat(remarks(Exports.rows(header, "400,420,,", 50), plate())).isEmpty();
  }

  /** Without a unit it tells nothing, and is not asked about. */
  @Test
  void anExportedCentreWithoutAUnitIsLeftOut() throws BadInput {
    assertThat(remarks(Exports.rows("A (N),B (N),CoPx,CoPy", "400,420,90,0", 50), plate()))
        .isEmpty();
  }

  /** Words that are written together are still words. */
  @Test
  void aTotalWeightInOneWordIsFound() throws BadInput {
    for (String name : List.of("TotalWeight(kg)", "Total weight (kg)", "totalload [kg]")) {
      assertThat(remarks(Exports.rows("A (N),B (N)," + name, "400,400,90", 50), plate()))
          .as(name)
          .hasSize(1);
      assertThat(remarks(Exports.rows("A (N),B (N)," + name, "400,400,81.6", 50), plate()))
          .as(name)
          .isEmpty();
    }
  }

  /** The weight's own unit counts for it, and a row without it says nothing. */
  @Test
  void aWeightInAnotherUnitIsConverted() throws BadInput {
    assertThat(remarks(Exports.rows("A (N),B (N),Weight (kg)", "400,400,81.6", 50), plate()))
        .isEmpty();
    assertThat(remarks(Exports.rows("A (N),B (N),Weight (kg)", "400,400,800", 50), plate()))
        .singleElement()
        .asString()
        .contains("says 7845 N");
    NamedBytes patchy =
        Exports.text("A (N),B (N),Weight (N)\n" + "400,400,800\n400,400,\n".repeat(25));
    assertThat(remarks(patchy, plate())).isEmpty();
  }

  @Test
  void whatIsLeftOutIsCounted() throws BadInput {
    NamedBytes export = Exports.text("A (N),B (N)\n" + "400,400\n400,\n5,5\n".repeat(10));
    assertThat(Exports.remarks(Exports.read(export, described(plate()))))
        .contains(
            "plate 1: samples without a value, left out: 10.",
            "plate 1: samples with less than 20 N on the plate, left out: 10.");
  }

  /** Two platforms of cells beside one column of the weight: whose it is cannot be told. */
  @Test
  void oneWeightOfTwoPlatesIsLeftOut() {
    PlateDescription two =
        new Described()
            .rate(100)
            .plate(plate().at(0, 0))
            .plate(
                new Described.Plate("plate 2")
                    .at(0, 0)
                    .sensors(
                        new Sensors.LoadCells(
                            List.of(
                                new Sensors.LoadCell("C", -100, 0),
                                new Sensors.LoadCell("D", 100, 0)))))
            .get();
    NamedBytes export =
        Exports.rows("A (N),B (N),C (N),D (N),Weight (N)", "200,210,190,200,800", 50);
    assertThat(Exports.refusals(export, two)).isEmpty();
    assertThat(Importer.inspect(export, Optional.of(two)).remarks())
        .noneMatch(r -> r.topic() == RecordingRemark.CELLS_DISAGREE);
  }
}
