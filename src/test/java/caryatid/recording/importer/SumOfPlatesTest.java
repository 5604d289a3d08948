package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Columns that hold all plates together are no plate of their own. Validation by construction. */
class SumOfPlatesTest {
  private static final String TWO = "Fz1 (N),CoPx1 (mm),CoPy1 (mm),Fz2 (N),CoPx2 (mm),CoPy2 (mm)";

  private static final Optional<PlateDescription> NO_PLATES =
      Optional.of(new Described().rate(100).get());

  /** Two plates, 100 rows, and what stands beside them: force, centre right, centre forward. */
  private static NamedBytes export(String names, String format, double off) {
    StringBuilder text = new StringBuilder(TWO + "," + names + "\n");
    for (int i = 0; i < 100; i++) {
      double one = 400 + 20 * Math.sin(i);
      double other = 380 + 15 * Math.cos(1.3 * i);
      double sum = one + other;
      double right = (one * -120 + other * 130) / sum + off;
      double anterior = (one * 20 + other * 30) / sum;
      text.append(String.format(Locale.ROOT, "%.1f,-120,20,%.1f,130,30,", one, other))
          .append(String.format(Locale.ROOT, format, sum + off, right, anterior))
          .append("\n");
    }
    return Exports.text(text.toString());
  }

  private static final String WHOLE = "%.1f,%.2f,%.2f";

  private static List<String> facts(NamedBytes export) {
    return Importer.inspect(export, NO_PLATES).understood().stream()
        .filter(f -> f.aspect() == ImportFact.SUM || f.aspect() == ImportFact.SUM_OF_COP)
        .map(f -> Exports.WORDING.fill(f.aspect().code() + ".evidence", f.arguments()))
        .toList();
  }

  private static List<String> plates(NamedBytes export) {
    return Importer.inspect(export, NO_PLATES).draft().plates().stream()
        .map(PlateLayout::name)
        .toList();
  }

  @Test
  void aTotalIsLeftOutWithTheEvidence() {
    for (String name : List.of("Total", "Sum", "net")) {
      NamedBytes export =
          export("Fz_%1$s (N),CoPx_%1$s (mm),CoPy_%1$s (mm)".formatted(name), WHOLE, 0);
      assertThat(facts(export)).containsExactly("its force is the sum of plate 1, plate 2");
      assertThat(plates(export)).containsExactly("plate 1", "plate 2");
    }
  }

  /** Its values tell, whatever it is called. */
  @Test
  void aSumOfAnyNameIsLeftOut() {
    NamedBytes export = export("Fz3 (N),CoPx3 (mm),CoPy3 (mm)", WHOLE, 0);
    assertThat(facts(export)).containsExactly("its force is the sum of plate 1, plate 2");
    NamedBytes third = export("Fz3 (N),CoPx3 (mm),CoPy3 (mm)", WHOLE, 20);
    assertThat(plates(third)).containsExactly("plate 1", "plate 2", "plate 3");
  }

  @Test
  void aCentreOfAllPlatesWithoutForceIsLeftOut() {
    NamedBytes export = export("Net CoPx (mm),Net CoPy (mm)", "%2$.2f,%3$.2f", 0);
    assertThat(facts(export))
        .containsExactly("its centre of pressure is the load-weighted mean of plate 1, plate 2");
    assertThat(plates(export)).containsExactly("plate 1", "plate 2");
  }

  @Test
  void aTotalThatIsNoSumIsAskedAbout() {
    String question =
        "stand.csv: by its name total is the sum of plate 1, plate 2, which its values"
            + " do not show. Name in the plate description those that are plates: plates:"
            + " [{name: unknown}], with a name for each unknown";
    assertThat(
            Exports.refusals(
                export("Fz_Total (N),CoPx_Total (mm),CoPy_Total (mm)", WHOLE, 50), NO_PLATES))
        .contains(question);
    assertThat(
            Exports.refusals(export("Net CoPx (mm),Net CoPy (mm)", "%2$.2f,%3$.2f", 50), NO_PLATES))
        .anyMatch(s -> s.contains("by its name net is the sum of plate 1, plate 2"));
  }

  /** Without any force nothing can tell, so that the name is asked about. */
  @Test
  void aNetCentreBesideCentresAloneIsAskedAbout() {
    assertThat(
            Exports.refusals(
                Exports.rows(
                    "CoPx1 (mm),CoPy1 (mm),CoPx2 (mm),CoPy2 (mm),CoPx net (mm),CoPy net (mm)",
                    "-120,20,130,30,5,25",
                    20),
                NO_PLATES))
        .anyMatch(s -> s.contains("by its name net is the sum of plate 1, plate 2"));
  }

  /** Alone, it is the plate. */
  @Test
  void aTotalAloneIsThePlate() throws BadInput {
    NamedBytes export =
        Exports.rows("Total Fz (N),Total CoPx (mm),Total CoPy (mm)", "800,5,25", 20);
    assertThat(Exports.read(export, NO_PLATES.orElseThrow()).plates()).hasSize(1);
  }

  /** The answer is taken: plates that are named count, the total does not. */
  @Test
  void platesThatAreNamedCount() throws BadInput {
    Described named =
        new Described()
            .rate(100)
            .plate(new Described.Plate("plate 1").at(0, 0))
            .plate(new Described.Plate("plate 2").at(0, 0));
    NamedBytes export = export("Fz_Total (N),CoPx_Total (mm),CoPy_Total (mm)", WHOLE, 50);
    assertThat(Exports.read(export, named.get()).plates()).hasSize(2);
  }

  @Test
  void aSumThatIsDescribedAsAPlateIsRefused() {
    PlateDescription described =
        new Described()
            .rate(100)
            .plate(new Described.Plate("plate 1").at(0, 0))
            .plate(new Described.Plate("plate 2").at(0, 0))
            .plate(new Described.Plate("total").at(0, 0))
            .get();
    assertThat(
            Exports.refusals(
                export("Fz_Total (N),CoPx_Total (mm),CoPy_Total (mm)", WHOLE, 0), described))
        .containsExactly(
            "stand.csv: the plate description describes total as a plate, but its values are the"
                + " sum of plate 1, plate 2, so the same load would count twice. Leave total out of"
                + " the description.");
  }
}
