package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Statements of one file that exclude each other, or that may be read in two ways. */
class ContradictionsTest {
  private static List<String> refusals(String text) {
    NamedBytes export = NamedBytes.of("stand.csv", text.getBytes(StandardCharsets.UTF_8));
    return Exports.refusals(export, new Described().plate(new Described.Plate("plate 1")).get());
  }

  /** A stand at 100 Hz that sways by 5 and 4 mm, its pressure in a unit of so many mm. */
  private static String swaying(String unit, double mm) {
    StringBuilder rows =
        new StringBuilder(
            String.format(
                Locale.ROOT, "Time [s],Fz [N],Mx [N m],My [N m],CoPx [%1$s],CoPy [%1$s]\n", unit));
    for (int i = 0; i < 1000; i++) {
      double right = 5 * Math.sin(i / 100.0);
      double anterior = 4 * Math.cos(i / 70.0);
      rows.append(
          String.format(
              Locale.ROOT,
              "%.2f,800,%.4f,%.4f,%.6f,%.6f%n",
              i / 100.0,
              0.8 * anterior,
              -0.8 * right,
              right / mm,
              anterior / mm));
    }
    return rows.toString();
  }

  private static String timed(String time) {
    StringBuilder rows = new StringBuilder(time + ",Fz [N],CoPx [mm],CoPy [mm]\n");
    for (int i = 0; i < 1000; i++) {
      rows.append(String.format(Locale.ROOT, "%.2f,800,%d,2%n", i / 100.0, i % 3));
    }
    return rows.toString();
  }

  private static String rated(String... above) {
    return String.join("\n", above) + "\n\n" + timed("Foo").replaceAll("(?m)^[^,\\n]*,(?=.*,)", "");
  }

  @Test
  void aPressureInAnotherUnitThanStatedIsRefusedEvenWithoutATrueOrigin() {
    assertThat(refusals(swaying("m", 1000))).noneMatch(s -> s.contains("the stated unit of"));
    assertThat(refusals(swaying("mm", 1))).noneMatch(s -> s.contains("the stated unit of"));
    assertThat(refusals(swaying("m", 1)))
        .anyMatch(
            s ->
                s.contains("the stated unit of the centre of pressure or of the moments is wrong"));
  }

  @Test
  void aUnitInTheHeaderAndAnotherOneBelowItAreRefused() {
    assertThat(
            refusals("Time (s),Fz (N),CoPx (mm),CoPy (mm)\ns,kg,mm,mm\n" + "0,800,1,2\n".repeat(3)))
        .contains(
            "stand.csv line 2, column Fz (N): expected a unit of force, found 'N and kg'. Export in"
                + " another unit: N or kg for forces, N m or N mm for moments, m, cm, mm or inch"
                + " for the centre of pressure.");
  }

  @Test
  void aTimeUnitNobodyKnowsIsNotOverruled() {
    assertThat(refusals(timed("Time (min)")))
        .contains(
            "stand.csv line 1, column Time (min): expected a unit of time, found 'min'. Say what it"
                + " is in the plate description, as s, ms or us; or export the times in one of"
                + " these.");
  }

  @Test
  void aRateThatMayBeReadInTwoWaysIsAskedFor() {
    assertThat(refusals(rated("Sampling rate: 1,000")))
        .contains(
            "stand.csv: the sampling rate of the 1000 rows is not clear from the lines above"
                + " them, which say: Sampling rate 1,000. Add to the plate description, with the"
                + " rate in Hz for unknown: time: {rate-hz: unknown}");
  }

  @Test
  void twoRatesAreAskedAbout() {
    assertThat(refusals(rated("Sampling rate: 1000", "Analog rate: 100")))
        .anyMatch(s -> s.contains("which say: Sampling rate 1000, Analog rate 100."));
    assertThat(refusals(rated("Sampling rate: 100", "Analog rate: 100")))
        .noneMatch(s -> s.contains("rate"));
  }
}
