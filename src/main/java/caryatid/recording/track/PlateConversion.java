package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.Horizontal;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Samples;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timeline;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Turns one plate's columns into a track in the person's frame. */
final class PlateConversion {
  private static final PlateLayout.TrueOrigin IN_THE_SURFACE = new PlateLayout.TrueOrigin(0, 0, 0);

  private final PlateColumns plate;
  private final PlateUnits units;
  private final Axes axes;
  private final RawPlate raw;
  private final LoadedSamples load;
  private final double rateHz;
  private final DeadColumns deadColumns;
  private final StageMessages sensorsAndOffset;
  private final String file;

  PlateConversion(
      ParsedTable table,
      PlateColumns plate,
      PlateUnits units,
      Axes axes,
      Timeline timeline,
      boolean removeOffset,
      String file) {
    this.plate = plate;
    this.units = units;
    this.axes = axes;
    this.rateHz = timeline.rateHz();
    this.file = file;
    this.deadColumns = new DeadColumns(table, plate, rateHz, file);
    Optional<Sensors.EightChannels> eight = eightChannels(plate);
    RawPlate exported =
        eight
            .map(sensors -> RawPlate.of(table, plate, sensors, timeline).only(needed()))
            .orElseGet(() -> RawPlate.of(table, plate, units, timeline, needed()));
    StageMessages sensors =
        eight.map(e -> deadColumns.refused(e, exported, timeline)).orElse(StageMessages.none(file));
    LoadedSamples seen = LoadedSamples.of(exported, axes);
    Outcome<Optional<RawPlate>> shifted =
        new UnloadedOffset(exported, axes, seen, plate.name(), file).handle(removeOffset, rateHz);
    this.sensorsAndOffset = sensors.and(shifted.messages());
    this.raw = shifted.value().orElse(exported);
    this.load = shifted.value().map(raw -> LoadedSamples.of(raw, axes)).orElse(seen);
  }

  /**
   * The channels that count. The moment about the vertical and the height of the CoP do not, nor
   * does what would tell a direction that the plate does not measure.
   */
  private Set<Channel> needed() {
    Set<Channel> needed = EnumSet.allOf(Channel.class);
    needed.remove(Channel.of(Quantity.MOMENT, axes.up().axis()));
    needed.remove(Channel.of(Quantity.COP, axes.up().axis()));
    if (!plate.measures().sideways()) {
      needed.remove(Channel.of(Quantity.COP, axes.right().axis()));
      needed.remove(Channel.of(Quantity.FORCE, axes.right().axis()));
      needed.remove(Channel.of(Quantity.MOMENT, axes.anterior().axis()));
    }
    return needed;
  }

  /** The directions in which the plate tells where the load is. */
  private List<Direction> measured() {
    return plate.measures().sideways()
        ? List.of(axes.right(), axes.anterior())
        : List.of(axes.anterior());
  }

  private static Optional<Sensors.EightChannels> eightChannels(PlateColumns plate) {
    return plate
        .layout()
        .sensors()
        .filter(Sensors.EightChannels.class::isInstance)
        .map(Sensors.EightChannels.class::cast);
  }

  /** What the raw channels and the unloaded plate show. */
  StageMessages sensorsAndOffset() {
    return sensorsAndOffset;
  }

  /** On whom the exported force acts, as its sign shows; empty without a vertical force. */
  Optional<PlateDescription.ForceIs> sense() {
    return load.sense();
  }

  Outcome<PlateTrack> track() {
    return measured().stream().allMatch(along -> raw.has(cop(along)))
        ? byExportedCop()
        : byMoments();
  }

  /** The track by the exported centre of pressure. */
  private Outcome<PlateTrack> byExportedCop() {
    CopPairs pairs = new CopPairs(plate, units, axes, raw, load);
    StageMessages checked = new CrossCheck(plate, units, axes, pairs, file).run();
    CopSeries centre = centre(along -> oriented(Quantity.COP, along, 1));
    Outcome<BitSet> unusable = unusable(centre);
    StageMessages messages =
        checked
            .and(unusable.messages())
            .and(MeanRemoved.refused(centre, unusable.value(), plate.name(), file));
    if (centre.right().isPresent()) {
      messages =
          messages.and(
              deadColumns.refused(cop(axes.right()), centre.right().get(), unusable.value()));
    }
    messages =
        messages.and(
            deadColumns.refused(cop(axes.anterior()), centre.anterior(), unusable.value()));
    return trackOf(centre, new Outcome<>(unusable.value(), messages));
  }

  private CopSeries centre(Function<Direction, SampleSeries> along) {
    return new CopSeries(
        plate.measures().sideways() ? Optional.of(along.apply(axes.right())) : Optional.empty(),
        along.apply(axes.anterior()));
  }

