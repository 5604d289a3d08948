package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever the dialect, a known stand comes back; whatever happens to the file, it comes back, or a
 * remark or a problem says so.
 *
 * <p>One thing no reader can know: a byte that makes of one number another plausible one. Then the
 * other number may come in silence, but in that one sample alone: one damaged row never changes
 * what is read of any other. With a remark the same holds, so that no remark excuses more than it
 * names.
 */
class ImporterPropertyTest {
  /** Numbers are written with eight decimals, metres and kilograms among them. */
  private static final double ROUNDING = 1e-3;

  /** How many damages are tried on each file. */
  private static final int DAMAGES = 4;

  private static final long SEED = Long.getLong("seed", 20260304);

  @Test
  void fiveHundredDialectsAndDamages() {
    run(SEED, 500);
  }

  @Tag("proof")
  @Test
  void manyDialectsAndDamages() {
    run(SEED + 1_000_000, Integer.getInteger("exports", 20_000));
  }

  private static void run(long firstSeed, int cases) {
    System.out.println("seeds " + firstSeed + " to " + (firstSeed + cases - 1));
    Assertions.assertTimeoutPreemptively(
        Duration.ofMinutes(30),
        () -> {
          for (long seed = firstSeed; seed < firstSeed + cases; seed++) {
            check(seed);
          }
        });
  }

  private static void check(long seed) {
    RandomExport export = new RandomExport(seed);
    List<String> lines = export.lines();
    PlateDescription description = export.description();
    Recording whole = whole(seed, export, lines, description);
    Random random = new Random(seed);
    for (int i = 0; i < DAMAGES; i++) {
      Damage damage = Damage.values()[random.nextInt(Damage.values().length)];
      if (export.timed || export.numbered || !damage.needsTimes()) {
        List<String> damaged = damage.apply(new ArrayList<>(lines), export, random);
        byte[] bytes = String.join("\n", damaged).getBytes(StandardCharsets.UTF_8);
        outcome(
            seed + " " + damage,
            damage,
            export,
            NamedBytes.of("damaged", bytes),
            description,
            whole);
      }
    }
  }

  private static Recording whole(
      long seed, RandomExport export, List<String> lines, PlateDescription description) {
    try {
      NamedBytes file = NamedBytes.of("whole", export.file(lines));
      Recording recording = Importer.read(file, Optional.of(description));
      assertThat(recording.timeS().size()).as("seed %s", seed).isEqualTo(export.rows);
      assertThat(recording.plates()).as("seed %s", seed).hasSize(export.truth.size());
      assertThat(differences(recording, export, 0)).as("seed %s", seed).isZero();
      assertThat(recording.rateHz() / export.rateHz).as("seed %s", seed).isCloseTo(1, within(1e-5));
      return recording;
    } catch (BadInput e) {
      throw new AssertionError(
          "seed " + seed + ": " + Exports.WORDING.say(e.problems().get(0)) + "\n" + lines.get(0),
          e);
    }
  }

  /** The truth, or a refusal, or one sample that differs; nothing else is thrown. */
  private static void outcome(
      String seed,
      Damage damage,
      RandomExport export,
      NamedBytes damaged,
      PlateDescription description,
      Recording whole) {
    try {
      Recording recording = Importer.read(damaged, Optional.of(description));
      boolean remarked = !whole.remarks().containsAll(recording.remarks());
      int differences =
          Math.min(differences(recording, export, 0), differences(recording, export, 1));
      assertThat(differences)
          .as("other numbers%s, seed %s", remarked ? " with a remark" : " in silence", seed)
          .isLessThanOrEqualTo(remarked || damage == Damage.BYTE_OTHER ? 1 : 0);
      assertThat(recording.rateHz() / export.rateHz).as(seed).isCloseTo(1, within(1e-5));
    } catch (BadInput e) {
      assertThat(Exports.WORDING.say(e.problems().get(0)))
          .as("seed %s", seed)
          .startsWith("damaged");
    }
  }

  /** How many usable samples differ from the truth that many samples later. */
  private static int differences(Recording recording, RandomExport export, int later) {
    int differences = 0;
    for (int plate = 0; plate < recording.plates().size(); plate++) {
      PlateTrack track = recording.plates().get(plate);
      double[][] truth = export.truth.get(plate);
      for (int i = 0; i < track.usable().size(); i++) {
        if (track.usable().at(i)
            && (i + later >= export.rows || !same(track, truth, i, i + later))) {
          differences++;
        }
      }
    }
    return differences;
  }

  private static boolean same(PlateTrack track, double[][] truth, int i, int row) {
    boolean same =
        close(track.copRightMm().orElseThrow().at(i), truth[0][row])
            && close(track.copAnteriorMm().at(i), truth[1][row]);
    if (track.upN().isPresent()) {
      same &= close(track.upN().get().at(i), truth[2][row]);
    }
    if (track.horizontal().isPresent()) {
      same &= close(track.horizontal().get().rightN().at(i), truth[3][row]);
      same &= close(track.horizontal().get().anteriorN().at(i), truth[4][row]);
    }
    return same;
  }

  private static boolean close(double a, double b) {
    return Math.abs(a - b) <= ROUNDING;
  }
}
