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
import caryatid.recording.table.ColumnMapping;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Decides what a table's columns mean: by the description, else by their names. */
public final class ColumnMapper {
  private final String file;
  private final Optional<PlateDescription> description;

  public ColumnMapper(String file, Optional<PlateDescription> description) {
    this.file = file;
    this.description = description;
  }

  public ColumnMapping plan(HeaderBlock head) {
    Outcome<List<PlateColumns>> plates = plates(head);
    Outcome<OptionalInt> time = time(head, plates.messages());
    StageMessages messages = time.messages().and(twoMeanings(time.value(), plates.value(), head));
    List<PlateColumns> telling = plates.value().stream().filter(PlateColumns::tellsCop).toList();
    OptionalInt index = index(time.value(), telling, head);
    return new ColumnMapping(time.value(), index, telling, messages.problems());
  }

  private Outcome<List<PlateColumns>> plates(HeaderBlock head) {
    Outcome<List<PlateColumns>> named = new NamedPlates(head).plates(columnsUndescribed(), file);
    StageMessages messages = named.messages();
    List<PlateColumns> plates = new ArrayList<>();
    for (PlateLayout layout : description.map(PlateDescription::plates).orElse(List.of())) {
      Outcome<Optional<PlateColumns>> plate = described(layout, named.value(), head, messages);
      messages = plate.messages();
      plate.value().ifPresent(plates::add);
    }
    boolean plain = description.map(d -> d.plates().isEmpty()).orElse(true);
    boolean byName = plain && !messages.has(ImportProblem.TWICE);
    return new Outcome<>(byName ? named.value() : plates, messages);
  }

  private Outcome<OptionalInt> time(HeaderBlock head, StageMessages earlier) {
    Optional<String> called = description.flatMap(d -> d.time().column());
    if (called.isPresent()) {
      return find(called.get(), head, earlier);
    }
    OptionalInt named =
        rateDescribed() ? OptionalInt.empty() : ofKind(head, ColumnMeaning.ColumnKind.TIME);
    return new Outcome<>(named, earlier);
  }

  /**
   * Without times, or with a rate in their place, a column that counts samples reveals lost ones.
   */
  private OptionalInt index(OptionalInt time, List<PlateColumns> plates, HeaderBlock head) {
    OptionalInt numbers = ofKind(head, ColumnMeaning.ColumnKind.INDEX);
    OptionalInt index =
        numbers.isEmpty() && rateDescribed()
            ? ofKind(head, ColumnMeaning.ColumnKind.TIME)
            : numbers;
    boolean taken =
        time.isPresent()
            || plates.stream()
                .flatMap(PlateColumns::wanted)
                .anyMatch(i -> index.equals(OptionalInt.of(i)));
    return taken ? OptionalInt.empty() : index;
  }

  private boolean rateDescribed() {
    return description.map(d -> d.time().rateHz().isPresent()).orElse(false);
  }

  /** The columns that have two meanings, each a problem. */
  private StageMessages twoMeanings(OptionalInt time, List<PlateColumns> plates, HeaderBlock head) {
    Set<Integer> used = new HashSet<>();
    List<Problem> problems =
        IntStream.concat(
                time.stream(), plates.stream().flatMap(PlateColumns::wanted).mapToInt(i -> i))
            .filter(i -> !used.add(i))
            .distinct()
            .mapToObj(i -> head.columns().get(i).full())
            .map(
                name ->
                    Problem.at(place(name, head), ImportProblem.TWO_MEANINGS, Argument.text(name)))
            .toList();
    return StageMessages.none(file).withProblems(problems);
  }

  private Place place(String column, HeaderBlock head) {
    return new Place(file, head.headerLine(), Optional.of(column));
  }

  private static OptionalInt ofKind(HeaderBlock head, ColumnMeaning.ColumnKind kind) {
    return IntStream.range(0, head.columns().size())
        .filter(i -> ColumnMeaning.of(head.columns().get(i)).kind() == kind)
        .findFirst();
  }