  private static Channel cop(Direction along) {
    return Channel.of(Quantity.COP, along.axis());
  }

  /** The track by forces and moments. */
  private Outcome<PlateTrack> byMoments() {
    TrueOriginCop cop = new TrueOriginCop(axes, origin());
    CopSeries centre = centre(along -> centreAlong(cop, along));
    Outcome<BitSet> unusable = unusable(centre);
    return trackOf(
        centre, new Outcome<>(unusable.value(), deadChannels(cop).and(unusable.messages())));
  }

  private StageMessages deadChannels(TrueOriginCop cop) {
    BitSet unusable = (BitSet) load.unloaded().clone();
    unusable.or(raw.holes());
    StageMessages messages = StageMessages.none(file);
    for (Direction along : measured()) {
      messages = messages.and(refusedIfDead(Quantity.MOMENT, cop.momentAxis(along), unusable));
      if (cop.needsHorizontalForce()) {
        messages = messages.and(refusedIfDead(Quantity.FORCE, along.axis(), unusable));
      }
    }
    return messages.and(refusedIfDead(Quantity.FORCE, axes.up().axis(), unusable));
  }

  private StageMessages refusedIfDead(Quantity quantity, Axis axis, BitSet unusable) {
    Channel channel = Channel.of(quantity, axis);
    return raw.at(channel)
        .map(values -> deadColumns.refused(channel, values, unusable))
        .orElse(StageMessages.none(file));
  }

  private Outcome<BitSet> unusable(CopSeries centre) {
    return new UnusableSamples(raw, load, plate.layout(), file).find(centre, rateHz);
  }

  private Outcome<PlateTrack> trackOf(CopSeries centre, Outcome<BitSet> unusable) {
    PlateLayout.ExportOrigin origin =
        plate.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    BitSet left = unusable.value();
    Outcome<Optional<Horizontal>> horizontal = horizontal(left);
    return new Outcome<>(
        new PlateTrack(
            plate.name(),
            centre.right().map(right -> right.plus(origin.rightMm()).without(left)),
            centre.anterior().plus(origin.anteriorMm()).without(left),
            load.known() ? Optional.of(force(axes.up(), left)) : Optional.empty(),
            horizontal.value(),
            UsableMask.without(left, raw.size())),
        unusable.messages().and(horizontal.messages()));
  }

  /** The horizontal force; left out with a remark where one of its columns is dead. */
  private Outcome<Optional<Horizontal>> horizontal(BitSet unusable) {
    StageMessages nothing = StageMessages.none(file);
    if (!load.known()) {
      return new Outcome<>(Optional.empty(), nothing);
    }
    Channel right = Channel.of(Quantity.FORCE, axes.right().axis());
    Channel anterior = Channel.of(Quantity.FORCE, axes.anterior().axis());
    if (!raw.has(right) || !raw.has(anterior)) {
      return new Outcome<>(Optional.empty(), nothing);
    }
    StageMessages withheld =
        Stream.of(right, anterior)
            .map(c -> deadColumns.withheld(c, raw.at(c).orElseThrow(), unusable))
            .filter(messages -> !messages.remarks().isEmpty())
            .findFirst()
            .orElse(nothing);
    return new Outcome<>(
        withheld.remarks().isEmpty()
            ? Optional.of(
                new Horizontal(force(axes.right(), unusable), force(axes.anterior(), unusable)))
            : Optional.empty(),
        withheld);
  }

  private PlateLayout.TrueOrigin origin() {
    return eightChannels(plate)
        .map(eight -> new PlateLayout.TrueOrigin(0, 0, -eight.az0Mm()))
        .or(plate.layout()::trueOrigin)
        .orElse(IN_THE_SURFACE);
  }

  private SampleSeries oriented(Quantity quantity, Direction direction, double factor) {
    return raw.at(Channel.of(quantity, direction.axis()))
        .orElseThrow()
        .times(direction.sign() * factor);
  }

  /** The force on the person along a direction. */
  private Samples force(Direction direction, BitSet unusable) {
    return oriented(Quantity.FORCE, direction, load.sign()).without(unusable);
  }

  /** The centre of pressure along a direction; 0 in unloaded samples. */
  private SampleSeries centreAlong(TrueOriginCop cop, Direction along) {
    TrueOriginCop.CopFormula line = cop.along(along);
    SampleSeries moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    SampleSeries vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis())).orElseThrow();
    Optional<SampleSeries> force = raw.at(Channel.of(Quantity.FORCE, along.axis()));
    double[] centre = new double[moment.size()];
    for (int i = 0; i < centre.length; i++) {
      double alongN = force.isPresent() ? force.get().at(i) : 0;
      centre[i] = load.loaded(i) ? line.at(moment.at(i), alongN, vertical.at(i)) : 0;
    }
    return new SampleSeries(centre);
  }
}
