package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.Channel.Quantity;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares an exported centre of pressure with the one from forces and moments. */
final class CrossCheck {
  private static final PlateLayout.TrueOrigin IN_THE_SURFACE = new PlateLayout.TrueOrigin(0, 0, 0);

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

  /** Compares where that is possible, and remarks on it. */
  void run(Notebook notes) {
    if (!possible()) {
      return;
    }
    Argument plate = Argument.text(plan.name());
    List<MomentUnit> tried = units.moment().map(List::of).orElse(List.of(MomentUnit.values()));
    List<Agreement> close = new ArrayList<>();
    Agreement last = new Agreement(0, 0);
    for (MomentUnit unit : tried) {
      last = agreement(unit);
      if (last.close()) {
        close.add(last);
        if (units.moment().isEmpty()) {
          notes.remark(RecordingRemark.MOMENT_UNIT, plate, Argument.term(unit));
        }
      }
    }
    if (close.size() == 1) {
      notes.remark(RecordingRemark.COP_AGREES, plate, mm(close.get(0).distanceMm()));
    } else if (plan.layout().trueOrigin().isPresent() && tried.size() == 1) {
      notes.remark(RecordingRemark.COP_DISAGREES, plate, mm(last.rightMm()), mm(last.anteriorMm()));
    } else {
      notes.remark(RecordingRemark.NOT_CROSS_CHECKED, plate);
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
    return new Agreement(meanDifference(axes.right(), unit), meanDifference(axes.anterior(), unit));
  }

  /** Computed less exported, over what is loaded. */
  private double meanDifference(Direction along, MomentUnit unit) {
    TrueOriginCop cop = new TrueOriginCop(axes, plan.layout().trueOrigin().orElse(IN_THE_SURFACE));
    // Moments of unknown unit came unscaled.
    double scale = units.moment().isPresent() ? 1 : unit.newtonMm();
    double[] moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    double[] vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis())).orElseThrow();
    double[] exported = raw.at(Channel.of(Quantity.COP, along.axis())).orElseThrow();
    Optional<double[]> force = raw.at(Channel.of(Quantity.FORCE, along.axis()));
    double sum = 0;
    int count = 0;
    for (int i = 0; i < moment.length; i++) {
      if (load.loaded(i) && !raw.holes().get(i)) {
        double alongN = force.isPresent() ? force.get()[i] : 0;
        sum += cop.at(along, moment[i] * scale, alongN, vertical[i]) - along.sign() * exported[i];
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }
}