  private boolean columnsUndescribed() {
    return description.stream()
        .flatMap(d -> d.plates().stream())
        .allMatch(p -> p.columns().isEmpty() && p.sensors().isEmpty());
  }

  private Outcome<Optional<PlateColumns>> described(
      PlateLayout layout, List<PlateColumns> named, HeaderBlock head, StageMessages earlier) {
    if (layout.columns().isEmpty() && layout.sensors().isEmpty()) {
      return byName(layout, named, head, earlier);
    }
    Outcome<Map<Channel, Integer>> channels = found(new TreeMap<>(layout.columns()), head, earlier);
    Map<String, String> names = new LinkedHashMap<>();
    layout
        .sensors()
        .map(ColumnMapper::columnNames)
        .orElse(List.of())
        .forEach(name -> names.put(name, name));
    Outcome<Map<String, Integer>> sensors = found(names, head, channels.messages());
    Map<Channel, Integer> columns = new TreeMap<>(channels.value());
    wholeWeight(layout, head, sensors.value().values())
        .ifPresent(i -> columns.put(Channel.FORCE_Z, i));
    if (cellsAlone(layout)) {
      centreOfPressure(head).forEach(columns::put);
    }
    return new Outcome<>(
        Optional.of(new PlateColumns(layout, columns, sensors.value(), Set.of())),
        sensors.messages());
  }

  /** The columns of some names; those that cannot be found are left out, with a problem. */
  private <K> Outcome<Map<K, Integer>> found(
      Map<K, String> names, HeaderBlock head, StageMessages earlier) {
    StageMessages messages = earlier;
    Map<K, Integer> columns = new LinkedHashMap<>();
    for (Map.Entry<K, String> each : names.entrySet()) {
      Outcome<OptionalInt> column = find(each.getValue(), head, messages);
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
  private static Map<Channel, Integer> centreOfPressure(HeaderBlock head) {
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
  private OptionalInt wholeWeight(PlateLayout layout, HeaderBlock head, Collection<Integer> cells) {
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
  private static Outcome<Optional<PlateColumns>> byName(
      PlateLayout layout, List<PlateColumns> named, HeaderBlock head, StageMessages earlier) {
    Optional<PlateColumns> found =
        named.size() == 1
            ? Optional.of(named.get(0))
            : named.stream().filter(p -> p.name().equals(layout.name())).findFirst();
    return new Outcome<>(
        found.map(p -> new PlateColumns(layout, p.columns(), Map.of(), p.open())),
        found.isPresent() ? earlier : noSuchPlate(layout, named, head, earlier));
  }

  private static StageMessages noSuchPlate(
      PlateLayout layout, List<PlateColumns> named, HeaderBlock head, StageMessages earlier) {
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
  private Outcome<OptionalInt> find(String name, HeaderBlock head, StageMessages earlier) {
    int[] found =
        IntStream.range(0, head.columns().size())
            .filter(i -> head.columns().get(i).isCalled(name))
            .toArray();
    if (found.length == 1) {
      return new Outcome<>(OptionalInt.of(found[0]), earlier);
    }
    if (head.names().isEmpty()) {
      return new Outcome<>(OptionalInt.empty(), noNames(head, earlier));
    }
    return new Outcome<>(
        OptionalInt.empty(),
        earlier.withProblem(
            place(name, head),
            found.length == 0 ? ImportProblem.NO_COLUMN : ImportProblem.TWICE,
            Argument.text(name),
            Argument.text(head.names())));
  }

  /** Said once, and not of each name that is sought. */
  private static StageMessages noNames(HeaderBlock head, StageMessages earlier) {
    return earlier.has(ImportProblem.NO_NAMES)
        ? earlier
        : earlier.withProblem(ImportProblem.NO_NAMES, Argument.count(head.columns().size()));
  }
}
