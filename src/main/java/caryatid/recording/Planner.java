package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
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

/** Decides what a table's columns are taken for: by the description, else by their names. */
final class Planner {
  private final String file;
  private final Optional<PlateDescription> description;

  Planner(String file, Optional<PlateDescription> description) {
    this.file = file;
    this.description = description;
  }

  Plan plan(Head head) {
    Notebook notes = new Notebook(file);
    List<PlatePlan> plates = new ArrayList<>();
    List<PlatePlan> named = new NamedPlates(head).plates(columnsUndescribed(), notes);
    for (PlateLayout layout : description.map(PlateDescription::plates).orElse(List.of())) {
      described(layout, named, head, notes).ifPresent(plates::add);
    }
    boolean plain = description.map(d -> d.plates().isEmpty()).orElse(true);
    if (plain && !notes.has(Reading.TWICE)) {
      plates = named;
    }
    OptionalInt time = time(head, notes);
    refuseTwoMeanings(time, plates, head, notes);
    List<PlatePlan> telling = plates.stream().filter(PlatePlan::tellsCop).toList();
    return new Plan(time, index(time, telling, head), telling, notes.problems());
  }

  private OptionalInt time(Head head, Notebook notes) {
    Optional<String> called = description.flatMap(d -> d.time().column());
    if (called.isPresent()) {
      return find(called.get(), head, notes);
    }
    return rateDescribed() ? OptionalInt.empty() : ofKind(head, Role.Kind.TIME);
  }

  /**
   * Without times, or with a rate in their place, a column that counts samples tells of lost ones.
   */
  private OptionalInt index(OptionalInt time, List<PlatePlan> plates, Head head) {
    OptionalInt numbers = ofKind(head, Role.Kind.INDEX);
    OptionalInt index =
        numbers.isEmpty() && rateDescribed() ? ofKind(head, Role.Kind.TIME) : numbers;
    boolean taken =
        time.isPresent()
            || plates.stream().flatMap(PlatePlan::wanted).anyMatch(i -> index.orElse(-1) == i);
    return taken ? OptionalInt.empty() : index;
  }

  private boolean rateDescribed() {
    return description.map(d -> d.time().rateHz().isPresent()).orElse(false);
  }

  private static void refuseTwoMeanings(
      OptionalInt time, List<PlatePlan> plates, Head head, Notebook notes) {
    Set<Integer> used = new HashSet<>();
    IntStream.concat(time.stream(), plates.stream().flatMap(PlatePlan::wanted).mapToInt(i -> i))
        .filter(i -> !used.add(i))
        .distinct()
        .mapToObj(i -> head.columns().get(i).full())
        .forEach(
            name ->
                notes.problem(
                    new Place(notes.file(), head.headerLine(), Optional.of(name)),
                    Reading.TWO_MEANINGS,
                    Argument.text(name)));
  }

  private static OptionalInt ofKind(Head head, Role.Kind kind) {
    return IntStream.range(0, head.columns().size())
        .filter(i -> Role.of(head.columns().get(i)).kind() == kind)
        .findFirst();
  }

  private boolean columnsUndescribed() {
    return description.stream()
        .flatMap(d -> d.plates().stream())
        .allMatch(p -> p.columns().isEmpty() && p.sensors().isEmpty());
  }

  private Optional<PlatePlan> described(
      PlateLayout layout, List<PlatePlan> named, Head head, Notebook notes) {
    if (layout.columns().isEmpty() && layout.sensors().isEmpty()) {
      return byName(layout, named, head, notes);
    }
    Map<Channel, Integer> columns = new EnumMap<>(Channel.class);
    new TreeMap<>(layout.columns())
        .forEach(
            (channel, name) -> find(name, head, notes).ifPresent(i -> columns.put(channel, i)));
    Map<String, Integer> sensors = new LinkedHashMap<>();
    layout
        .sensors()
        .map(Planner::columnNames)
        .orElse(List.of())
        .forEach(name -> find(name, head, notes).ifPresent(i -> sensors.put(name, i)));
    wholeWeight(layout, head, sensors.values()).ifPresent(i -> columns.put(Channel.FORCE_Z, i));
    return Optional.of(new PlatePlan(layout, columns, sensors, Set.of()));
  }

  /** The one column that says what a lone platform of load cells carries in all. */
  private OptionalInt wholeWeight(PlateLayout layout, Head head, Collection<Integer> cells) {
    boolean alone = description.map(d -> d.plates().size() == 1).orElse(false);
    boolean sought =
        alone
            && layout.columns().isEmpty()
            && layout.sensors().orElse(null) instanceof Sensors.LoadCells;
    int vertical = description.flatMap(PlateDescription::axes).map(a -> a.up().axis()).orElse(2);
    int[] found =
        IntStream.range(0, sought ? head.columns().size() : 0)
            .filter(i -> !cells.contains(i))
            .filter(i -> Together.cells(head.columns().get(i), vertical))
            .filter(i -> readable(head.columns().get(i)))
            .toArray();
    return found.length == 1 ? OptionalInt.of(found[0]) : OptionalInt.empty();
  }

  private static boolean readable(ColumnName column) {
    return column.unit().isEmpty() || column.unit().flatMap(ForceUnit::named).isPresent();
  }

  /** A plate described without columns is the one of its name, or the only one. */
  private static Optional<PlatePlan> byName(
      PlateLayout layout, List<PlatePlan> named, Head head, Notebook notes) {
    Optional<PlatePlan> found =
        named.size() == 1
            ? Optional.of(named.get(0))
            : named.stream().filter(p -> p.name().equals(layout.name())).findFirst();
    if (found.isEmpty()) {
      String known = named.stream().map(PlatePlan::name).collect(Collectors.joining(", "));
      notes.problem(
          Place.of(notes.file()),
          known.isEmpty() ? Reading.NO_PLATE_NAMES : Reading.NO_SUCH_PLATE,
          Argument.text(layout.name()),
          Argument.text(known.isEmpty() ? names(head) : known));
    }
    return found.map(p -> new PlatePlan(layout, p.columns(), Map.of(), p.open()));
  }

  private static Collection<String> columnNames(Sensors sensors) {
    if (sensors instanceof Sensors.LoadCells cells) {
      return cells.cells().stream().map(Sensors.LoadCell::column).toList();
    }
    return ((Sensors.EightChannels) sensors).columns().values();
  }

  /** The one column of a name; a problem where there is none, or more than one. */
  private static OptionalInt find(String name, Head head, Notebook notes) {
    int[] found =
        IntStream.range(0, head.columns().size())
            .filter(i -> head.columns().get(i).isCalled(name))
            .toArray();
    if (found.length == 1) {
      return OptionalInt.of(found[0]);
    }
    if (names(head).isEmpty()) {
      noNames(head, notes);
      return OptionalInt.empty();
    }
    Place place = new Place(notes.file(), head.headerLine(), Optional.of(name));
    notes.problem(
        place,
        found.length == 0 ? Reading.NO_COLUMN : Reading.TWICE,
        Argument.text(name),
        Argument.text(names(head)));
    return OptionalInt.empty();
  }

  /** Said once, and not of each name that is sought. */
  private static void noNames(Head head, Notebook notes) {
    if (!notes.has(Reading.NO_NAMES)) {
      notes.problem(Reading.NO_NAMES, Argument.count(head.columns().size()));
    }
  }

  /** The names a problem lists; numbers where the table has none. */
  static String names(Head head) {
    return head.columns().stream()
        .map(ColumnName::full)
        .filter(n -> !n.isEmpty())
        .limit(40)
        .collect(Collectors.joining(", "));
  }
}
