package caryatid.calibration;

import java.util.List;
import java.util.Locale;

/** Prints what the advice is worth, as docs/advice.md tells it: {@code wearers seed}. */
public final class AdviceTable {
  private AdviceTable() {}

  /** Runs both strategies on the same wearers. */
  public static void main(String[] arguments) {
    int wearers = Integer.parseInt(arguments[0]);
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : Courses.SEED;
    rows(
            Courses.of(ScrewByGeometry::new, wearers, seed),
            Courses.of(ScrewByAdvice::new, wearers, seed))
        .forEach(System.out::println);
  }

  /** The rows of the table. */
  static List<String> rows(Courses geometry, Courses advice) {
    return List.of(
        row(
            "states until all targets truly lie within: mean | %.2f | %.2f",
            geometry.meanStands(), advice.meanStands()),
        row("median | %d | %d", geometry.percentileOfStands(50), advice.percentileOfStands(50)),
        row(
            "95th percentile (12: never) | %d | %d",
            geometry.percentileOfStands(95), advice.percentileOfStands(95)),
        row("never, %% | %.1f | %.1f", geometry.neverPercent(), advice.neverPercent()),
        row(
            "changes that put an offset truly further outside by more than the smallest difference,"
                + " %% | %.1f | %.1f",
            geometry.harmfulPercent(), advice.harmfulPercent()),
        row(
            "predicted 90 %% intervals that hold the true offset, %% | | %.1f",
            advice.coveragePercent()));
  }

  private static String row(String cells, Object... figures) {
    return "| " + String.format(Locale.ROOT, cells, figures) + " |";
  }
}
