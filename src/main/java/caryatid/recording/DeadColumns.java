package caryatid.recording;

import caryatid.remark.Argument;
import java.util.BitSet;

/**
 * Finds columns that hold one and the same number while somebody stands on the plate. Sway reaches
 * every channel, so such a one is dead, or was never exported.
 */
final class DeadColumns {
  /** In a shorter time a coarse channel may not change, s (common practice, no source). */
  private static final double SHORTEST_S = 5;

  private final Table table;
  private final PlatePlan plan;
  private final double rateHz;
  private final Notebook notes;

  DeadColumns(Table table, PlatePlan plan, double rateHz, Notebook notes) {
    this.table = table;
    this.plan = plan;
    this.rateHz = rateHz;
    this.notes = notes;
  }

  /** Refuses a channel that the centre of pressure depends on, if its column is dead. */
  void refuse(Channel channel, double[] values, BitSet unusable) {
    plan.column(channel).ifPresent(index -> refuse(table.columnName(index), values, unusable));
  }

  /** Refuses a column that the centre of pressure depends on, if it is dead. */
  void refuse(String column, double[] values, BitSet unusable) {
    if (isDead(values, unusable)) {
      notes.problem(Reading.DEAD_COLUMN, said(column, values.length - unusable.cardinality()));
    }
  }

  /**
   * Whether a column is dead that the centre of pressure does not depend on; a remark says that
   * what needs it is left out.
   */
  boolean withhold(Channel channel, double[] values, BitSet unusable) {
    boolean dead = isDead(values, unusable);
    if (dead) {
      String column = plan.column(channel).map(table::columnName).orElse(channel.name());
      notes.remark(
          RecordingRemark.DEAD_COLUMN, said(column, values.length - unusable.cardinality()));
    }
    return dead;
  }

  private Argument[] said(String column, int samples) {
    return new Argument[] {
      Argument.text(plan.name()), Argument.text(column), Argument.count(samples)
    };
  }

  private boolean isDead(double[] values, BitSet unusable) {
    int used = values.length - unusable.cardinality();
    if (used == 0 || used < SHORTEST_S * rateHz) {
      return false;
    }
    double first = values[unusable.nextClearBit(0)];
    int i = unusable.nextClearBit(0);
    while (i < values.length && values[i] == first) {
      i = unusable.nextClearBit(i + 1);
    }
    return i >= values.length;
  }
}
