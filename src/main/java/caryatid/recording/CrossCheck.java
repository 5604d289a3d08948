package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.Channel.Quantity;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Compares an exported centre of pressure with the one from forces and moments. */
final class CrossCheck {
  private static final PlateLayout.TrueOrigin IN_THE_SURFACE = new PlateLayout.TrueOrigin(0, 0, 0);

  /** Ratio of variances that only another unit explains: 4 times as far (no source). */
  private static final double ANOTHER_UNIT = 16;

  /** Movement that is more than noise: standard deviation, mm (no source). */
  private static final double STIRS_MM = 1;

  private final PlatePlan plan;
  private final PlateUnits units;
  private final Axes axes;
  private final RawPlate raw;
  private final Load load;

  CrossCheck(PlatePlan plan, PlateUnits units, Axes axes, RawPlate raw, Load load) {
    this.plan = plan;
    this.units = units;
    this.axes = axes;
    this.raw = raw;
    this.load = load;
  }

  /** Compares where that is possible; remarks on it, or refuses what cannot both be true. */
  void run(Notebook notes) {
    if (!possible()) {
      return;
    }
    Argument plate = Argument.text(plan.name());
    List<MomentUnit> tried = units.moment().map(List::of).orElse(List.of(MomentUnit.values()));
    List<MomentUnit> close = new ArrayList<>();
    Agreement last = new Agreement(0, 0, 0);
    for (MomentUnit unit : tried) {
      Agreement agreement = agreement(unit);
      if (agreement.close()) {
        close.add(unit);
      }
      last = close.isEmpty() || agreement.close() ? agreement : last;
    }
    if (close.size() == 1) {
      if (units.moment().isEmpty()) {
        notes.remark(RecordingRemark.MOMENT_UNIT, plate, Argument.term(close.get(0)));
      }
      notes.remark(RecordingRemark.COP_AGREES, plate, mm(last.rmsMm()));
    } else if (plan.layout().trueOrigin().isPresent() && tried.size() == 1) {
      disagree(last, plate, notes);
    } else if (tried.size() == 1 && units.cop().isPresent()) {
      scale(tried.get(0), plate, notes);
    } else {
      notes.remark(RecordingRemark.NOT_CROSS_CHECKED, plate);
    }
  }

  /**
   * Without the true origin the two may lie anywhere beside each other, but they move alike; a
   * wrong unit makes one move ten times as far or more.
   */
  private void scale(MomentUnit unit, Argument plate, Notebook notes) {
    double exported = 0;
    double computed = 0;
    for (Direction along : List.of(axes.right(), axes.anterior())) {
      double[] moves = movements(along, unit);
      exported += moves[0];
      computed += moves[1];
    }
    double more = Math.max(exported, computed);
    if (more > 2 * STIRS_MM * STIRS_MM && more > ANOTHER_UNIT * Math.min(exported, computed)) {
      notes.problem(
          Reading.COP_SCALE, plate, mm(Math.sqrt(exported / 2)), mm(Math.sqrt(computed / 2)));
    } else {
      notes.remark(RecordingRemark.NOT_CROSS_CHECKED, plate);
    }
  }

  /** Variances of the exported and the computed centre of pressure, over what is loaded, mm2. */
  private double[] movements(Direction along, MomentUnit unit) {
    TrueOriginCop cop = new TrueOriginCop(axes, IN_THE_SURFACE);
    double factor = units.moment().isPresent() ? 1 : unit.newtonMm();
    double[] moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    double[] vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis())).orElseThrow();
    double[] exported = raw.at(Channel.of(Quantity.COP, along.axis())).orElseThrow();
    IntStream loaded =
        IntStream.range(0, moment.length).filter(i -> load.loaded(i) && !raw.holes().get(i));
    double[] sums =
        loaded.collect(
            () -> new double[5],
            (sum, i) -> {
              double computed = cop.at(along, moment[i] * factor, 0, vertical[i]);
              sum[0]++;
              sum[1] += exported[i];
              sum[2] += exported[i] * exported[i];
              sum[3] += computed;
              sum[4] += computed * computed;
            },
            (a, b) -> {});
    double n = Math.max(sums[0], 1);
    return new double[] {
      sums[2] / n - sums[1] / n * (sums[1] / n), sums[4] / n - sums[3] / n * (sums[3] / n)
    };
  }

  private static void disagree(Agreement apart, Argument plate, Notebook notes) {
    if (apart.contradictory()) {
      notes.problem(
          Reading.COP_CONTRADICTS,
          plate,
          mm(apart.rmsMm()),
          mm(apart.rightMm()),
          mm(apart.anteriorMm()));
    } else {
      notes.remark(
          RecordingRemark.COP_DISAGREES,
          plate,
          mm(apart.rmsMm()),
          mm(apart.rightMm()),
          mm(apart.anteriorMm()));
    }
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }

  private boolean possible() {
    Optional<double[]> one = raw.at(Channel.of(Quantity.MOMENT, axes.right().axis()));
    Optional<double[]> other = raw.at(Channel.of(Quantity.MOMENT, axes.anterior().axis()));
    boolean complete =
        one.isPresent()
            && other.isPresent()
            && axes.rightHanded()
            && raw.has(Channel.of(Quantity.FORCE, axes.up().axis()));
    // Moments that are all zero were taken about the centre of pressure itself.
    return complete && !(zero(one.get()) && zero(other.get()));
  }

  private static boolean zero(double[] series) {
    for (double value : series) {
      if (value != 0) {
        return false;
      }
    }
    return true;
  }

  private Agreement agreement(MomentUnit unit) {
    double[] right = differences(axes.right(), unit);
    double[] anterior = differences(axes.anterior(), unit);
    return new Agreement(right[0], anterior[0], Math.sqrt(right[1] + anterior[1]));
  }

  /** Computed less exported, over what is loaded: the mean, mm, and the mean square, mm2. */
  private double[] differences(Direction along, MomentUnit unit) {
    TrueOriginCop cop = new TrueOriginCop(axes, plan.layout().trueOrigin().orElse(IN_THE_SURFACE));
    // Moments of unknown unit came unscaled.
    double scale = units.moment().isPresent() ? 1 : unit.newtonMm();
    double[] moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    double[] vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis())).orElseThrow();
    double[] exported = raw.at(Channel.of(Quantity.COP, along.axis())).orElseThrow();
    double[] force = raw.at(Channel.of(Quantity.FORCE, along.axis())).orElse(new double[0]);
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (int i = 0; i < moment.length; i++) {
      if (load.loaded(i) && !raw.holes().get(i)) {
        double alongN = force.length > 0 ? force[i] : 0;
        double apart =
            cop.at(along, moment[i] * scale, alongN, vertical[i]) - along.sign() * exported[i];
        sum += apart;
        squares += apart * apart;
        count++;
      }
    }
    return new double[] {sum / Math.max(count, 1), squares / Math.max(count, 1)};
  }
}
