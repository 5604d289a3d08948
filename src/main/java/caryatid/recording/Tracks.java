package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.PlateDescription.ForceIs;
import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import java.util.BitSet;
import java.util.Optional;

/** Makes the plates' tracks, once everything is known. */
final class Tracks {
  private final Table table;
  private final Axes axes;
  private final Timeline timeline;
  private final Optional<PlateDescription> description;
  private final Notebook notes;

  Tracks(
      Table table,
      Axes axes,
      Timeline timeline,
      Optional<PlateDescription> description,
      Notebook notes) {
    this.table = table;
    this.axes = axes;
    this.timeline = timeline;
    this.description = description;
    this.notes = notes;
  }

  PlateTrack track(PlatePlan plan, PlateUnits units) {
    PlateTrack track =
        plan.layout().sensors().orElse(null) instanceof Sensors.LoadCells cells
            ? LoadCellConversion.track(
                table, plan, cells, units.force().orElseThrow(), timeline, notes)
            : converted(plan, units);
    new TrackOddities(track, notes).remark();
    plan.layout()
        .size()
        .ifPresent(edges -> new EdgeCheck(edges, offPlate(plan), notes).check(track));
    new PersonCheck(track, timeline.rateHz(), notes).check();
    return track;
  }

  private static Reading offPlate(PlatePlan plan) {
    if (plan.sensors().isEmpty()) {
      return Questions.exported(plan) ? Reading.OFF_PLATE : Reading.OFF_PLATE_BY_MOMENTS;
    }
    return Reading.OFF_PLATE_BY_SENSORS;
  }

  private PlateTrack converted(PlatePlan plan, PlateUnits units) {
    boolean removeOffset = description.map(PlateDescription::removeUnloadedOffset).orElse(false);
    PlateConversion conversion =
        new PlateConversion(table, plan, units, axes, timeline, removeOffset, notes);
    conversion.sense().ifPresent(seen -> checkSense(plan, seen));
    return conversion.track();
  }

  private void checkSense(PlatePlan plan, ForceIs seen) {
    Optional<ForceIs> stated = description.flatMap(PlateDescription::forceIs);
    Argument plate = Argument.text(plan.name());
    if (stated.isPresent() && stated.get() != seen) {
      notes.problem(Reading.FORCE_SENSE, plate, Argument.term(stated.get()), Argument.term(seen));
      return;
    }
    if (stated.isEmpty()) {
      notes.remark(RecordingRemark.FORCE_SENSE, plate, Argument.term(seen));
    }
    notes.understood(
        Aspect.FORCE_SENSE,
        stated.isPresent() ? Basis.DESCRIBED : Basis.CONCLUDED,
        plate,
        Argument.term(seen));
  }

  /** A plate that carried nothing. */
  static PlateTrack empty(PlatePlan plan, int size) {
    Samples zeros = Samples.adopt(new double[size]);
    return new PlateTrack(
        plan.name(),
        zeros,
        zeros,
        Optional.of(zeros),
        Optional.empty(),
        new Usable(new BitSet(), size));
  }
}
