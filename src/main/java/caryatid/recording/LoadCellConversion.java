package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;

/**
 * Centre of pressure and vertical force from load cells: the cells' load-weighted mean position.
 */
final class LoadCellConversion {
  /** Cells and weight that differ by more do not belong together (common practice, no source). */
  private static final double WITHIN = 0.02;

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
    for (Sensors.LoadCell cell : cells.cells()) {
      Column column = table.column(plan.sensors().get(cell.column()));
      unusable.or(timeline.pickHoles(column.holes()));
      double[] load = timeline.pick(column.take());
      for (int i = 0; i < size; i++) {
        double newton = load[i] * unit.newton();
        up[i] += newton;
        right[i] += newton * cell.rightMm();
        anterior[i] += newton * cell.anteriorMm();
      }
    }
    compareWithWeight(table, plan, unit, timeline, up, notes);
    PlateLayout.ExportOrigin origin =
        plan.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    BitSet usable = new BitSet(size);
    for (int i = 0; i < size; i++) {
      boolean loaded = up[i] >= Load.LEAST_N && !unusable.get(i);
      usable.set(i, loaded);
      right[i] = loaded ? right[i] / up[i] + origin.rightMm() : 0;
      anterior[i] = loaded ? anterior[i] / up[i] + origin.anteriorMm() : 0;
      up[i] = loaded ? up[i] : 0;
    }
    return new PlateTrack(
        plan.name(),
        Samples.adopt(right),
        Samples.adopt(anterior),
        Optional.of(Samples.adopt(up)),
        Optional.empty(),
        new Usable(usable, size));
  }

  /** Where the export has a column of the whole weight, too, both should agree. */
  private static void compareWithWeight(
      Table table, PlatePlan plan, ForceUnit unit, Timeline timeline, double[] up, Notebook notes) {
    Optional<Integer> weight = plan.column(Channel.FORCE_Z);
    if (weight.isEmpty()) {
      return;
    }
    double[] whole = timeline.pick(table.column(weight.get()).take());
    double sum = 0;
    double difference = 0;
    for (int i = 0; i < up.length; i++) {
      sum += up[i];
      difference += up[i] - whole[i] * unit.newton();
    }
    if (Math.abs(difference) > WITHIN * sum) {
      notes.remark(
          RecordingRemark.CELLS_DISAGREE,
          Argument.text(plan.name()),
          Argument.of(sum / up.length, Unit.N),
          Argument.of((sum - difference) / up.length, Unit.N));
    }
  }
}
