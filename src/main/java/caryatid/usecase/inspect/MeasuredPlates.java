package caryatid.usecase.inspect;

import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.Extent;
import caryatid.usecase.inspect.PlateMeasures.Applied;
import caryatid.usecase.inspect.PlateMeasures.Edge;
import caryatid.usecase.inspect.PlateMeasures.Fault;
import caryatid.usecase.inspect.PlateMeasures.SideOfZero;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Descriptions with edges and lines as they were typed, and what is wrong with those. */
final class MeasuredPlates {
  /** What the descriptions' reader takes, mm. */
  private static final double FARTHEST_MM = 10_000;

  private static final double LEAST_CERTAIN_MM = 100;

  private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?");

  private final Map<String, String> fields;

  /**
   * @param fields what was typed, by the names of the fields of {@link PlateMeasures}
   */
  MeasuredPlates(Map<String, String> fields) {
    this.fields = fields;
  }

  /** A description with these edges and lines in the place of its own. */
  Applied of(PlateDescription given) {
    Map<String, Fault> faults = new LinkedHashMap<>();
    List<PlateLayout> plates = new ArrayList<>();
    for (PlateLayout plate : given.plates()) {
      Optional<Extent> size = extent(plates.size() + 1, faults);
      if (size.isPresent()
          && plates.stream().flatMap(p -> p.size().stream()).anyMatch(size.get()::overlaps)) {
        faults.put(Edge.LEFT.field(plates.size() + 1), Fault.PLATES_OVERLAP);
      }
      plates.add(sized(plate, size));
    }
    List<MeasuringLine> lines = lines(faults);
    return new Applied(faults.isEmpty() ? with(given, plates, lines) : given, faults);
  }

  private static PlateDescription with(
      PlateDescription given, List<PlateLayout> plates, List<MeasuringLine> lines) {
    return new PlateDescription(
        given.name(),
        given.layout(),
        given.time(),
        given.axes(),
        given.forceIs(),
        plates,
        lines,
        given.accuracy(),
        given.removeUnloadedOffset());
  }

  private static PlateLayout sized(PlateLayout plate, Optional<Extent> size) {
    return new PlateLayout(
        plate.name(),
        plate.columns(),
        plate.copUnit(),
        plate.forceUnit(),
        plate.momentUnit(),
        size,
        plate.trueOrigin(),
        plate.exportOrigin(),
        plate.sensors(),
        plate.measures());
  }

  private Optional<String> typed(String name) {
    return Optional.ofNullable(fields.get(name)).map(String::strip).filter(t -> !t.isEmpty());
  }

  /** All four edges, or none. */
  private Optional<Extent> extent(int plate, Map<String, Fault> faults) {
    Map<Edge, Double> edges = new EnumMap<>(Edge.class);
    if (List.of(Edge.values()).stream().allMatch(edge -> typed(edge.field(plate)).isEmpty())) {
      return Optional.empty();
    }
    for (Edge edge : Edge.values()) {
      SideOfZero usual = edge.sides().get(0);
      SideOfZero side = typed(edge.field(plate) + "-side").flatMap(SideOfZero::of).orElse(usual);
      number(edge.field(plate), FARTHEST_MM, faults)
          .ifPresent(mm -> edges.put(edge, side.sign * mm));
    }
    if (edges.size() < Edge.values().length) {
      return Optional.empty();
    }
    ordered(edges, plate, Edge.LEFT, Edge.RIGHT, faults);
    ordered(edges, plate, Edge.REAR, Edge.FRONT, faults);
    return faults.isEmpty()
        ? Optional.of(
            new Extent(
                edges.get(Edge.LEFT),
                edges.get(Edge.RIGHT),
                edges.get(Edge.REAR),
                edges.get(Edge.FRONT)))
        : Optional.empty();
  }

  private static void ordered(
      Map<Edge, Double> edges, int plate, Edge lower, Edge upper, Map<String, Fault> faults) {
    if (!(edges.get(upper) > edges.get(lower))) {
      faults.put(upper.field(plate), Fault.EDGES_SWAPPED);
    }
  }

  private Optional<Double> number(String name, double most, Map<String, Fault> faults) {
    Optional<String> typed = typed(name);
    if (typed.isEmpty()) {
      faults.put(name, Fault.MISSING);
      return Optional.empty();
    }
    if (!NUMBER.matcher(typed.get()).matches()) {
      faults.put(name, Fault.NO_NUMBER);
      return Optional.empty();
    }
    double number = Double.parseDouble(typed.get());
    if (number > most) {
      faults.put(name, Fault.OUT_OF_RANGE);
      return Optional.empty();
    }
    return Optional.of(number);
  }

  private List<MeasuringLine> lines(Map<String, Fault> faults) {
    List<MeasuringLine> lines = new ArrayList<>();
    for (int i = 1; i <= PlateMeasures.MOST_LINES; i++) {
      String row = PlateMeasures.line(i);
      if (typed(row + "mm").isPresent()) {
        line(row, faults)
            .ifPresent(
                line -> {
                  if (lines.stream().anyMatch(other -> other.name().equals(line.name()))) {
                    faults.put(row + "name", Fault.LINE_TWICE);
                  }
                  lines.add(line);
                });
      }
    }
    return lines;
  }

  private Optional<MeasuringLine> line(String row, Map<String, Fault> faults) {
    SideOfZero side = typed(row + "side").flatMap(SideOfZero::of).orElse(SideOfZero.BEHIND);
    Optional<Double> mm = number(row + "mm", FARTHEST_MM, faults);
    Optional<Double> registration = number(row + "registration", LEAST_CERTAIN_MM, faults);
    Optional<String> name = typed(row + "name");
    if (name.isEmpty()) {
      faults.put(row + "name", Fault.MISSING);
    }
    if (mm.isEmpty() || registration.isEmpty() || name.isEmpty()) {
      return Optional.empty();
    }
    double positionMm = mm.get() == 0 ? 0 : side.sign * mm.get();
    Sense sense = side.isForward() ? Sense.FORWARD : Sense.RIGHTWARD;
    return Optional.of(new MeasuringLine(name.get(), sense, positionMm, registration.get()));
  }
}
