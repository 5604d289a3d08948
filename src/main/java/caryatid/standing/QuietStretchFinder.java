package caryatid.standing;

import caryatid.standing.UnusedPart.Reason;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds the part of a recording to use: the longest run of blocks that are loaded, settled, free of
 * steps and shifts, and that does not drift beyond what real standing shows. The longest, never the
 * steadiest: choosing by steadiness would choose by chance, and the stated uncertainty would no
 * longer hold. The number of blocks is bounded, so the cost grows linearly with the number of
 * samples.
 */
final class QuietStretchFinder {
  private static final int MOST_BLOCKS = 600;

  private final Limits limits;
  private final List<Blocks> sums;
  private final BitSet bad;
  private final BitSet settling = new BitSet();
  private final BitSet shifted = new BitSet();
  private final int[] edges;

  private QuietStretchFinder(StanceSignals signals, double durationS, Limits limits) {
    this.limits = limits;
    int samples = signals.usable().size();
    int count = (int) Math.max(1, Math.min(MOST_BLOCKS, durationS / limits.blockS()));
    this.edges = Blocks.edges(samples, Math.min(count, samples));
    double blockS = durationS / (edges.length - 1);
    UsableBlocks usable = new UsableBlocks(signals.usable(), edges);
    this.bad = usable.bad();
    this.sums = signals.all().stream().map(one -> new Blocks(one, edges)).toList();
    int window = (int) Math.max(1, Math.round(limits.windowS() / blockS));
    double mostShiftMm = limits.mostShiftMm(durationS);
    for (int i = 0; i < sums.size(); i++) {
      LoadSignals one = signals.all().get(i);
      shifted.or(Shifts.of(one, sums.get(i), usable, window, limits, mostShiftMm));
    }
    settle((int) Math.ceil(limits.settlingS() / blockS));
  }

  /**
   * What was found.
   *
   * @param fromIndex first sample
   * @param toIndex one past the last; equal to {@code fromIndex} when nothing is eligible
   * @param leftOut runs of samples that are not used
   */
  record FoundStretch(int fromIndex, int toIndex, List<Run> leftOut) {}

  /** A run of samples, and why it is not used. */
  record Run(int fromIndex, int toIndex, Reason reason) {}

  /** Searches a recording of a duration, s. */
  static FoundStretch in(StanceSignals signals, double durationS, Limits limits) {
    return new QuietStretchFinder(signals, durationS, limits).search();
  }

  private FoundStretch search() {
    int count = edges.length - 1;
    for (int length = count; length > 0; length--) {
      for (int from = 0; from + length <= count; from++) {
        if (eligible(from, from + length)) {
          return found(from, from + length);
        }
      }
    }
    return found(0, 0);
  }

  private boolean eligible(int from, int to) {
    return free(bad, from, to)
        && free(settling, from, to)
        && free(shifted, from, to)
        && sums.stream().noneMatch(blocks -> drifts(blocks, from, to));
  }

  private static boolean free(BitSet marks, int from, int to) {
    int next = marks.nextSetBit(from);
    return next < 0 || next >= to;
  }

  private boolean drifts(Blocks blocks, int from, int to) {
    int quarter = Math.max(1, (to - from) / 4);
    return blocks.apartMm(from, from + quarter, to - quarter, to) > limits.driftMm();
  }

  /** Marks the time after stepping on and, half as long, before stepping off. */
  private void settle(int blocks) {
    int count = edges.length - 1;
    for (int off = bad.nextSetBit(0); off >= 0; off = bad.nextSetBit(bad.nextClearBit(off))) {
      int on = bad.nextClearBit(off);
      if (off == 0 || on == count || on - off > 1) {
        settling.set(Math.max(0, off - (blocks + 1) / 2), off);
        settling.set(on, Math.min(count, on + blocks));
      }
    }
  }

  private FoundStretch found(int from, int to) {
    List<Run> runs = new ArrayList<>();
    int count = edges.length - 1;
    addRuns(runs, 0, from, from, to);
    addRuns(runs, to, count, from, to);
    return new FoundStretch(edges[from], edges[to], List.copyOf(runs));
  }

  /** Adds blocks {@code begin} to {@code end}, joined where the reason is the same. */
  private void addRuns(List<Run> runs, int begin, int end, int from, int to) {
    int start = begin;
    for (int b = begin + 1; b <= end; b++) {
      if (b == end || why(b, from, to) != why(start, from, to)) {
        runs.add(new Run(edges[start], edges[b], why(start, from, to)));
        start = b;
      }
    }
  }

  private Reason why(int block, int from, int to) {
    if (bad.get(block)) {
      boolean atAnEnd =
          bad.nextClearBit(block) == edges.length - 1 || bad.previousClearBit(block) < 0;
      return atAnEnd ? Reason.UNLOADED : Reason.GAP;
    }
    if (shifted.get(block)) {
      return Reason.STEP_OR_SHIFT;
    }
    if (settling.get(block)) {
      return Reason.SETTLING;
    }
    return adjoins(block, from, to) ? Reason.DRIFT : Reason.SHORTER_STRETCH;
  }

  /** Whether only drift keeps a block from the stretch. */
  private boolean adjoins(int block, int from, int to) {
    int begin = block < from ? block : to;
    int end = block < from ? from : block + 1;
    return from < to
        && free(bad, begin, end)
        && free(shifted, begin, end)
        && free(settling, begin, end);
  }

  /**
   * Where a trace shows a step or a shift of weight: means over some time before and after a moment
   * differ by more than real standing shows.
   */
  private static final class Shifts {
    private Shifts() {}

    /**
     * The blocks that touch a shift.
     *
     * @param signals judged
     * @param blocks its sums
     * @param usable which blocks can be used
     * @param window blocks before and after a moment
     * @param mostShiftMm larger changes are shifts whatever the stand's own, mm
     */
    static BitSet of(
        LoadSignals signals,
        Blocks blocks,
        UsableBlocks usable,
        int window,
        Limits limits,
        double mostShiftMm) {
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
      double most = Math.min(mostShiftMm, least);
      double forceShift = limits.of(signals.of).shift();
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
}
