package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.Sensors;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the columns of the plates that a description tells of. */
final class DescribedPlates {
  private final Optional<PlateDescription> description;
  private final HeaderBlock head;
  private final String file;

  DescribedPlates(Optional<PlateDescription> description, HeaderBlock head, String file) {
    this.description = description;
    this.head = head;
    this.file = file;
  }

  /**
   * The columns of one plate.
   *
   * @param named the plates that the columns' names tell of
   */
  Outcome<Optional<PlateColumns>> described(
      PlateLayout layout, List<PlateColumns> named, StageMessages earlier) {
    if (layout.columns().isEmpty() && layout.sensors().isEmpty()) {
      return byName(layout, named, earlier);
    }
    Outcome<Map<Channel, Integer>> channels = found(new TreeMap<>(layout.columns()), earlier);
    Map<String, String> names = new LinkedHashMap<>();
    layout
        .sensors()
        .map(DescribedPlates::columnNames)
        .orElse(List.of())
        .forEach(name -> names.put(name, name));
    Outcome<Map<String, Integer>> sensors = found(names, channels.messages());
    Map<Channel, Integer> columns = new TreeMap<>(channels.value());
    wholeWeight(layout, sensors.value().values()).ifPresent(i -> columns.put(Channel.FORCE_Z, i));
    if (cellsAlone(layout)) {
      centreOfPressure().forEach(columns::put);
    }
    return new Outcome<>(
        Optional.of(new PlateColumns(layout, columns, sensors.value(), Set.of())),
        sensors.messages());
  }

  /** The columns of some names; those that cannot be found are left out, with a problem. */
  private <K> Outcome<Map<K, Integer>> found(Map<K, String> names, StageMessages earlier) {
    StageMessages messages = earlier;
    Map<K, Integer> columns = new LinkedHashMap<>();
    for (Map.Entry<K, String> each : names.entrySet()) {
      Outcome<OptionalInt> column = find(each.getValue(), messages);
      messages = column.messages();
      column.value().ifPresent(i -> columns.put(each.getKey(), i));
    }
    return new Outcome<>(columns, messages);
  }

  /** Whether a lone platform of load cells is described by them alone. */
  private boolean cellsAlone(PlateLayout layout) {
    return description.map(d -> d.plates().size() == 1).orElse(false)
        && layout.columns().isEmpty()
        && layout.sensors().orElse(null) instanceof Sensors.LoadCells;
  }

  /** The columns of an exported centre of pressure that state their unit, to compare with. */
  private Map<Channel, Integer> centreOfPressure() {
    Map<Channel, Integer> found = new TreeMap<>();
    for (int i = 0; i < head.columns().size(); i++) {
      ColumnName column = head.columns().get(i);
      ColumnMeaning meaning = ColumnMeaning.of(column);
      int index = i;
      meaning
          .channel()
          .filter(c -> c.quantity() == Quantity.COP && meaning.plate().isEmpty())
          .filter(c -> column.unit().flatMap(LengthUnit::named).isPresent())
          .ifPresent(c -> found.putIfAbsent(c, index));
    }
    return found;
  }

  /** The one column that says what a lone platform of load cells carries in all. */
  private OptionalInt wholeWeight(PlateLayout layout, Collection<Integer> cells) {
    boolean sought = cellsAlone(layout);
    Axis vertical =
        description.flatMap(PlateDescription::axes).map(a -> a.up().axis()).orElse(Axis.Z);
    int[] found =
        IntStream.range(0, sought ? head.columns().size() : 0)
            .filter(i -> !cells.contains(i))
            .filter(i -> TotalColumnNames.cells(head.columns().get(i), vertical))
            .filter(i -> readable(head.columns().get(i)))
            .toArray();
    return found.length == 1 ? OptionalInt.of(found[0]) : OptionalInt.empty();
  }

  private static boolean readable(ColumnName column) {
    return column.unit().isEmpty() || column.unit().flatMap(ForceUnit::named).isPresent();
  }

  /** A plate described without columns is the one of its name, or the only one. */
  private Outcome<Optional<PlateColumns>> byName(
      PlateLayout layout, List<PlateColumns> named, StageMessages earlier) {
    Optional<PlateColumns> found =
        named.size() == 1
            ? Optional.of(named.get(0))
            : named.stream().filter(p -> p.name().equals(layout.name())).findFirst();
    return new Outcome<>(
        found.map(p -> new PlateColumns(layout, p.columns(), Map.of(), p.open())),
        found.isPresent() ? earlier : noSuchPlate(layout, named, earlier));
  }

  private StageMessages noSuchPlate(
      PlateLayout layout, List<PlateColumns> named, StageMessages earlier) {
    String known = named.stream().map(PlateColumns::name).collect(Collectors.joining(", "));
    return earlier.withProblem(
        known.isEmpty() ? ImportProblem.NO_PLATE_NAMES : ImportProblem.NO_SUCH_PLATE,
        Argument.text(layout.name()),
        Argument.text(known.isEmpty() ? head.names() : known));
  }

  private static Collection<String> columnNames(Sensors sensors) {
    if (sensors instanceof Sensors.LoadCells cells) {
      return cells.cells().stream().map(Sensors.LoadCell::column).toList();
    }
    return ((Sensors.EightChannels) sensors).columns().values();
  }

  /** The one column of a name; a problem where there is none, or more than one. */
  Outcome<OptionalInt> find(String name, StageMessages earlier) {
    int[] found =
        IntStream.range(0, head.columns().size())
            .filter(i -> head.columns().get(i).isCalled(name))
            .toArray();
    if (found.length == 1) {
      return new Outcome<>(OptionalInt.of(found[0]), earlier);
    }
    if (head.names().isEmpty()) {
      return new Outcome<>(OptionalInt.empty(), noNames(earlier));
    }
    return new Outcome<>(
        OptionalInt.empty(),
        earlier.withProblem(
            new Place(file, head.headerLine(), Optional.of(name)),
            found.length == 0 ? ImportProblem.NO_COLUMN : ImportProblem.TWICE,
            Argument.text(name),
            Argument.text(head.names())));
  }

  /** Said once, and not of each name that is sought. */
  private StageMessages noNames(StageMessages earlier) {
    return earlier.has(ImportProblem.NO_NAMES)
        ? earlier
        : earlier.withProblem(ImportProblem.NO_NAMES, Argument.count(head.columns().size()));
  }
}
