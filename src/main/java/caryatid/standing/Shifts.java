package caryatid.standing;

import java.util.BitSet;

/**
 * Where a trace shows a step or a shift of weight: means over some time before and after a moment
 * differ by more than real standing shows.
 */
final class Shifts {
  private Shifts() {}

  /**
   * The blocks that touch a shift.
   *
   * @param trace judged
   * @param blocks its sums
   * @param usable which blocks can be used
   * @param window blocks before and after a moment
   */
  static BitSet of(
      LoadSignals trace, Blocks blocks, UsableBlocks usable, int window, Limits limits) {
    int count = usable.count();
    double[] apart = new double[count];
    BitSet judged = new BitSet(count);
    for (int b = window; b + window <= count; b++) {
      if (usable.throughout(b - window, b + window)) {
        apart[b] = blocks.apartMm(b - window, b, b, b + window);
        judged.set(b);
      }
    }
    double least = Math.max(limits.shiftMm(), limits.shiftTimes() * median(apart, judged));
    double most = Math.min(limits.mostShiftMm(), least);
    double forceShift = limits.of(trace.of).shift();
    BitSet shifted = new BitSet(count);
    judged.stream()
        .filter(b -> apart[b] > most || forceChange(blocks, b, window) > forceShift)
        .forEach(b -> shifted.set(b - 1, b + 1));
    return shifted;
  }

  private static double forceChange(Blocks blocks, int b, int window) {
    double change = blocks.force(b, b + window) - blocks.force(b - window, b);
    return Math.abs(change) / blocks.force(b - window, b + window);
  }

  private static double median(double[] values, BitSet chosen) {
    double[] sorted = chosen.stream().mapToDouble(b -> values[b]).sorted().toArray();
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }
}
