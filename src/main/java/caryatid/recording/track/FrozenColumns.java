package caryatid.recording.track;

import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Usable;
import caryatid.recording.table.Column;
import caryatid.recording.table.Findings;
import caryatid.recording.table.PlatePlan;
import caryatid.recording.table.Table;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.List;

/**
 * Remarks columns that hold one number for a while and otherwise change: a channel that froze.
 * Coarse channels repeat often, so only what repeats far longer than the column usually does
 * counts.
 */
final class FrozenColumns {
  /** A shorter time is nobody's loss, s (common practice, no source). */
  private static final double LEAST_S = 0.5;

  /** So many times as long as the column's mean repeat (common practice, no source). */
  private static final double TIMES_USUAL = 20;

  private final Table table;
  private final PlatePlan plan;
  private final double rateHz;

  FrozenColumns(Table table, PlatePlan plan, double rateHz) {
    this.table = table;
    this.plan = plan;
    this.rateHz = rateHz;
  }

  /**
   * Looks at each column of the plate.
   *
   * @param usable which samples are used
   */
  Findings remarks(Usable usable, String file) {
    Findings findings = Findings.none(file);
    if (usable.size() != table.rows()) {
      return findings;
    }
    List<Integer> columns = plan.wanted().distinct().sorted().toList();
    for (int index : columns) {
      double seconds = longestS(table.column(index), usable);
      if (seconds >= LEAST_S) {
        findings =
            findings.withRemark(
                RecordingRemark.FROZEN,
                Argument.text(plan.name()),
                Argument.text(table.columnName(index)),
                Argument.of(seconds, Unit.S));
      }
    }
    return findings;
  }

  /** The longest repeat, s; 0 where the column repeats as usual. */
  private double longestS(Column column, Usable usable) {
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
    return runs > 1 && longest > TIMES_USUAL * usual ? longest / rateHz : 0;
  }
}
