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
import caryatid.recording.table.StageFindings;
import caryatid.recording.time.Timeline;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Centre of pressure and vertical force from load cells: the cells' load-weighted mean position.
 */
final class LoadCellConversion {
  private LoadCellConversion() {}

  static Outcome<PlateTrack> track(
      ParsedTable table,
      PlateColumns plan,
      Sensors.LoadCells cells,
      ForceUnit unit,
      Timeline timeline,
      String file) {
    int size = timeline.size();
    double[] up = new double[size];
    double[] right = new double[size];
    double[] anterior = new double[size];
    BitSet missing = new BitSet(size);
    Map<String, SampleSeries> read = new LinkedHashMap<>();
    for (Sensors.LoadCell cell : cells.cells()) {
      NumberColumn column = table.column(plan.sensors().get(cell.column()));
      missing.or(timeline.holes(column));
      SampleSeries load = timeline.series(column);
      read.put(cell.column(), load);
      for (int i = 0; i < size; i++) {
        double newton = load.at(i) * unit.newton();
        up[i] += newton;
        right[i] += newton * cell.rightMm();
        anterior[i] += newton * cell.anteriorMm();
      }
    }
    StageFindings findings =
        new WeightColumnCheck(table, plan, unit).compare(up, missing, timeline, file);
    PlateLayout.ExportOrigin origin =
        plan.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    BitSet unusable = new BitSet(size);
    for (int i = 0; i < size; i++) {
      boolean loaded = up[i] >= LoadedSamples.LEAST_N && !missing.get(i);
      unusable.set(i, !loaded);
      right[i] = loaded ? right[i] / up[i] + origin.rightMm() : 0;
      anterior[i] = loaded ? anterior[i] / up[i] + origin.anteriorMm() : 0;
      up[i] = loaded ? up[i] : 0;
    }
    DeadColumns dead = new DeadColumns(table, plan, timeline.rateHz(), file);
    for (Map.Entry<String, SampleSeries> each : read.entrySet()) {
      findings = findings.and(dead.refused(each.getKey(), each.getValue(), unusable));
    }
    BitSet unloaded = (BitSet) unusable.clone();
    unloaded.andNot(missing);
    PlateTrack track =
        new PlateTrack(
            plan.name(),
            Samples.adopt(right),
            Samples.adopt(anterior),
            Optional.of(Samples.adopt(up)),
            Optional.empty(),
            UsableMask.without(unusable, size));
    return new Outcome<>(
        track,
        findings
            .and(UnusableSamples.remarked(RecordingRemark.MISSING, missing, plan.name(), file))
            .and(UnusableSamples.remarked(RecordingRemark.UNLOADED, unloaded, plan.name(), file)));
  }
}
