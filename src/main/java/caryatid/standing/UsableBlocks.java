package caryatid.standing;

import caryatid.recording.model.UsableMask;
import java.util.BitSet;

/** Which blocks of a recording hold only samples that can be used. */
final class UsableBlocks {
  private final int[] badBefore;

  /**
   * Looks through the samples.
   *
   * @param usable the samples
   * @param edges first sample of each block, and one past the last
   */
  UsableBlocks(UsableMask usable, int[] edges) {
    badBefore = new int[edges.length];
    for (int b = 0; b + 1 < edges.length; b++) {
      badBefore[b + 1] = badBefore[b] + (usable.throughout(edges[b], edges[b + 1]) ? 0 : 1);
    }
  }

  /** How many blocks there are. */
  int count() {
    return badBefore.length - 1;
  }

  /** Whether blocks {@code from} up to, not including, {@code to} can all be used. */
  boolean throughout(int from, int to) {
    return badBefore[to] == badBefore[from];
  }

  /** The blocks that cannot be used. */
  BitSet bad() {
    BitSet bad = new BitSet(count());
    for (int b = 0; b < count(); b++) {
      bad.set(b, !throughout(b, b + 1));
    }
    return bad;
  }
}
