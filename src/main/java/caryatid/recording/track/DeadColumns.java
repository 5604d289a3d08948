package caryatid.recording.track;

import caryatid.recording.model.Channel;
import caryatid.recording.model.Reading;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Sensors;
import caryatid.recording.table.Findings;
import caryatid.recording.table.PlatePlan;
import caryatid.recording.table.Series;
import caryatid.recording.table.Table;
import caryatid.recording.time.Timeline;
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
  private final Findings nothing;

  DeadColumns(Table table, PlatePlan plan, double rateHz, String file) {
    this.table = table;
    this.plan = plan;
    this.rateHz = rateHz;
    this.nothing = Findings.none(file);
  }

  /** Refuses a channel that the centre of pressure depends on, if its column is dead. */
  Findings refused(Channel channel, Series values, BitSet unusable) {
    return plan.column(channel)
        .map(index -> refused(table.columnName(index), values, unusable))
        .orElse(nothing);
  }

  /** Refuses a column that the centre of pressure depends on, if it is dead. */
  Findings refused(String column, Series values, BitSet unusable) {
    return isDead(values, unusable)
        ? nothing.withProblem(
            Reading.DEAD_COLUMN, said(column, values.size() - unusable.cardinality()))
        : nothing;
  }

  /** Refuses the raw channels that are dead; horizontal ones where they tell the centre. */
  Findings refused(Sensors.EightChannels sensors, RawPlate plate, Timeline timeline) {
    BitSet unusable = unloadedOrMissing(plate);
    Findings findings = nothing;
    for (Sensors.RawChannel channel : Sensors.RawChannel.values()) {
      if (channel.isVertical() || sensors.az0Mm() != 0) {
        String column = sensors.columns().get(channel);
        Series values = timeline.series(table.column(plan.sensors().get(column)));
        findings = findings.and(refused(column, values, unusable));
      }
    }
    return findings;
  }

  private static BitSet unloadedOrMissing(RawPlate plate) {
    BitSet unusable = (BitSet) plate.holes().clone();
    Series up = plate.at(Channel.FORCE_Z).orElseThrow();
    for (int i = 0; i < up.size(); i++) {
      if (Math.abs(up.at(i)) < Load.LEAST_N) {
        unusable.set(i);
      }
    }
    return unusable;
  }

  /**
   * A remark where a column is dead that the centre of pressure does not depend on: what needs it
   * is left out.
   */
  Findings withheld(Channel channel, Series values, BitSet unusable) {
    String column = plan.column(channel).map(table::columnName).orElse(channel.name());
    return isDead(values, unusable)
        ? nothing.withRemark(
            RecordingRemark.DEAD_COLUMN, said(column, values.size() - unusable.cardinality()))
        : nothing;
  }

  private Argument[] said(String column, int samples) {
    return new Argument[] {
      Argument.text(plan.name()), Argument.text(column), Argument.count(samples)
    };
  }

  private boolean isDead(Series values, BitSet unusable) {
    int used = values.size() - unusable.cardinality();
    if (used == 0 || used < SHORTEST_S * rateHz) {
      return false;
    }
    double first = values.at(unusable.nextClearBit(0));
    int i = unusable.nextClearBit(0);
    while (i < values.size() && values.at(i) == first) {
      i = unusable.nextClearBit(i + 1);
    }
    return i >= values.size();
  }
}
