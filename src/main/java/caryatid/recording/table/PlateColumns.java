package caryatid.recording.table;

import caryatid.recording.model.Channel;
import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.Sensors;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The columns of one plate in a table.
 *
 * @param layout what the description states of the plate; a bare name where it states nothing
 * @param columns the column of each channel, by its place in a row
 * @param sensors the columns of raw sensors by their names in the description
 * @param open the channels that are there in several versions; the first one's column stands for
 *     them
 */
public record PlateColumns(
    PlateLayout layout,
    Map<Channel, Integer> columns,
    Map<String, Integer> sensors,
    Set<Channel> open) {
  public PlateColumns {
    columns = new TreeMap<>(columns);
    sensors = Map.copyOf(sensors);
    open = Collections.unmodifiableSet(new TreeSet<>(open));
  }

  public String name() {
    return layout.name();
  }

  public MeasuredDirections measures() {
    return layout.measures();
  }

  /** By the name alone; the JVM would generate a record's methods at every start. */
  @Override
  public int hashCode() {
    return name().hashCode();
  }

  public Optional<Integer> column(Channel channel) {
    return Optional.ofNullable(columns.get(channel));
  }

  public boolean has(Channel channel) {
    return columns.containsKey(channel);
  }

  /** How many channels of a quantity there are. */
  public long count(Channel.Quantity quantity) {
    return columns.keySet().stream().filter(c -> c.quantity() == quantity).count();
  }

  /** Whether a centre of pressure can come of it, whatever the axes mean. */
  public boolean tellsCop() {
    return tells(measures().count()) || !sensors.isEmpty();
  }

  /** Whether a centre of pressure can come of it in one direction at least. */
  public boolean tellsOneDirection() {
    return tells(1) || !sensors.isEmpty();
  }

  private boolean tells(int directions) {
    return count(Channel.Quantity.COP) >= directions
        || (count(Channel.Quantity.FORCE) >= 1 && count(Channel.Quantity.MOMENT) >= directions);
  }

  /** In how many directions it tells a centre of pressure. */
  public int directions() {
    return tellsCop() ? measures().count() : 1;
  }

  public Stream<Integer> wanted() {
    return Stream.concat(columns.values().stream(), sensors.values().stream());
  }

  /**
   * The columns whose unit is a quantity's: its channels; of a platform of load cells the cells,
   * not the total weight next to them, which may be in another unit.
   */
  public Stream<Integer> holding(Channel.Quantity quantity) {
    boolean cells = layout.sensors().orElse(null) instanceof Sensors.LoadCells;
    return cells && quantity == Channel.Quantity.FORCE
        ? sensors.values().stream().sorted()
        : columns.entrySet().stream()
            .filter(c -> c.getKey().quantity() == quantity)
            .map(Map.Entry::getValue);
  }

  /** A plate of which only the name is known. */
  public static PlateLayout bare(String name) {
    return new PlateLayout(
        name,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        MeasuredDirections.BOTH);
  }
}
