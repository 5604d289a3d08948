package caryatid.standing;

import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Notes how a line wanders within the part used: real people do, and a reader should know how far.
 *
 * <p>Of 60 real stands of 60 s (the recordings of {@link Limits}) the largest change between
 * adjacent windows is 12 mm in the median and 44 mm at most, the drift 7 and 29 mm (computed).
 */
final class Wandering {
  private final QuietStretch stretch;
  private final Limits limits;
  private final List<Remark> remarks = new ArrayList<>();

  private Wandering(QuietStretch stretch, Limits limits) {
    this.stretch = stretch;
    this.limits = limits;
  }

  /** The notes on signals that are cut to the stretch. */
  static List<Remark> of(List<LoadSignals> quiet, QuietStretch stretch, Limits limits) {
    Wandering wandering = new Wandering(stretch, limits);
    quiet.forEach(wandering::look);
    return List.copyOf(wandering.remarks);
  }

  private void look(LoadSignals signals) {
    int count = (int) Math.max(1, Math.round(stretch.durationS() / limits.blockS()));
    int[] edges = Blocks.edges(signals.size(), Math.min(count, signals.size()));
    Blocks blocks = new Blocks(signals, edges);
    drift(signals, blocks, edges.length - 1);
    shift(signals, blocks, edges);
  }

  private void drift(LoadSignals signals, Blocks blocks, int count) {
    int quarter = Math.max(1, count / 4);
    double mm = blocks.apartMm(0, quarter, count - quarter, count);
    if (mm > StandLimits.DRIFT_MM) {
      say(StandRemark.DRIFT_INSIDE, Argument.term(signals.of), Argument.of(mm, Unit.MM));
    }
  }

  private void shift(LoadSignals signals, Blocks blocks, int[] edges) {
    int window = (int) Math.max(1, Math.round(limits.windowS() / limits.blockS()));
    double most = 0;
    int at = 0;
    for (int b = window; b + window < edges.length; b++) {
      double apart = blocks.apartMm(b - window, b, b, b + window);
      at = apart > most ? b : at;
      most = Math.max(most, apart);
    }
    if (most > limits.shiftMm()) {
      double perSampleS = stretch.durationS() / (signals.size() - 1);
      say(
          StandRemark.SHIFT_INSIDE,
          Argument.term(signals.of),
          Argument.of(most, Unit.MM),
          Argument.of(stretch.fromS() + edges[at] * perSampleS, Unit.S));
    }
  }

  private void say(StandRemark topic, Argument... arguments) {
    remarks.add(Remark.of(topic, arguments));
  }
}
