package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/**
 * What an empty plate, an offset or a contradiction in the file does. Validation by construction.
 */
class ValuesTest {
  private static final String COP = "CoPx (mm),CoPy (mm)";

  private static final String COP_AND_FORCE = "Fz (N)," + COP;

  private static NamedBytes export(String names, int rows, IntFunction<String> row) {
    StringBuilder text = new StringBuilder(names).append('\n');
    for (int i = 0; i < rows; i++) {
      text.append(row.apply(i)).append('\n');
    }
    return Exports.text(text.toString());
  }

  private static int used(NamedBytes cop) throws BadInput {
    return Exports.readAt100Hz(cop).plates().get(0).usable().count();
  }

  @Test
  void anEmptyPlateIsKnownByItsForce() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(
                COP_AND_FORCE, 100, i -> i < 30 ? "-0.00,99999,-99999" : "800," + Exports.sway(i)));
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(70);
    assertThat(Exports.remarks(recording))
        .contains("plate 1: samples with less than 20 N on the plate, left out: 30.");
  }

  @Test
  void withoutForceAnEmptyPlateIsKnownByItsPattern() throws BadInput {
    assertThat(used(export(COP, 300, i -> i < 30 ? "0,0" : Exports.sway(i)))).isEqualTo(270);
    assertThat(used(export(COP, 300, i -> i < 30 ? "-1e7,1e7" : Exports.sway(i)))).isEqualTo(270);
    assertThat(used(export(COP, 300, i -> i < 100 ? "250,150" : Exports.sway(i)))).isEqualTo(200);
    assertThat(used(export(COP, 300, i -> i < 30 ? (i % 2) * 400 + "," + i : Exports.sway(i))))
        .isEqualTo(270);
    assertThat(
            Exports.remarks(
                Exports.readAt100Hz(export(COP, 300, i -> i < 30 ? "0,0" : Exports.sway(i)))))
        .contains("plate 1: samples that look like an empty plate, left out: 30.");
  }

  /** A second without any movement is an empty plate, a little less may be a person. */
  @Test
  void standingStillForLessThanASecondIsNoEmptyPlate() throws BadInput {
    assertThat(used(export(COP, 300, i -> i < 99 ? "250,150" : Exports.sway(i) + "")))
        .isEqualTo(300);
    assertThat(used(export(COP, 300, i -> i < 100 ? "12,21" : Exports.sway(i)))).isEqualTo(200);
  }

  @Test
  void missingCellsAreLeftOutWithACount() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(
                COP_AND_FORCE,
                100,
                i -> i == 7 ? "800,NaN,20" : i == 8 ? "800,," : "800," + Exports.sway(i)));
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(98);
    assertThat(Exports.remarks(recording))
        .contains("plate 1: samples without a value, left out: 2.");
  }

  /** Loaded, a centre of pressure of more than 10 m is a wrong unit, or a sample to leave out. */
  @Test
  void aCentreFarFromAnyPlateUnderLoadIsLeftOut() throws BadInput {
    NamedBytes export =
        export(COP_AND_FORCE, 100, i -> "800," + (i < 5 ? "10001,0" : Exports.sway(i)));
    Recording recording = Exports.readAt100Hz(export);
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(95);
    assertThat(Exports.remarks(recording))
        .contains(
            "plate 1: samples under load whose centre of pressure lies more than 10 m from the"
                + " export's zero, left out: 5.");
    assertThat(used(export(COP_AND_FORCE, 100, i -> "800," + (i < 5 ? "9999,0" : Exports.sway(i)))))
        .isEqualTo(100);
  }

  @Test
  void aCentreFarFromAnyPlateMostOfTheTimeIsRefused() {
    assertThat(
            Exports.refusals(
                export(COP_AND_FORCE, 100, i -> "800," + (i < 6 ? "0,-10001" : Exports.sway(i))),
                new Described().rate(100).get()))
        .containsExactly(
            "stand.csv: plate 1: in 6 of 100 samples under load the centre of pressure lies more"
                + " than 10 m from the export's zero, where no plate is. Check its unit (units:"
                + " cop), or, where it is computed from forces and moments, theirs.");
  }

  @Test
  void aCentreAloneThatLooksEmptyThroughoutIsRefused() {
    assertThat(
            Exports.refusals(export(COP, 100, i -> "90000,80000"), new Described().rate(100).get()))
        .containsExactly(
            "stand.csv: expected somebody on the plate, but by its centre of pressure alone it"
                + " looks empty throughout: all zero, standing still, jumping about, or more than"
                + " 10 m from the export's zero. Check its unit (units: cop), or export the"
                + " recording of a stand.");
  }

  /** A force that is missing is not the force of an empty plate, and no offset of one either. */
  @Test
  void aMissingForceIsNoEmptyPlate() throws BadInput {
    NamedBytes patchy =
        export(
            COP_AND_FORCE,
            200,
            i -> i < 60 ? "NaN,NaN,NaN" : i < 70 ? "0,NaN,NaN" : "805," + Exports.sway(i));
    Recording recording = Exports.read(patchy, new Described().rate(100).removeOffset().get());
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(130);
    assertThat(Exports.remarks(recording))
        .contains(
            "plate 1: samples without a value, left out: 60.",
            "plate 1: samples with less than 20 N on the plate, left out: 10.",
            "plate 1: nothing was subtracted, as the plate is never unloaded for half a second.");
  }

  @Test
  void anOffsetOfTheUnloadedPlateIsRemarked() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(COP_AND_FORCE, 200, i -> i < 60 ? "5,0,0" : "805," + Exports.sway(i)));
    assertThat(Exports.remarks(recording))
        .contains(
            "plate 1: unloaded, the plate shows 5 N. To subtract that, add to the plate"
                + " description: remove-unloaded-offset: yes");
  }

  @Test
  void anOffsetIsSubtractedWhenTheDescriptionAsks() throws BadInput {
    NamedBytes export =
        export(
            "Fx (N),Fy (N),Fz (N),Mx (N mm),My (N mm)",
            200,
            i -> i < 60 ? "1,2,5,100,200" : "1,2,805,16100,-7800");
    Described.Plate plate = new Described.Plate("plate 1").trueOrigin(0, 0, 0);
    Recording recording =
        Exports.read(export, new Described().rate(100).plate(plate).removeOffset().get());
    PlateTrack track = recording.plates().get(0);
    assertThat(track.upN().orElseThrow().at(100)).isCloseTo(800, within(1e-9));
    assertThat(track.copRightMm().orElseThrow().at(100)).isCloseTo(10, within(1e-9));
    assertThat(track.copAnteriorMm().at(100)).isCloseTo(20, within(1e-9));
    assertThat(track.horizontal().orElseThrow().rightN().at(100)).isCloseTo(0, within(1e-9));
  }

  @Test
  void withoutAnUnloadedStretchNothingIsSubtracted() throws BadInput {
    NamedBytes export = export(COP_AND_FORCE, 200, i -> "805," + Exports.sway(i));
    assertThat(
            Exports.remarks(Exports.read(export, new Described().rate(100).removeOffset().get())))
        .contains(
            "plate 1: nothing was subtracted, as the plate is never unloaded for half a second.");
  }

  @Test
  void theExportedCentreIsHeldAgainstTheComputedOne() throws BadInput {
    String names = "Fx (N),Fy (N),Fz (N),Mx (N mm),My (N mm)," + COP;
    Described.Plate plate = new Described.Plate("plate 1").trueOrigin(0, 0, -40);
    NamedBytes right = export(names, 50, i -> "0,0,800,16000,-8000,10,20");
    NamedBytes wrong = export(names, 50, i -> "0,0,800,16000,-8000,10,23");
    assertThat(Exports.remarks(Exports.read(right, new Described().rate(100).plate(plate).get())))
        .contains(
            "plate 1: the exported centre of pressure and the one from forces and moments agree;"
                + " they are 0.0 mm apart (root mean square).");
    assertThat(Exports.remarks(Exports.read(wrong, new Described().rate(100).plate(plate).get())))
        .contains(
            "plate 1: the exported centre of pressure and the one from forces and moments are 3.0"
                + " mm apart (root mean square); on average the computed one lies 0.0 mm to the"
                + " right and −3.0 mm forward. The exported one is used; check the true origin and"
                + " the units.");
  }

  @Test
  void fewerRowsThanStatedAreRemarked() throws BadInput {
    NamedBytes export =
        Exports.text("Number of samples: 60\n" + COP_AND_FORCE + "\n" + "800,1,2\n".repeat(50));
    assertThat(Exports.remarks(Exports.readAt100Hz(export)))
        .contains("Rows stated in the file: 60; rows it holds: 50.");
  }

  @Test
  void aRecordingShorterThanStatedIsRemarked() throws BadInput {
    String rows = COP_AND_FORCE + "\n" + "800,1,2\n".repeat(98);
    assertThat(Exports.remarks(Exports.readAt100Hz(Exports.text("Duration (s): 1\n" + rows))))
        .noneMatch(r -> r.startsWith("Length"));
    assertThat(
            Exports.remarks(Exports.readAt100Hz(Exports.text("Recording duration,1.5 s\n" + rows))))
        .contains("Length stated in the file: 1.50 s; what it holds lasts 0.98 s.");
    assertThat(Exports.remarks(Exports.readAt100Hz(Exports.text("Duration,1 min\n" + rows))))
        .noneMatch(r -> r.startsWith("Length"));
  }

  @Test
  void someSamplesBesideThePlateAreRemarked() throws BadInput {
    Described.Plate plate = new Described.Plate("plate 1").edges(-200, 200, -300, 300);
    NamedBytes export = export(COP_AND_FORCE, 100, i -> "800," + (i < 5 ? "201,0" : "10,20"));
    assertThat(Exports.remarks(Exports.read(export, new Described().rate(100).plate(plate).get())))
        .contains("plate 1: samples off the plate: 5.");
  }
}
