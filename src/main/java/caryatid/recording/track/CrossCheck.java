package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.recording.track.CopPairs.Along;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Judges an exported centre of pressure by the one from forces and moments. */
final class CrossCheck {
  /**
   * How far the centre of pressure from forces and moments lies from the exported one.
   *
   * @param rightMm to the right, on average, mm
   * @param anteriorMm anterior, on average, mm
   * @param rmsMm root mean square of the distance, mm; it also shows differences that cancel on
   *     average, as those of a wrong sign do
   */
  private record Agreement(double rightMm, double anteriorMm, double rmsMm) {
    boolean close() {
      return rmsMm <= TrackLimits.COP_AGREES_MM;
    }

    boolean contradictory() {
      return rmsMm > TrackLimits.COP_CONTRADICTS_MM;
    }
  }

  private final PlateColumns plate;
  private final PlateUnits units;
  private final Axes axes;
  private final CopPairs pairs;
  private final Argument plateName;
  private final StageMessages nothing;

  CrossCheck(PlateColumns plate, PlateUnits units, Axes axes, CopPairs pairs, String file) {
    this.plate = plate;
    this.units = units;
    this.axes = axes;
    this.pairs = pairs;
    this.plateName = Argument.text(plate.name());
    this.nothing = StageMessages.none(file);
  }

  /** Compares where that is possible; remarks on it, or refuses what cannot both be true. */
  StageMessages run() {
    if (!pairs.exist()) {
      return nothing;
    }
    List<MomentUnit> tried = units.moment().map(List::of).orElse(List.of(MomentUnit.values()));
    Map<MomentUnit, Agreement> agreements = new EnumMap<>(MomentUnit.class);
    tried.forEach(unit -> agreements.put(unit, agreement(unit)));
    List<MomentUnit> close = tried.stream().filter(u -> agreements.get(u).close()).toList();
    boolean known = tried.size() == 1;
    if (close.size() == 1) {
      return agree(close.get(0), agreements.get(close.get(0)));
    }
    if (known && plate.layout().trueOrigin().isPresent()) {
      return disagree(agreements.get(tried.get(0)));
    }
    return known && units.cop().isPresent() ? compareMovements(tried.get(0)) : notChecked();
  }

  private Agreement agreement(MomentUnit unit) {
    Along right = pairs.along(axes.right(), unit);
    Along anterior = pairs.along(axes.anterior(), unit);
    return new Agreement(
        right.apartMm(), anterior.apartMm(), Math.sqrt(right.apartMm2() + anterior.apartMm2()));
  }

  private StageMessages notChecked() {
    return nothing.withRemark(RecordingRemark.NOT_CROSS_CHECKED, plateName);
  }

  private StageMessages agree(MomentUnit unit, Agreement agreement) {
    StageMessages messages =
        units.moment().isEmpty()
            ? nothing.withRemark(RecordingRemark.MOMENT_UNIT, plateName, Argument.term(unit))
            : nothing;
    return messages.withRemark(RecordingRemark.COP_AGREES, plateName, mm(agreement.rmsMm()));
  }

  private StageMessages disagree(Agreement apart) {
    Argument[] said = {plateName, mm(apart.rmsMm()), mm(apart.rightMm()), mm(apart.anteriorMm())};
    return apart.contradictory()
        ? nothing.withProblem(ImportProblem.COP_CONTRADICTS, said)
        : nothing.withRemark(RecordingRemark.COP_DISAGREES, said);
  }

  /**
   * Without the true origin the two may lie anywhere beside each other, but they move alike; a
   * wrong unit makes one move ten times as far or more.
   */
  private StageMessages compareMovements(MomentUnit unit) {
    Along right = pairs.along(axes.right(), unit);
    Along anterior = pairs.along(axes.anterior(), unit);
    double exported = right.exportedMm2() + anterior.exportedMm2();
    double computed = right.computedMm2() + anterior.computedMm2();
    double more = Math.max(exported, computed);
    if (more > 2 * TrackLimits.STIRS_MM * TrackLimits.STIRS_MM
        && more > TrackLimits.ANOTHER_UNIT * Math.min(exported, computed)) {
      return nothing.withProblem(
          ImportProblem.COP_SCALE,
          plateName,
          mm(Math.sqrt(exported / 2)),
          mm(Math.sqrt(computed / 2)));
    }
    return notChecked();
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
