package caryatid.recording.track;

import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;

/** Compares the column of the total weight, if the export has one, with the load cells' sum. */
final class WeightColumnCheck {
  private final ParsedTable table;
  private final Optional<Integer> column;
  private final String plate;
  private final ForceUnit ofCells;

  WeightColumnCheck(ParsedTable table, PlateColumns plate, ForceUnit ofCells) {
    this.table = table;
    this.plate = plate.name();
    this.ofCells = ofCells;
    this.column =
        plate.columns().entrySet().stream()
            .filter(c -> c.getKey().quantity() == Quantity.FORCE)
            .map(Map.Entry::getValue)
            .findFirst();
  }

  /**
   * Remarks where the means differ.
   *
   * @param up the cells' sums, N, one a sample
   * @param unusable samples in which some cell has no number
   */
  StageMessages compare(double[] up, BitSet unusable, Timeline timeline, String file) {
    StageMessages nothing = StageMessages.none(file);
    if (column.isEmpty()) {
      return nothing;
    }
    BitSet left = timeline.holes(table.column(column.get()));
    left.or(unusable);
    SampleSeries whole = timeline.series(table.column(column.get()));
    double cells = 0;
    double weight = 0;
    for (int i = left.nextClearBit(0); i < up.length; i = left.nextClearBit(i + 1)) {
      cells += up[i];
      weight += whole.at(i) * unit().newton();
    }
    int used = up.length - left.cardinality();
    return Math.abs(cells - weight) > TrackLimits.WEIGHT_AGREES * cells
        ? nothing.withRemark(
            RecordingRemark.CELLS_DISAGREE,
            Argument.text(plate),
            Argument.of(cells / used, Unit.N),
            Argument.of(weight / used, Unit.N))
        : nothing;
  }

  /** Its own where the header states one, else the cells'. */
  private ForceUnit unit() {
    return table
        .head()
        .columns()
        .get(column.orElseThrow())
        .unit()
        .flatMap(ForceUnit::named)
        .orElse(ofCells);
  }
}
