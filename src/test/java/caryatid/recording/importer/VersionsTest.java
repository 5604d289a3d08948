package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Columns that hold a plate's channels once more, or what was computed of them, are no plate. */
class VersionsTest {
  private static final Optional<PlateDescription> NO_PLATES =
      Optional.of(new Described().rate(100).get());

  private static List<String> plates(String names, String row) {
    return Importer.inspect(Exports.rows(names, row, 5), NO_PLATES).draft().plates().stream()
        .map(PlateLayout::name)
        .toList();
  }

  private static List<String> facts(String names, String row, ImportFact aspect) {
    return Importer.inspect(Exports.rows(names, row, 5), NO_PLATES).understood().stream()
        .filter(f -> f.aspect() == aspect)
        .map(f -> Exports.WORDING.fill(f.aspect().code(), f.arguments()))
        .toList();
  }

  @Test
  void rawAndFilteredAreAskedAbout() {
    assertThat(
            Exports.refusals(
                Exports.rows(
                    "Fz (N),CoPx raw (mm),CoPy raw (mm),CoPx filtered (mm),CoPy filtered (mm)",
                    "800,1,2,1,2",
                    5),
                NO_PLATES))
        .containsExactly(
            "stand.csv line 1: plate 1 is there in several versions: CoPx raw (mm) / CoPx filtered"
                + " (mm), CoPy raw (mm) / CoPy filtered (mm). In the plate description, state under"
                + " the plate which is meant: columns: {force-z: Fz (N), cop-x: CoPx raw (mm),"
                + " cop-y: CoPy raw (mm)}");
  }

  @Test
  void aVersionBesideAnUnnamedOneIsAskedAbout() {
    assertThat(
            Exports.refusals(
                Exports.rows(
                    "Fz (N),CoPx (mm),CoPy (mm),CoPx_filt (mm),CoPy_filt (mm)", "800,1,2,1,2", 5),
                NO_PLATES))
        .singleElement()
        .asString()
        .contains("CoPx (mm) / CoPx_filt (mm), CoPy (mm) / CoPy_filt (mm)");
  }

  /** What else is understood is shown, and the written description leaves the versions open. */
  @Test
  void theRestIsShownAndTheVersionsStayOpen() {
    Inspection inspection =
        Importer.inspect(
            Exports.rows(
                "Fz (N),CoPx raw (mm),CoPy raw (mm),CoPx filtered (mm),CoPy filtered (mm)",
                "800,1,2,1,2",
                5),
            NO_PLATES);
    assertThat(inspection.plates()).hasSize(1);
    assertThat(inspection.draft().plates().get(0).columns())
        .containsEntry(Channel.FORCE_Z, "Fz (N)")
        .containsEntry(Channel.COP_X, "unknown")
        .containsEntry(Channel.COP_Y, "unknown");
  }

  @Test
  void theAnswerIsTaken() throws BadInput {
    Described.Plate plate =
        new Described.Plate("plate 1")
            .column(Channel.FORCE_Z, "Fz")
            .column(Channel.COP_X, "CoPx filtered")
            .column(Channel.COP_Y, "CoPy filtered");
    Recording recording =
        Exports.read(
            Exports.rows(
                "Fz (N),CoPx raw (mm),CoPy raw (mm),CoPx filtered (mm),CoPy filtered (mm)",
                "800,1,2,3,4",
                5),
            new Described().rate(100).plate(plate).get());
    assertThat(recording.plates().get(0).copRightMm().orElseThrow().at(2)).isEqualTo(3);
  }

  @Test
  void aSingleVersionIsThePlate() {
    assertThat(plates("Fz (N),CoPx filtered (mm),CoPy filtered (mm)", "800,1,2"))
        .containsExactly("plate 1");
    assertThat(plates("Fz1 raw (N),CoPx1 filt (mm),CoPy1 filt (mm)", "800,1,2"))
        .containsExactly("plate 1");
  }

  @Test
  void whatIsComputedOfAChannelIsLeftOutWithTheReason() {
    for (String derived :
        List.of("velocity", "speed", "area", "path", "path length", "mean", "RMS", "sd")) {
      String names = "Fz (N),CoPx (mm),CoPy (mm),CoPx %1$s,CoPy %1$s".formatted(derived);
      assertThat(plates(names, "800,1,2,3,4")).as(derived).containsExactly("plate 1");
      assertThat(facts(names, "800,1,2,3,4", ImportFact.DERIVED))
          .as(derived)
          .containsExactly("left out: CoPx %1$s, CoPy %1$s".formatted(derived));
    }
  }

  /** With nothing else in the file there is no plate. */
  @Test
  void speedsAloneAreNoPlate() {
    assertThat(
            Exports.refusals(
                Exports.rows("Time (s),CoPx velocity,CoPy velocity", "0.0#,1,2", 5), NO_PLATES))
        .singleElement()
        .asString()
        .contains("found the columns: Time (s), CoPx velocity, CoPy velocity");
  }
}
