package caryatid.recording;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Centre of pressure and vertical force from load cells: the cells' load-weighted mean position.
 */
final class LoadCellConversion {
  private LoadCellConversion() {}

  static PlateTrack track(
      Table table,
      PlatePlan plan,
      Sensors.LoadCells cells,
      ForceUnit unit,
      Timeline timeline,
      Notebook notes) {
    int size = timeline.size();
    double[] up = new double[size];
    double[] right = new double[size];
    double[] anterior = new double[size];
    BitSet unusable = new BitSet(size);
    Map<String, double[]> read = new LinkedHashMap<>();
    for (Sensors.LoadCell cell : cells.cells()) {
      Column column = table.column(plan.sensors().get(cell.column()));
      unusable.or(timeline.pickHoles(column.holes()));
      double[] load = timeline.pick(column.take());
      read.put(cell.column(), load);
      for (int i = 0; i < size; i++) {
        double newton = load[i] * unit.newton();
        up[i] += newton;
        right[i] += newton * cell.rightMm();
        anterior[i] += newton * cell.anteriorMm();
      }
    }
    new WholeWeight(table, plan, unit).compare(up, unusable, timeline, notes);
    PlateLayout.ExportOrigin origin =
        plan.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    BitSet missing = (BitSet) unusable.clone();
    for (int i = 0; i < size; i++) {
      boolean loaded = up[i] >= Load.LEAST_N && !unusable.get(i);
      unusable.set(i, !loaded);
      right[i] = loaded ? right[i] / up[i] + origin.rightMm() : 0;
      anterior[i] = loaded ? anterior[i] / up[i] + origin.anteriorMm() : 0;
      up[i] = loaded ? up[i] : 0;
    }
    DeadColumns dead = new DeadColumns(table, plan, timeline.rateHz(), notes);
    read.forEach((column, load) -> dead.refuse(column, load, unusable));
    BitSet unloaded = (BitSet) unusable.clone();
    unloaded.andNot(missing);
    UnusableSamples.remark(RecordingRemark.MISSING, missing, plan.name(), notes);
    UnusableSamples.remark(RecordingRemark.UNLOADED, unloaded, plan.name(), notes);
    BitSet usable = new BitSet(size);
    usable.set(0, size);
    usable.andNot(unusable);
    return new PlateTrack(
        plan.name(),
        Samples.adopt(right),
        Samples.adopt(anterior),
        Optional.of(Samples.adopt(up)),
        Optional.empty(),
        new Usable(usable, size));
  }
}
