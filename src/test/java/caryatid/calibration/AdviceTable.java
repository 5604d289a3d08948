package caryatid.calibration;

import java.util.Locale;

/** Prints what the advice is worth: {@code wearers seed}. */
public final class AdviceTable {
  private AdviceTable() {}

  /** Runs both strategies on the same wearers. */
  public static void main(String[] arguments) {
    int wearers = Integer.parseInt(arguments[0]);
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : Courses.SEED;
    print("by geometry", Courses.of(ScrewByGeometry::new, wearers, seed));
    print("by advice", Courses.of(ScrewByAdvice::new, wearers, seed));
  }

  private static void print(String name, Courses of) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-12s wearers %d mean %.3f median %d p90 %d p95 %d never %.1f %% covered %.1f %% of %d"
                + " harmful %.2f %% of %d",
            name,
            of.all().size(),
            of.meanStands(),
            of.percentileOfStands(50),
            of.percentileOfStands(90),
            of.percentileOfStands(95),
            of.neverPercent(),
            of.coveragePercent(),
            of.all().stream().mapToInt(Course::predicted).sum(),
            of.harmfulPercent(),
            of.all().stream().mapToInt(Course::turns).sum()));
  }
}
