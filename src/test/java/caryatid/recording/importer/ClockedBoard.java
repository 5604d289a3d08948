package caryatid.recording.importer;

import caryatid.recording.model.NamedBytes;
import caryatid.standing.Made;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A stand on a board whose samples a computer's clock stamped, made with a known truth. As measured
 * on 13 public recordings, steps are 10 ms in the median and none is longer than 26 in a good one,
 * 7 of 3,500 samples are lost in a poor one, and the true rate is 98.3 Hz.
 */
final class ClockedBoard {
  /** How the stamps come about. */
  enum Clock {
    /** The board samples evenly; its samples arrive late, sometimes several at once. */
    DELIVERED,
    /** The computer asks for a sample every 10 ms, and sometimes later. */
    ASKED,
    /** An even clock that loses nothing, to compare with. */
    EVEN
  }

  static final double RATE_HZ = 98.3;
  private static final double LOST = 7 / 3500.0;
  private static final double FINE_HZ = 1000;
  private static final double LATE = 0.05;
  private static final double ASKED_LATE = 0.02;
  private static final double LATEST_S = 0.016;

  /** Nothing arrives for a while (invented). */
  private static final double STALL_FROM_S = 10;

  private static final double STALL_TO_S = 10.08;

  private final Random random;
  private final double seconds;
  private final double[] right;
  private final double[] anterior;
  private final StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (mm),CoPy (mm)\n");
  private double lastStampS;

  ClockedBoard(long seed, double seconds) {
    this.random = new Random(seed);
    this.seconds = seconds;
    this.right = sway(3, 12);
    this.anterior = sway(5, 45);
  }

  /** First-order processes of 0.3, 2 and 10 s, as real sway is simulated elsewhere, too. */
  private double[] sway(double sdMm, double meanMm) {
    int n = (int) (seconds * FINE_HZ) + 100;
    double[] sum = new double[n];
    double[][] parts = {{0.2, 0.3}, {0.5, 2}, {0.3, 10}};
    for (double[] part : parts) {
      double[] made = Made.autoregressive(random, n, Math.exp(-1 / (FINE_HZ * part[1])));
      for (int i = 0; i < n; i++) {
        sum[i] += sdMm * Math.sqrt(part[0]) * made[i];
      }
    }
    return IntStream.range(0, n).mapToDouble(i -> meanMm + sum[i]).toArray();
  }

  double meanRightMm() {
    return IntStream.range(0, (int) (seconds * FINE_HZ))
        .mapToDouble(i -> right[i])
        .average()
        .orElseThrow();
  }

  double meanAnteriorMm() {
    return IntStream.range(0, (int) (seconds * FINE_HZ))
        .mapToDouble(i -> anterior[i])
        .average()
        .orElseThrow();
  }

  /** The board's export. */
  NamedBytes export(Clock clock) {
    double nextS = 0;
    for (int i = 0; nextS < seconds; i++) {
      double stampS = stampS(clock, nextS);
      if (clock == Clock.EVEN || i == 0 || arrives(nextS)) {
        row(clock, nextS, stampS);
      }
      nextS = clock == Clock.ASKED ? askedS(nextS) : (i + 1) / RATE_HZ;
    }
    return NamedBytes.of("board.csv", text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private boolean arrives(double sampledS) {
    boolean stalled = sampledS > STALL_FROM_S && sampledS < STALL_TO_S;
    return random.nextDouble() >= LOST && !stalled;
  }

  private double stampS(Clock clock, double sampledS) {
    boolean late = clock == Clock.DELIVERED && random.nextDouble() < LATE;
    double delayS = clock == Clock.DELIVERED ? 0.001 * random.nextDouble() : 0;
    lastStampS =
        Math.max(lastStampS, sampledS + delayS + (late ? LATEST_S * random.nextDouble() : 0));
    return lastStampS;
  }

  private double askedS(double beforeS) {
    boolean late = random.nextDouble() < ASKED_LATE;
    return beforeS + 0.01 + (late ? LATEST_S * random.nextDouble() : 0);
  }

  private void row(Clock clock, double sampledS, double stampS) {
    int at = (int) Math.round(sampledS * FINE_HZ);
    String stamp = clock == Clock.EVEN ? "%.6f" : "%.3f";
    String row =
        String.format(
            Locale.ROOT,
            stamp + ",%.2f,%.3f,%.3f\n",
            clock == Clock.EVEN ? stampS : Math.floor(1000 * stampS) / 1000,
            790 + random.nextGaussian(),
            right[at],
            anterior[at]);
    text.append(row).append(clock != Clock.EVEN && random.nextDouble() < LOST ? row : "");
  }
}
