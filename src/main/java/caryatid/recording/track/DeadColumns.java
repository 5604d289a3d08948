package caryatid.recording.track;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;

/**
 * Finds columns that hold one and the same number while somebody stands on the plate. Sway reaches
 * every channel, so one that never changes is dead, or was never exported, and one that stops
 * changing for a while froze.
 */
final class DeadColumns {
  private final ParsedTable table;
  private final PlateColumns plate;
  private final double rateHz;
  private final StageMessages nothing;

  DeadColumns(ParsedTable table, PlateColumns plate, double rateHz, String file) {
    this.table = table;
    this.plate = plate;
    this.rateHz = rateHz;
    this.nothing = StageMessages.none(file);
  }

  /** Refuses a channel that the centre of pressure depends on, if its column is dead. */
  StageMessages refused(Channel channel, SampleSeries values, BitSet unusable) {
    return plate
        .column(channel)
        .map(index -> refused(table.columnName(index), values, unusable))
        .orElse(nothing);
  }

  /** Refuses a column that the centre of pressure depends on, if it is dead. */
  StageMessages refused(String column, SampleSeries values, BitSet unusable) {
    return isDead(values, unusable)
        ? nothing.withProblem(
            ImportProblem.DEAD_COLUMN, said(column, values.size() - unusable.cardinality()))
        : nothing;
  }

  /** Refuses the raw channels that are dead; horizontal ones where they tell the centre. */
  StageMessages refused(Sensors.EightChannels sensors, RawPlate raw, Timeline timeline) {
    BitSet unusable = unloadedOrMissing(raw);
    StageMessages messages = nothing;
    for (Sensors.RawChannel channel : Sensors.RawChannel.values()) {
      if (channel.isVertical() || sensors.az0Mm() != 0) {
        String column = sensors.columns().get(channel);
        SampleSeries values = timeline.series(table.column(plate.sensors().get(column)));
        messages = messages.and(refused(column, values, unusable));
      }
    }
    return messages;
  }

  private static BitSet unloadedOrMissing(RawPlate raw) {
    BitSet unusable = (BitSet) raw.holes().clone();
    SampleSeries up = raw.at(Channel.FORCE_Z).orElseThrow();
    for (int i = 0; i < up.size(); i++) {
      if (Math.abs(up.at(i)) < TrackLimits.LEAST_N) {
        unusable.set(i);
      }
    }
    return unusable;
  }

  /**
   * A remark where a column is dead that the centre of pressure does not depend on: what needs it
   * is left out.
   */
  StageMessages withheld(Channel channel, SampleSeries values, BitSet unusable) {
    String column = plate.column(channel).map(table::columnName).orElse(channel.lastPart());
    return isDead(values, unusable)
        ? nothing.withRemark(
            RecordingRemark.DEAD_COLUMN, said(column, values.size() - unusable.cardinality()))
        : nothing;
  }

  private Argument[] said(String column, int samples) {
    return new Argument[] {
      Argument.text(plate.name()), Argument.text(column), Argument.count(samples)
    };
  }

  private boolean isDead(SampleSeries values, BitSet unusable) {
    int used = values.size() - unusable.cardinality();
    if (used == 0 || used < TrackLimits.DEAD_S * rateHz) {
      return false;
    }
    double first = values.at(unusable.nextClearBit(0));
    int i = unusable.nextClearBit(0);
    while (i < values.size() && values.at(i) == first) {
      i = unusable.nextClearBit(i + 1);
    }
    return i >= values.size();
  }

  /**
   * Remarks the plate's columns that hold one number for a while and otherwise change. Coarse
   * channels repeat often, so only what repeats far longer than the column usually does counts.
   *
   * @param usable which samples are used
   */
  StageMessages frozen(UsableMask usable, Timeline timeline) {
    StageMessages messages = nothing;
    for (int index : plate.wanted().distinct().sorted().toList()) {
      SampleSeries column = timeline.series(table.column(index));
      double seconds = repeatsSomewhere(column) ? longestS(column, usable) : 0;
      if (seconds >= TrackLimits.FROZEN_S) {
        messages =
            messages.withRemark(
                RecordingRemark.FROZEN,
                Argument.text(plate.name()),
                Argument.text(table.columnName(index)),
                Argument.of(seconds, Unit.S));
      }
    }
    return messages;
  }

  /**
   * Whether a column holds one number long enough somewhere. So long a run holds two neighbours of
   * a grid that is half as wide, and what lies between; few numbers are looked at where none does.
   */
  private boolean repeatsSomewhere(SampleSeries column) {
    int step = Math.max(1, (int) (TrackLimits.FROZEN_S * rateHz / 2));
    for (int i = step; i < column.size(); i += step) {
      int back = i;
      while (back > i - step && column.at(back - 1) == column.at(i)) {
        back--;
      }
      if (back == i - step) {
        return true;
      }
    }
    return false;
  }

  /** The longest repeat, s; 0 where the column repeats as usual. */
  private double longestS(SampleSeries column, UsableMask usable) {
    int longest = 0;
    int run = 0;
    int runs = 0;
    int samples = 0;
    for (int i = 1; i < usable.size(); i++) {
      boolean both = usable.at(i - 1) && usable.at(i);
      samples += both ? 1 : 0;
      if (both && column.at(i) == column.at(i - 1)) {
        run++;
        longest = Math.max(longest, run);
      } else {
        run = 0;
        runs += both ? 1 : 0;
      }
    }
    double usual = (samples - longest + 1.0) / Math.max(1, runs);
    return runs > 1 && longest > TrackLimits.FROZEN_TIMES * usual ? longest / rateHz : 0;
  }
}
