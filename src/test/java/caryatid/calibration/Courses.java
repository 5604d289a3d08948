package caryatid.calibration;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** How many wearers fared with a strategy, one after the other from three families in turn. */
record Courses(List<Course> all) {
  /** The seed of the run that is published; no other run begins within 100,000 of it. */
  static final long SEED = 18_000_000;

  static Courses of(Supplier<Strategy> strategy, int wearers, long seed) {
    return new Courses(
        IntStream.range(0, wearers)
            .parallel()
            .mapToObj(
                i -> {
                  Family family = Families.HELD_BACK.get(i % Families.HELD_BACK.size());
                  return Course.of(AlignedWearer.of(family, seed + i), strategy.get());
                })
            .toList());
  }

  double meanStands() {
    return all.stream().mapToInt(Course::stands).average().orElseThrow();
  }

  /** The percentile of the stands, as the smallest count that so many wearers do not exceed. */
  int percentileOfStands(double percent) {
    int[] sorted = all.stream().mapToInt(Course::stands).sorted().toArray();
    return sorted[(int) Math.ceil(percent / 100 * sorted.length) - 1];
  }

  /** Wearers who never came there, %. */
  double neverPercent() {
    return 100.0 * all.stream().filter(c -> c.stands() == Course.MOST).count() / all.size();
  }

  /** Intervals that held the true offset, %. */
  double coveragePercent() {
    return 100.0
        * all.stream().mapToInt(Course::covered).sum()
        / all.stream().mapToInt(Course::predicted).sum();
  }

  /** Turns that were harmful, %. */
  double harmfulPercent() {
    return 100.0
        * all.stream().mapToInt(Course::harmful).sum()
        / all.stream().mapToInt(Course::turns).sum();
  }
}
