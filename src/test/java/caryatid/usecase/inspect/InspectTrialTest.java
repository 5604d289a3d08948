package caryatid.usecase.inspect;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.wording.InspectionText;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What inspection tries before it asks or promises. Validation by construction. */
class InspectTrialTest {
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);

  private static final NamedBytes DESCRIPTION =
      NamedBytes.of(
          "plate.yaml",
          """
          plate-description: 1
          name: Test plate
          axes: {right: +x, anterior: +y, up: +z}
          """
              .getBytes(UTF_8));

  private static NamedBytes export(String header, double perMm, IntToDoubleFunction drift) {
    StringBuilder text = new StringBuilder(header).append('\n');
    for (int i = 0; i < 2000; i++) {
      double t = i / 100.0;
      text.append(
          String.format(
              Locale.ROOT,
              "%.2f,%.3f,%.5f,%.5f%n",
              t,
              790 + 2 * Math.sin(6 * t),
              (12 + 4 * Math.sin(0.9 * t) + drift.applyAsDouble(i)) * perMm,
              (-30 + 6 * Math.sin(0.7 * t)) * perMm));
    }
    return NamedBytes.of("stand.csv", text.toString().getBytes(UTF_8));
  }

  private static List<String> questions(Inspection inspection) {
    return inspection.questions().stream().map(q -> q.topic().code()).toList();
  }

  @Test
  void whatOnlyOneUnitMakesAPersonIsNotAsked() throws Exception {
    NamedBytes export = export("Time,Fz,CoPx,CoPy", 1, i -> 0);
    Inspection inspection = Inspect.run(export, Optional.empty());
    assertThat(questions(inspection)).containsExactly("Reading.AXES");
    assertThat(new String(Inspect.draft(export, inspection, WORDING), UTF_8))
        .contains("units: {force: N, cop: mm}");
  }

  /** Sway of half a unit is possible in cm and in inch. */
  @Test
  void whatTwoUnitsMakeAPersonIsAsked() throws Exception {
    Inspection inspection = Inspect.run(export("Time,Fz,CoPx,CoPy", 0.1, i -> 0), Optional.empty());
    assertThat(questions(inspection)).containsExactly("Reading.COP_UNIT", "Reading.AXES");
  }

  /** By construction 12 mm to the right and 30 mm to the rear, less what the waves leave over. */
  @Test
  void whereThePlateIsLoadedIsSaidSoThatAxesCanBeChecked() throws Exception {
    Inspection inspection =
        Inspect.run(
            export("Time (s),Fz (N),CoPx (mm),CoPy (mm)", 1, i -> 0), Optional.of(DESCRIPTION));
    assertThat(InspectionText.lines(inspection, true, WORDING))
        .map(line -> line.replace('\u00a0', ' '))
        .contains(
            "plate 1: the mean centre of pressure lies 29.6 mm behind and 12.1 mm to the right of"
                + " the zero");
  }

  @Test
  void aFileWithoutAQuietStretchCannotBeUsed() throws Exception {
    String header = "Time (s),Fz (N),CoPx (mm),CoPy (mm)";
    assertThat(Inspect.run(export(header, 1, i -> 0), Optional.of(DESCRIPTION)).complete())
        .isTrue();
    Inspection drifting =
        Inspect.run(export(header, 1, i -> i % 200 < 100 ? 0 : 120), Optional.of(DESCRIPTION));
    assertThat(drifting.complete()).isFalse();
    assertThat(drifting.problems())
        .extracting(p -> p.topic().code())
        .containsOnly("StandProblem.WANDERING");
  }
}
