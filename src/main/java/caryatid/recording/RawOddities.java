package caryatid.recording;

import caryatid.recording.Channel.Quantity;
import caryatid.remark.Argument;
import caryatid.remark.Topic;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Remarks on single samples that stick out and on repeated rows of a plate whose units or axes are
 * still open. The plate's columns are used up.
 */
final class RawOddities {
  /**
   * A centre of pressure in an unknown unit sticks out by so many of its standard deviations, as
   * estimated from its quartiles (common practice, no source).
   */
  private static final double SPIKE_DEVIATIONS = 8;

  /** Between the quartiles of a normal distribution lie so many standard deviations. */
  private static final double QUARTILES = 1.349;

  /** What needs neither units nor axes. */
  private static final Set<RecordingRemark> TOLD =
      EnumSet.of(RecordingRemark.SPIKES, RecordingRemark.REPEATED);

  private final Table table;
  private final int vertical;
  private final Notebook notes;

  /**
   * @param vertical the export's axis that seems vertical: 0 for x, 1 for y, 2 for z
   */
  RawOddities(Table table, int vertical, Notebook notes) {
    this.table = table;
    this.vertical = vertical;
    this.notes = notes;
  }

  void remark(PlatePlan plan, PlateUnits units) {
    Optional<Samples> up = up(plan);
    double[] one = cop(plan, vertical == 0 ? 1 : 0);
    double[] other = cop(plan, vertical == 2 ? 1 : 2);
    double spike =
        units
            .cop()
            .map(unit -> TrackOddities.SPIKE_MM / unit.mm())
            .orElseGet(() -> SPIKE_DEVIATIONS * Math.max(deviation(one), deviation(other)));
    PlateTrack track =
        new PlateTrack(
            plan.name(),
            Samples.adopt(one),
            Samples.adopt(other),
            up,
            Optional.empty(),
            usable(plan, up));
    Notebook all = new Notebook(notes.file());
    new TrackOddities(track, spike, all).remark();
    all.remarks().stream()
        .filter(remark -> told(remark.topic()))
        .forEach(r -> notes.remark(r.topic(), r.arguments().toArray(new Argument[0])));
  }

  private static boolean told(Topic topic) {
    return topic instanceof RecordingRemark remark && TOLD.contains(remark);
  }

  /** The size of the vertical force, in the export's unit. */
  private Optional<Samples> up(PlatePlan plan) {
    List<Column> columns = PlateViews.forces(table, plan, vertical);
    double[] up = new double[table.rows()];
    for (Column column : columns) {
      Arrays.setAll(up, i -> up[i] + column.at(i));
    }
    double sign = Arrays.stream(up).sum() < 0 ? -1 : 1;
    Arrays.setAll(up, i -> sign * up[i]);
    return columns.isEmpty() ? Optional.empty() : Optional.of(Samples.adopt(up));
  }

  private double[] cop(PlatePlan plan, int axis) {
    return plan.column(Channel.of(Quantity.COP, axis))
        .map(index -> table.column(index).take())
        .orElseGet(() -> new double[table.rows()]);
  }

  private static double deviation(double[] series) {
    double[] sorted = series.clone();
    Arrays.sort(sorted);
    int quarter = sorted.length / 4;
    return (sorted[sorted.length - 1 - quarter] - sorted[quarter]) / QUARTILES;
  }

  private Usable usable(PlatePlan plan, Optional<Samples> up) {
    BitSet usable = new BitSet(table.rows());
    usable.set(0, table.rows());
    plan.wanted().forEach(i -> usable.andNot(table.column(i).holes()));
    up.ifPresent(
        force -> {
          double largest = largest(force);
          for (int i = 0; i < force.size(); i++) {
            if (force.at(i) < PlateViews.LOADED_SHARE * largest) {
              usable.clear(i);
            }
          }
        });
    return new Usable(usable, table.rows());
  }

  private static double largest(Samples force) {
    double largest = 0;
    for (int i = 0; i < force.size(); i++) {
      largest = Math.max(largest, force.at(i));
    }
    return largest;
  }
}
