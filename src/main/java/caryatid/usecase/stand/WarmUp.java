package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.report.Pictures;
import caryatid.usecase.Check;
import caryatid.usecase.Check.Checked;
import caryatid.usecase.Inputs;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Analyses and draws an invented stand once, so that what it takes is loaded before the first real
 * recording comes. Its numbers are shown to nobody.
 */
public final class WarmUp {
  private static final AtomicBoolean BEGUN = new AtomicBoolean();
  private static final int ROWS = 4000;
  private static final int ROWS_A_SECOND = 200;

  private static final String PLATE =
      """
      plate-description: 1
      name: invented
      export: {delimiter: comma, decimal-mark: point}
      time: {column: Time, unit: s}
      axes: {right: +x, anterior: +y, up: +z}
      force-is: on the person
      plates:
        - name: plate 1
          columns: {force-z: Fz, cop-x: CoPx, cop-y: CoPy}
          units: {force: N, cop: mm}
          edges-mm: {left: -200, right: 200, rear: -300, front: 300}
          export-origin-mm: {right: 0, anterior: 0}
      """;

  private static final String SHEET =
      """
      trial-sheet: 1
      wearer: invented
      at: 2026-01-01T00:00Z
      side: right
      level: transtibial
      body-mass-kg: 80
      stance: {kind: prosthetic foot on plate, plate: plate 1}
      other-foot: {on: block, height-difference-mm: 0}
      hands: free
      footwear: {worn: shoe, heel-height-mm: 10}
      landmarks:
        - {name: ankle axis, forward-mm: -60, rightward-mm: 0, up-mm: 90, marking-mm: 3}
        - {name: knee centre, forward-mm: -20, rightward-mm: 0, up-mm: 500, marking-mm: 3}
      targets:
        - {plane: sagittal, landmark: knee centre, recommended-mm: 20, below-mm: 15, above-mm: 15, source: invented, meant-for: foot}
      """;

  private WarmUp() {}

  /** Begins in the background, behind all else, once in the life of the program. */
  @SuppressWarnings("ThreadPriorityCheck") // a hint is enough: nothing waits for it
  public static void begin() {
    if (BEGUN.compareAndSet(false, true)) {
      Thread thread = new Thread(WarmUp::quietly, "warm-up");
      thread.setDaemon(true);
      thread.setPriority(Thread.MIN_PRIORITY);
      thread.start();
    }
  }

  private static void quietly() {
    try {
      run(Wording.in(Locale.ENGLISH));
    } catch (BadInput | StoreFailure | RuntimeException e) {
      // Nothing depends on it.
    }
  }

  /** Analyses and draws it. */
  static Checked run(Wording wording) throws BadInput, StoreFailure {
    Checked checked =
        Check.withOpenQuestions(
            new Inputs(
                List.of(bytes("invented.csv", recording())),
                bytes("invented.yaml", SHEET),
                Optional.of(bytes("plate.yaml", PLATE)),
                name -> Optional.empty()));
    Pictures.overTime(checked.result(), checked.recordings(), 0, wording);
    Pictures.strips(checked.result(), wording);
    return checked;
  }

  private static NamedBytes bytes(String name, String text) {
    return NamedBytes.of(name, text.getBytes(UTF_8));
  }

  /** Half the weight, swaying by a few mm, with the noise of a plate. */
  private static String recording() {
    Random noise = new Random(1);
    StringBuilder text = new StringBuilder("Time,Fz,CoPx,CoPy\n");
    for (int i = 0; i < ROWS; i++) {
      double seconds = (double) i / ROWS_A_SECOND;
      row(text, seconds, 400 + 4 * Math.sin(seconds) + noise.nextGaussian());
      place(text, 3 * Math.sin(0.9 * seconds) + 0.2 * noise.nextGaussian());
      place(text, 5 * Math.sin(0.6 * seconds) + 0.2 * noise.nextGaussian());
      text.append('\n');
    }
    return text.toString();
  }

  private static void row(StringBuilder text, double seconds, double newtons) {
    text.append(Math.round(seconds * 1000) / 1000.0);
    place(text, newtons);
  }

  private static void place(StringBuilder text, double number) {
    text.append(',').append(Math.round(number * 100) / 100.0);
  }
}
