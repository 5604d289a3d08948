package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;

/** Compares the exported centre of pressure, where there is one, with that of the load cells. */
final class CellsCopCheck {
  private final ParsedTable table;
  private final PlateColumns plate;
  private final Timeline timeline;
  private final String file;

  CellsCopCheck(ParsedTable table, PlateColumns plate, Timeline timeline, String file) {
    this.table = table;
    this.plate = plate;
    this.timeline = timeline;
    this.file = file;
  }

  /** Remarks how far the means lie apart; nothing where a measured direction was not exported. */
  StageMessages compare(PlateTrack cells, LengthUnit unit, Axes axes) {
    StageMessages nothing = StageMessages.none(file);
    PlateLayout.ExportOrigin origin =
        plate.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    Optional<Double> right =
        cells.copRightMm().isEmpty()
            ? Optional.of(0.0)
            : apartMm(cells, cells.copRightMm().get(), axes.right(), unit, origin.rightMm());
    Optional<Double> anterior =
        apartMm(cells, cells.copAnteriorMm(), axes.anterior(), unit, origin.anteriorMm());
    if (right.isEmpty() || anterior.isEmpty()) {
      return nothing;
    }
    double apartMm = Math.hypot(right.get(), anterior.get());
    return apartMm > TrackLimits.CELLS_AGREE_MM
        ? nothing.withRemark(
            RecordingRemark.CELLS_COP_DISAGREES,
            Argument.text(plate.name()),
            Argument.of(apartMm, Unit.MM))
        : nothing;
  }

  private Optional<Double> apartMm(
      PlateTrack cells, Samples computed, Direction along, LengthUnit unit, double originMm) {
    Optional<Integer> index = plate.column(Channel.of(Quantity.COP, along.axis()));
    if (index.isEmpty()) {
      return Optional.empty();
    }
    NumberColumn column = table.column(index.get());
    SampleSeries exported = timeline.series(column);
    BitSet holes = timeline.holes(column);
    double sum = 0;
    int count = 0;
    for (int i = 0; i < computed.size(); i++) {
      if (cells.usable().at(i) && !holes.get(i)) {
        sum += exported.at(i) * along.sign() * unit.mm() + originMm - computed.at(i);
        count++;
      }
    }
    return count == 0 ? Optional.empty() : Optional.of(sum / count);
  }
}
