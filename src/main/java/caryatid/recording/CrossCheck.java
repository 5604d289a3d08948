package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.CopPairs.Along;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Judges an exported centre of pressure by the one from forces and moments. */
final class CrossCheck {
  /** Ratio of variances that only another unit explains: 4 times as far (no source). */
  private static final double ANOTHER_UNIT = 16;

  /** Movement that is more than noise: standard deviation, mm (no source). */
  private static final double STIRS_MM = 1;

  private final PlatePlan plan;
  private final PlateUnits units;
  private final Axes axes;
  private final CopPairs pairs;
  private final Argument plate;
  private final Notebook notes;

  CrossCheck(PlatePlan plan, PlateUnits units, Axes axes, CopPairs pairs, Notebook notes) {
    this.plan = plan;
    this.units = units;
    this.axes = axes;
    this.pairs = pairs;
    this.plate = Argument.text(plan.name());
    this.notes = notes;
  }

  /** Compares where that is possible; remarks on it, or refuses what cannot both be true. */
  void run() {
    if (!pairs.exist()) {
      return;
    }
    List<MomentUnit> tried = units.moment().map(List::of).orElse(List.of(MomentUnit.values()));
    Map<MomentUnit, Agreement> agreements = new EnumMap<>(MomentUnit.class);
    tried.forEach(unit -> agreements.put(unit, agreement(unit)));
    List<MomentUnit> close = tried.stream().filter(u -> agreements.get(u).close()).toList();
    boolean known = tried.size() == 1;
    if (close.size() == 1) {
      agree(close.get(0), agreements.get(close.get(0)));
    } else if (known && plan.layout().trueOrigin().isPresent()) {
      disagree(agreements.get(tried.get(0)));
    } else if (known && units.cop().isPresent()) {
      compareMovements(tried.get(0));
    } else {
      notes.remark(RecordingRemark.NOT_CROSS_CHECKED, plate);
    }
  }

  private Agreement agreement(MomentUnit unit) {
    Along right = pairs.along(axes.right(), unit);
    Along anterior = pairs.along(axes.anterior(), unit);
    return new Agreement(
        right.apartMm(), anterior.apartMm(), Math.sqrt(right.apartMm2() + anterior.apartMm2()));
  }

  private void agree(MomentUnit unit, Agreement agreement) {
    if (units.moment().isEmpty()) {
      notes.remark(RecordingRemark.MOMENT_UNIT, plate, Argument.term(unit));
    }
    notes.remark(RecordingRemark.COP_AGREES, plate, mm(agreement.rmsMm()));
  }

  private void disagree(Agreement apart) {
    Argument[] said = {plate, mm(apart.rmsMm()), mm(apart.rightMm()), mm(apart.anteriorMm())};
    if (apart.contradictory()) {
      notes.problem(Reading.COP_CONTRADICTS, said);
    } else {
      notes.remark(RecordingRemark.COP_DISAGREES, said);
    }
  }

  /**
   * Without the true origin the two may lie anywhere beside each other, but they move alike; a
   * wrong unit makes one move ten times as far or more.
   */
  private void compareMovements(MomentUnit unit) {
    Along right = pairs.along(axes.right(), unit);
    Along anterior = pairs.along(axes.anterior(), unit);
    double exported = right.exportedMm2() + anterior.exportedMm2();
    double computed = right.computedMm2() + anterior.computedMm2();
    double more = Math.max(exported, computed);
    if (more > 2 * STIRS_MM * STIRS_MM && more > ANOTHER_UNIT * Math.min(exported, computed)) {
      notes.problem(
          Reading.COP_SCALE, plate, mm(Math.sqrt(exported / 2)), mm(Math.sqrt(computed / 2)));
    } else {
      notes.remark(RecordingRemark.NOT_CROSS_CHECKED, plate);
    }
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
