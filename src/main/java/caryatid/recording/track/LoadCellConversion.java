package caryatid.recording.track;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Centre of pressure and vertical force from load cells: the cells' load-weighted mean position.
 */
final class LoadCellConversion {
  private final double[] up;
  private final double[] right;
  private final double[] anterior;
  private final BitSet missing;
  private final BitSet unusable;
  private final Map<String, SampleSeries> read = new LinkedHashMap<>();

  private LoadCellConversion(int size) {
    this.up = new double[size];
    this.right = new double[size];
    this.anterior = new double[size];
    this.missing = new BitSet(size);
    this.unusable = new BitSet(size);
  }

  static Outcome<PlateTrack> track(
      ParsedTable table,
      PlateColumns plate,
      Sensors.LoadCells cells,
      ForceUnit unit,
      Timeline timeline,
      String file) {
    LoadCellConversion sums = new LoadCellConversion(timeline.size());
    for (Sensors.LoadCell cell : cells.cells()) {
      NumberColumn column = table.column(plate.sensors().get(cell.column()));
      sums.missing.or(timeline.holes(column));
      sums.add(cell, timeline.series(column), unit);
    }
    StageMessages messages =
        new WeightColumnCheck(table, plate, unit).compare(sums.up, sums.missing, timeline, file);
    sums.divide(plate.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0)));
    DeadColumns dead = new DeadColumns(table, plate, timeline.rateHz(), file);
    for (Map.Entry<String, SampleSeries> each : sums.read.entrySet()) {
      messages = messages.and(dead.refused(each.getKey(), each.getValue(), sums.unusable));
    }
    return new Outcome<>(sums.track(plate), messages.and(sums.remarks(plate.name(), file)));
  }

  private void add(Sensors.LoadCell cell, SampleSeries load, ForceUnit unit) {
    read.put(cell.column(), load);
    for (int i = 0; i < up.length; i++) {
      double newton = load.at(i) * unit.newton();
      up[i] += newton;
      right[i] += newton * cell.rightMm();
      anterior[i] += newton * cell.anteriorMm();
    }
  }

  /** From sums of moments to positions; samples without enough load are unusable and zero. */
  private void divide(PlateLayout.ExportOrigin origin) {
    for (int i = 0; i < up.length; i++) {
      boolean loaded = up[i] >= TrackLimits.LEAST_N && !missing.get(i);
      unusable.set(i, !loaded);
      right[i] = loaded ? right[i] / up[i] + origin.rightMm() : 0;
      anterior[i] = loaded ? anterior[i] / up[i] + origin.anteriorMm() : 0;
      up[i] = loaded ? up[i] : 0;
    }
  }

  private PlateTrack track(PlateColumns plate) {
    return new PlateTrack(
        plate.name(),
        plate.measures().sideways() ? Optional.of(Samples.adopt(right)) : Optional.empty(),
        Samples.adopt(anterior),
        Optional.of(Samples.adopt(up)),
        Optional.empty(),
        UsableMask.without(unusable, up.length));
  }

  private StageMessages remarks(String plate, String file) {
    BitSet unloaded = (BitSet) unusable.clone();
    unloaded.andNot(missing);
    return UnusableSamples.remarked(RecordingRemark.MISSING, missing, plate, file)
        .and(UnusableSamples.remarked(RecordingRemark.UNLOADED, unloaded, plate, file));
  }
}
