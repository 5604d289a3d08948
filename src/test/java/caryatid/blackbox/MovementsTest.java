package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is not quiet standing is refused with the reason and what shows it; what lies between plain
 * standing and plain movement is remarked. Invented movements of 20 s at 100 Hz of a person of 800
 * N, both feet on the plate unless it says one foot.
 */
class MovementsTest {
  private static final double SECONDS = 20;

  @TempDir private Path path;

  private final Random random = new Random(20260304);

  private record Movement(
      DoubleUnaryOperator upN, DoubleUnaryOperator rightMm, DoubleUnaryOperator anteriorMm) {}

  private Run checked(Movement movement, boolean oneFoot) throws IOException {
    List<String> lines = new ArrayList<>(List.of("Time,Fz,CoPx,CoPy", "s,N,mm,mm"));
    double sway = 0;
    for (int i = 0; i < SECONDS * 100; i++) {
      double t = i / 100.0;
      sway = 0.98 * sway + 0.6 * random.nextGaussian();
      lines.add(
          String.format(
              Locale.ROOT,
              "%.2f,%.2f,%.3f,%.3f",
              t,
              movement.upN().applyAsDouble(t),
              movement.rightMm().applyAsDouble(t) + sway,
              movement.anteriorMm().applyAsDouble(t) - sway));
    }
    Folder folder = new Folder(path).recording(all -> lines);
    if (!oneFoot) {
      folder.sheet(
          "{kind: prosthetic foot on plate, plate: plate 1}\nother-foot: {on: block,"
              + " height-difference-mm: 0}",
          "{kind: both feet on one plate, plate: plate 1}");
    }
    return folder.check("--json");
  }

  private void refused(Movement movement, boolean oneFoot, String complaint) throws IOException {
    Run run = checked(movement, oneFoot);
    assertThat(plain(run)).isEqualTo(complaint);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
  }

  private String plain(Run run) {
    return run.err().replace(path + "/", "").replace('\u00a0', ' ').strip();
  }

  private static Movement force(DoubleUnaryOperator upN) {
    return new Movement(upN, t -> 10, t -> 20);
  }

  private static String unsteady(String line, String most, String found, String real) {
    return "stand.csv: expected quiet standing, with a vertical force ("
        + line
        + ") that varies by at most "
        + most
        + " of its mean (standard deviation), found "
        + found
        + "; in plain standing it is about "
        + real
        + " or less. This is walking, squatting, sitting down, jumping or stepping on and off;"
        + " record a quiet stand.";
  }

  private static String wholeBody(String found) {
    return unsteady("whole body's line", "3.0 %", found, "0.3 %");
  }

  @Test
  void plainStandingIsUsed() throws IOException {
    Run run = checked(force(t -> 800 + 2 * Math.sin(t)), false);
    assertThat(plain(run)).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).doesNotContain("FORCE_VARIES");
  }

  /** Up and down by 15 cm every 2.5 s: sine of 18 % of the weight, standard deviation 13 %. */
  @Test
  void squats() throws IOException {
    refused(
        force(t -> 800 * (1 + 0.18 * Math.sin(2 * Math.PI * t / 2.5))), false, wholeBody("12.7 %"));
  }

  /** In the air for a third of each second, three times the weight at landing. */
  @Test
  void jumps() throws IOException {
    refused(
        force(t -> t % 1 < 0.33 ? 0 : 800 * 1.5 * (1 + 0.6 * Math.sin(2 * Math.PI * t * 3))),
        false,
        wholeBody("42.4 %"));
  }

  /** Every five seconds up or down: seated, the feet bear a fifth of the weight. */
  @Test
  void sitToStand() throws IOException {
    refused(
        force(t -> 800 * (0.6 + 0.4 * Math.tanh(4 * Math.sin(2 * Math.PI * t / 5)))),
        false,
        wholeBody("61.0 %"));
  }

  /** One foot's contact of 0.6 s each 1.2 s, with two peaks, rolling from heel to toe. */
  @Test
  void walking() throws IOException {
    refused(
        new Movement(
            t -> t % 1.2 > 0.6 ? 0 : 900 * Math.pow(Math.sin(Math.PI * (t % 1.2) / 0.6), 0.7),
            t -> 10,
            t -> 250 * (t % 1.2) / 0.6 - 100),
        true,
        unsteady("right foot's line", "30.0 %", "36.4 %", "13.0 %"));
  }

  /** Steps on for four seconds and off for two, again and again. */
  @Test
  void stepsOnAndOff() throws IOException {
    refused(
        force(t -> t % 6 < 4 ? 800 : 0),
        false,
        "stand.csv: expected at least 5.00 s of quiet standing, found 2.99 s; most of the rest was"
            + " left out because: samples missing or unloaded. Record the stand"
            + " again, or set the part to use by hand with --from and --to.");
  }

  /** From one foot to the other and back within eight seconds, 100 mm to each side. */
  @Test
  void slowWeightShifts() throws IOException {
    refused(
        new Movement(t -> 800, t -> 100 * Math.sin(2 * Math.PI * t / 8), t -> 20),
        false,
        "stand.csv: expected at least 5.00 s of quiet standing, found 0.99 s; most of the rest was"
            + " left out because: a step or a shift of weight. Record the stand again, or set the part"
            + " to use by hand with --from and --to.");
  }

  /** The same while the prosthetic foot alone is on the plate: its load comes and goes. */
  @Test
  void slowWeightShiftsOfOneFoot() throws IOException {
    refused(
        force(t -> 400 * (1 + 0.6 * Math.sin(2 * Math.PI * t / 8))),
        true,
        unsteady("right foot's line", "30.0 %", "38.8 %", "13.0 %"));
  }

  /** A whole body that bobs by 2 % is neither plain standing nor plain squatting. */
  @Test
  void betweenStandingAndNotStandingThereIsARemark() throws IOException {
    Run run = checked(force(t -> 800 * (1 + 0.028 * Math.sin(2 * Math.PI * t))), false);
    assertThat(plain(run)).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("FORCE_VARIES");
  }

  /** Someone with a prosthesis who shifts a quarter of the foot's load is remarked, not refused. */
  @Test
  void aPersonWhoShiftsLoadIsNotRefused() throws IOException {
    Run run = checked(force(t -> 400 * (1 + 0.35 * Math.sin(2 * Math.PI * t / 3))), true);
    assertThat(plain(run)).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("FORCE_VARIES");
  }
}
