package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Remarks on single samples that stick out and on repeated rows of a plate whose units or axes are
 * still open.
 */
public final class RawOddities {
  /** Between the quartiles of a normal distribution lie so many standard deviations. */
  private static final double QUARTILES = 1.349;

  /** What needs neither units nor axes. */
  private static final Set<RecordingRemark> TOLD =
      EnumSet.of(RecordingRemark.SPIKES, RecordingRemark.REPEATED);

  private final ParsedTable table;
  private final Axis vertical;
  private final String file;

  /**
   * @param vertical the export's axis that seems vertical
   */
  public RawOddities(ParsedTable table, Axis vertical, String file) {
    this.table = table;
    this.vertical = vertical;
    this.file = file;
  }

  public StageMessages remarks(PlateColumns plate, PlateUnits units) {
    Optional<Samples> up = up(plate);
    Samples one = cop(plate, VerticalAxis.horizontal(vertical).get(0));
    Samples other = cop(plate, VerticalAxis.horizontal(vertical).get(1));
    double spike =
        units
            .cop()
            .map(unit -> TrackLimits.SPIKE_MM / unit.mm())
            .orElseGet(
                () -> TrackLimits.SPIKE_DEVIATIONS * Math.max(deviation(one), deviation(other)));
    PlateTrack track =
        new PlateTrack(
            plate.name(), Optional.of(one), other, up, Optional.empty(), usable(plate, up));
    List<Remark> told =
        new TrackOddities(track, spike, file)
            .remarks().remarks().stream().filter(remark -> told(remark.topic())).toList();
    return new StageMessages(file, List.of(), told, List.of());
  }

  private static boolean told(Topic topic) {
    return topic instanceof RecordingRemark remark && TOLD.contains(remark);
  }

  /** The size of the vertical force, in the export's unit. */
  private Optional<Samples> up(PlateColumns plate) {
    List<NumberColumn> columns = PlateViews.forces(table, plate, vertical);
    double[] up = new double[table.rows()];
    for (NumberColumn column : columns) {
      Arrays.setAll(up, i -> up[i] + column.at(i));
    }
    double sign = Arrays.stream(up).sum() < 0 ? -1 : 1;
    Arrays.setAll(up, i -> sign * up[i]);
    return columns.isEmpty() ? Optional.empty() : Optional.of(Samples.adopt(up));
  }

  private Samples cop(PlateColumns plate, Axis axis) {
    return plate
        .column(Channel.of(Quantity.COP, axis))
        .map(index -> table.column(index).series().without(new BitSet()))
        .orElseGet(() -> Samples.adopt(new double[table.rows()]));
  }

  private static double deviation(Samples series) {
    double[] sorted = new double[series.size()];
    Arrays.setAll(sorted, series::at);
    Arrays.sort(sorted);
    int quarter = sorted.length / 4;
    return (sorted[sorted.length - 1 - quarter] - sorted[quarter]) / QUARTILES;
  }

  private UsableMask usable(PlateColumns plate, Optional<Samples> up) {
    BitSet left = new BitSet(table.rows());
    plate.wanted().forEach(i -> table.column(i).addHolesTo(left));
    up.ifPresent(
        force -> {
          double largest = largest(force);
          for (int i = 0; i < force.size(); i++) {
            if (force.at(i) < TrackLimits.LOADED_SHARE * largest) {
              left.set(i);
            }
          }
        });
    return UsableMask.without(left, table.rows());
  }

  private static double largest(Samples force) {
    double largest = 0;
    for (int i = 0; i < force.size(); i++) {
      largest = Math.max(largest, force.at(i));
    }
    return largest;
  }
}
