package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A change that is judged by going back to the first setting once, by the command line alone. The
 * sway is a sum of sines, so that the figures can be computed by the formulas of docs/method.md in
 * another language: they come from a numpy script that knows nothing of this program.
 */
class GoingBackTest {
  private static final int SAMPLES = 2200;

  @TempDir private Path folder;
  private Clinic.Minutes clinic;

  @BeforeEach
  void standThreeTimes() throws IOException {
    clinic = new Clinic.Minutes(folder.resolve("records"));
    Files.writeString(
        folder.resolve("plate.yaml"),
        """
        plate-description: 1
        name: invented plate
        export: {delimiter: semicolon, decimal-mark: point}
        time: {column: t, unit: s}
        axes: {right: +x, anterior: +y, up: +z}
        plates:
          - name: plate 1
            columns: {cop-x: x, cop-y: y, force-z: f}
            units: {cop: mm, force: N}
            edges-mm: {left: -200, right: 200, rear: -300, front: 300}
            export-origin-mm: {right: 0, anterior: 0}
        force-is: on the person
        measuring-lines:
          - {name: rear edge, forward-from-mm: -300, registration-mm: 1}
        """);
    stand("0", 20, 1);
    stand("10", 34, 2);
    stand("0", 28, 3);
  }

  /** The knee is at 0 mm; the line runs so far anterior of it. */
  private void stand(String footForwardMm, double lineMm, int number) throws IOException {
    Run bench =
        clinic.record(
            "add",
            "K7-right",
            "bench-alignment",
            "--by",
            "AB",
            "--at",
            "2026-03-04T1" + number + ":00+01:00",
            "items[1].item=foot forward of the reference line",
            "items[1].set=" + footForwardMm,
            "items[1].unit=mm");
    assertThat(bench.code()).isZero();
    StringBuilder rows = new StringBuilder("t;x;y;f\n");
    for (int i = 0; i < SAMPLES; i++) {
      double t = i / 100.0;
      double sway =
          3 * Math.sin(2 * Math.PI * 0.31 * t + number)
              + 2 * Math.sin(2 * Math.PI * 0.83 * t + 2 * number)
              + Math.sin(2 * Math.PI * 1.7 * t + 3 * number);
      rows.append(
          String.format(Locale.ROOT, "%.2f;%.4f;%.4f;400%n", t, 80 + 0.3 * sway, lineMm + sway));
    }
    Path recording = Files.writeString(folder.resolve("stand-" + number + ".csv"), rows);
    Path sheet =
        Files.writeString(
            folder.resolve("sheet-" + number + ".yaml"),
            """
            trial-sheet: 1
            wearer: K7
            at: 2026-03-04T1%d:15+01:00
            side: right
            level: transtibial
            body-mass-kg: 82
            stance: {kind: prosthetic foot on plate, plate: plate 1}
            other-foot: {on: block, height-difference-mm: 0}
            hands: free
            footwear: {worn: barefoot, heel-height-mm: 0}
            landmarks:
              - {name: knee centre, forward-mm: 300, forward-from: rear edge, up-mm: 490, marking-mm: 3}
            targets:
              - {plane: sagittal, landmark: knee centre, recommended-mm: 20, below-mm: 15, above-mm: 15, source: invented}
            """
                .formatted(number));
    Run run =
        Run.caryatid(
            "check",
            recording.toString(),
            "--trial",
            sheet.toString(),
            "--plate",
            folder.resolve("plate.yaml").toString(),
            "--out",
            folder.resolve("out").toString(),
            "--by",
            "AB",
            "--record",
            "K7-right",
            "--records",
            folder.resolve("records").toString());
    assertThat(run.code()).isZero();
  }

  /**
   * Entries: 1 opening; 2, 4 and 6 bench alignment; 3, 5 and 7 stands. By hand and by the script:
   * one stand scatters by 5.5 mm with five degrees, t 2.5706. There: times root 2, which is 20.0
   * mm, and the movement of the knee in both, 1.84 and 1.82 mm with t(6.15), makes 21.0; marks of 3
   * mm and a turn of 3 degrees at 30 mm with t(8) make 23.7. Against both: times root 1.5, and half
   * of both outer ones, 18.2 and 20.5 mm. Seven stands each: 9.8 mm, six 10.3.
   */
  @Test
  void anEvenDriftCancelsAndTheIntervalIsSaidForBothSides() {
    Run run = clinic.record("compare", "K7-right", "3", "5", "--back", "7", "--intended", "10");
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replace('\u00a0', ' '))
        .endsWith(
            """
            How the offsets changed (computed now, from the results kept with both states):
            sagittal, knee centre (right), right foot's line: 20.0 mm anterior -> 33.9 mm anterior, changed by 13.9 mm
              chance may explain it: ± 21.0 mm if the marks stayed and the feet stood in their outlines, ± 23.7 mm if the landmarks were marked again
              stands in each state that would show a change of 10.0 mm: 7 (marks kept, feet in their outlines)
            Compared with the mean of the first setting before the change and again after entry 7 (an even drift cancels; each ± is for this):
            sagittal, knee centre (right), right foot's line: 24.0 mm anterior -> 33.9 mm anterior, changed by 9.9 mm
              chance may explain it: ± 18.2 mm if the marks stayed and the feet stood in their outlines, ± 20.5 mm if the landmarks were marked again
            """);
  }

  /** After entry 5 the foot is 10 mm further forward, so it is not the first setting. */
  @Test
  void anotherSettingIsNoWayBack() {
    assertThat(clinic.record("compare", "K7-right", "3", "7", "--back", "5").out())
        .endsWith(
            "Settings or components after entry 5 are not those of the first state: the change is"
                + " not judged against both. Go back to the first setting, and stand again.\n");
  }
}
