package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import caryatid.remark.Argument;
import java.util.BitSet;
import java.util.Optional;

/** Builds the plates' tracks once units, axes and times are known. */
public final class TrackBuilder {
  private final ParsedTable table;
  private final Axes axes;
  private final Timeline timeline;
  private final Optional<PlateDescription> description;
  private final String file;

  public TrackBuilder(
      ParsedTable table,
      Axes axes,
      Timeline timeline,
      Optional<PlateDescription> description,
      String file) {
    this.table = table;
    this.axes = axes;
    this.timeline = timeline;
    this.description = description;
    this.file = file;
  }

  /**
   * A plate's track.
   *
   * @param units empty for a plate that carried nothing
   */
  public Outcome<PlateTrack> track(PlateColumns plate, Optional<PlateUnits> units) {
    return units
        .map(known -> track(plate, known))
        .orElseGet(() -> new Outcome<>(empty(plate, timeline.size()), StageMessages.none(file)));
  }

  private Outcome<PlateTrack> track(PlateColumns plate, PlateUnits units) {
    Outcome<PlateTrack> converted =
        plate.layout().sensors().orElse(null) instanceof Sensors.LoadCells cells
            ? ofCells(plate, units, cells)
            : converted(plate, units);
    PlateTrack track = converted.value();
    StageMessages edges =
        plate
            .layout()
            .size()
            .map(size -> new EdgeCheck(size, offPlate(plate), file).check(track))
            .orElse(StageMessages.none(file));
    return new Outcome<>(
        track,
        converted
            .messages()
            .and(directions(plate))
            .and(new TrackOddities(track, file).remarks())
            .and(
                new DeadColumns(table, plate, timeline.rateHz(), file)
                    .frozen(track.usable(), timeline))
            .and(edges)
            .and(new PersonCheck(track, timeline.rateHz(), file).check()));
  }

  private Outcome<PlateTrack> ofCells(
      PlateColumns plate, PlateUnits units, Sensors.LoadCells cells) {
    Outcome<PlateTrack> track =
        LoadCellConversion.track(table, plate, cells, units.force().orElseThrow(), timeline, file);
    return units
        .cop()
        .map(
            unit ->
                new CellsCopCheck(table, plate, timeline, file).compare(track.value(), unit, axes))
        .map(messages -> new Outcome<>(track.value(), track.messages().and(messages)))
        .orElse(track);
  }

  private StageMessages directions(PlateColumns plate) {
    StageMessages nothing = StageMessages.none(file);
    return plate.measures().sideways()
        ? nothing
        : nothing.withRemark(RecordingRemark.FORE_AND_AFT_ONLY, Argument.text(plate.name()));
  }

  private static ImportProblem offPlate(PlateColumns plate) {
    if (plate.sensors().isEmpty()) {
      return OpenQuestions.exported(plate)
          ? ImportProblem.OFF_PLATE
          : ImportProblem.OFF_PLATE_BY_MOMENTS;
    }
    return ImportProblem.OFF_PLATE_BY_SENSORS;
  }

  private Outcome<PlateTrack> converted(PlateColumns plate, PlateUnits units) {
    boolean removeOffset = description.map(PlateDescription::removeUnloadedOffset).orElse(false);
    PlateConversion conversion =
        new PlateConversion(table, plate, units, axes, timeline, removeOffset, file);
    StageMessages sense =
        conversion.sense().map(seen -> checkedSense(plate, seen)).orElse(StageMessages.none(file));
    Outcome<PlateTrack> track = conversion.track();
    return new Outcome<>(
        track.value(), conversion.sensorsAndOffset().and(sense).and(track.messages()));
  }

  private StageMessages checkedSense(PlateColumns plate, ForceIs seen) {
    Optional<ForceIs> stated = description.flatMap(PlateDescription::forceIs);
    Argument plateName = Argument.text(plate.name());
    StageMessages nothing = StageMessages.none(file);
    if (stated.isPresent() && stated.get() != seen) {
      return nothing.withProblem(
          ImportProblem.FORCE_SENSE, plateName, Argument.term(stated.get()), Argument.term(seen));
    }
    return nothing.withFact(
        ImportFact.FORCE_SENSE,
        stated.isPresent() ? Basis.DESCRIBED : Basis.CONCLUDED,
        plateName,
        Argument.term(seen));
  }

  /** A plate that carried nothing. */
  private static PlateTrack empty(PlateColumns plate, int size) {
    Samples zeros = Samples.adopt(new double[size]);
    return new PlateTrack(
        plate.name(),
        plate.measures().sideways() ? Optional.of(zeros) : Optional.empty(),
        zeros,
        Optional.of(zeros),
        Optional.empty(),
        new UsableMask(new BitSet(), size));
  }
}
