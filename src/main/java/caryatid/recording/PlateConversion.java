package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.Channel.Quantity;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Turns one plate's columns into a track in the person's frame; works in place, column by column.
 */
final class PlateConversion {
  private static final PlateLayout.TrueOrigin IN_THE_SURFACE = new PlateLayout.TrueOrigin(0, 0, 0);

  private final PlatePlan plan;
  private final PlateUnits units;
  private final Axes axes;
  private final Notebook notes;
  private final RawPlate raw;
  private final Load load;
  private final double rateHz;
  private final DeadColumns dead;

  PlateConversion(
      Table table,
      PlatePlan plan,
      PlateUnits units,
      Axes axes,
      Timeline timeline,
      boolean removeOffset,
      Notebook notes) {
    this.plan = plan;
    this.units = units;
    this.axes = axes;
    this.notes = notes;
    this.rateHz = timeline.rateHz();
    this.dead = new DeadColumns(table, plan, rateHz, notes);
    this.raw =
        plan.layout().sensors().isPresent()
            ? RawPlate.of(
                table, plan, (Sensors.EightChannels) plan.layout().sensors().get(), timeline, dead)
            : RawPlate.of(table, plan, units, timeline, needed());
    Load seen = Load.of(raw, axes);
    boolean changed =
        new UnloadedOffset(raw, axes, seen, plan.name(), notes).handle(removeOffset, rateHz);
    this.load = changed ? Load.of(raw, axes) : seen;
  }

  /** The channels that count; the moment about the vertical and the height of the CoP do not. */
  private Set<Channel> needed() {
    Set<Channel> needed = EnumSet.allOf(Channel.class);
    needed.remove(Channel.of(Quantity.MOMENT, axes.up().axis()));
    needed.remove(Channel.of(Quantity.COP, axes.up().axis()));
    return needed;
  }

  /** On whom the exported force acts, as its sign shows; empty without a vertical force. */
  Optional<PlateDescription.ForceIs> sense() {
    return load.sense();
  }

  PlateTrack track() {
    boolean exported = raw.has(Channel.of(Quantity.COP, axes.right().axis()));
    double[] right;
    double[] anterior;
    if (exported) {
      crossCheck();
      right = oriented(Quantity.COP, axes.right(), 1);
      anterior = oriented(Quantity.COP, axes.anterior(), 1);
    } else {
      TrueOriginCop cop = new TrueOriginCop(axes, origin());
      refuseDead(cop);
      right = computed(cop, axes.right());
      anterior = computed(cop, axes.anterior());
    }
    BitSet unusable =
        new UnusableSamples(raw, load, plan.layout(), notes).find(right, anterior, rateHz);
    if (exported) {
      dead.refuse(Channel.of(Quantity.COP, axes.right().axis()), right, unusable);
      dead.refuse(Channel.of(Quantity.COP, axes.anterior().axis()), anterior, unusable);
    }
    PlateLayout.ExportOrigin origin =
        plan.layout().exportOrigin().orElse(new PlateLayout.ExportOrigin(0, 0));
    shift(right, origin.rightMm());
    shift(anterior, origin.anteriorMm());
    Optional<double[]> up = vertical().map(v -> Frame.along(axes.up(), v, load.sign()));
    Optional<Horizontal> horizontal = horizontal(unusable);
    return new PlateTrack(
        plan.name(),
        masked(right, unusable),
        masked(anterior, unusable),
        up.map(v -> masked(v, unusable)),
        horizontal,
        usable(unusable));
  }

  /** Before the moments are overwritten by the centre of pressure. */
  private void refuseDead(TrueOriginCop cop) {
    BitSet unusable = (BitSet) load.unloaded().clone();
    unusable.or(raw.holes());
    for (Direction along : new Direction[] {axes.right(), axes.anterior()}) {
      Channel moment = Channel.of(Quantity.MOMENT, cop.momentAxis(along));
      dead.refuse(moment, raw.at(moment).orElseThrow(), unusable);
      Channel force = Channel.of(Quantity.FORCE, along.axis());
      if (cop.needsHorizontalForce()) {
        raw.at(force).ifPresent(values -> dead.refuse(force, values, unusable));
      }
    }
    Channel up = Channel.of(Quantity.FORCE, axes.up().axis());
    dead.refuse(up, vertical().orElseThrow(), unusable);
  }

  private PlateLayout.TrueOrigin origin() {
    if (plan.layout().sensors().orElse(null) instanceof Sensors.EightChannels eight) {
      return new PlateLayout.TrueOrigin(0, 0, -eight.az0Mm());
    }
    return plan.layout().trueOrigin().orElse(IN_THE_SURFACE);
  }

  private Optional<double[]> vertical() {
    return raw.at(Channel.of(Quantity.FORCE, axes.up().axis()));
  }

  private double[] oriented(Quantity quantity, Direction direction, double scale) {
    return Frame.along(
        direction, raw.at(Channel.of(quantity, direction.axis())).orElseThrow(), scale);
  }

  private Optional<Horizontal> horizontal(BitSet unusable) {
    boolean both =
        raw.has(Channel.of(Quantity.FORCE, axes.right().axis()))
            && raw.has(Channel.of(Quantity.FORCE, axes.anterior().axis()))
            && vertical().isPresent();
    return both && !isDead(axes.right(), unusable) && !isDead(axes.anterior(), unusable)
        ? Optional.of(
            new Horizontal(
                masked(oriented(Quantity.FORCE, axes.right(), load.sign()), unusable),
                masked(oriented(Quantity.FORCE, axes.anterior(), load.sign()), unusable)))
        : Optional.empty();
  }

  private boolean isDead(Direction along, BitSet unusable) {
    Channel force = Channel.of(Quantity.FORCE, along.axis());
    return dead.withhold(force, raw.at(force).orElseThrow(), unusable);
  }

  /** Overwrites the moment that moves the centre along a direction; unloaded samples become 0. */
  private double[] computed(TrueOriginCop cop, Direction along) {
    double[] moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    Optional<double[]> force = raw.at(Channel.of(Quantity.FORCE, along.axis()));
    double[] vertical = vertical().orElseThrow();
    TrueOriginCop.Line line = cop.along(along);
    for (int i = 0; i < moment.length; i++) {
      double alongN = force.isPresent() ? force.get()[i] : 0;
      moment[i] = load.loaded(i) ? line.at(moment[i], alongN, vertical[i]) : 0;
    }
    return moment;
  }

  private void crossCheck() {
    new CrossCheck(plan, units, axes, new CopPairs(plan, units, axes, raw, load), notes).run();
  }

  private static void shift(double[] series, double by) {
    for (int i = 0; by != 0 && i < series.length; i++) {
      series[i] += by;
    }
  }

  private static Samples masked(double[] series, BitSet unusable) {
    unusable.stream().forEach(i -> series[i] = 0);
    return Samples.adopt(series);
  }

  private Usable usable(BitSet unusable) {
    BitSet usable = new BitSet(raw.size());
    usable.set(0, raw.size());
    usable.andNot(unusable);
    return new Usable(usable, raw.size());
  }
}
