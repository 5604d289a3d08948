package caryatid.usecase.inspect;

import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.Extent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A plate's edges and the lines that one measures from, as they are typed: distances from the
 * plate's zero in mm, without a sign, each with the side it lies on.
 *
 * @param fields what was typed, by the names of the fields; numbers with a decimal point
 */
public record PlateMeasures(Map<String, String> fields) {
  /** Rows of lines at the most. */
  public static final int MOST_LINES = 12;

  /** What the descriptions' reader takes, mm. */
  private static final double FARTHEST_MM = 10_000;

  private static final double LEAST_CERTAIN_MM = 100;

  private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?");

  public PlateMeasures {
    fields = Map.copyOf(fields);
  }

  /** An edge of a plate, with the side of the zero on which it usually lies. */
  public enum Edge {
    LEFT,
    RIGHT,
    REAR,
    FRONT;

    /** The sides of the zero that it may lie on, the usual one first. */
    public List<SideOfZero> sides() {
      return switch (this) {
        case LEFT -> List.of(SideOfZero.LEFT, SideOfZero.RIGHT);
        case RIGHT -> List.of(SideOfZero.RIGHT, SideOfZero.LEFT);
        case REAR -> List.of(SideOfZero.BEHIND, SideOfZero.FRONT);
        case FRONT -> List.of(SideOfZero.FRONT, SideOfZero.BEHIND);
      };
    }

    /** The name of its field. */
    public String field(int plate) {
      return "plate[" + plate + "]." + name().toLowerCase(Locale.ROOT);
    }
  }

  /** On which side of the plate's zero something lies. */
  public enum SideOfZero {
    FRONT(1),
    BEHIND(-1),
    RIGHT(1),
    LEFT(-1);

    private final int sign;

    SideOfZero(int sign) {
      this.sign = sign;
    }

    /** What a field holds. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    private static Optional<SideOfZero> of(String code) {
      return List.of(values()).stream().filter(side -> side.code().equals(code)).findFirst();
    }

    private boolean isForward() {
      return this == FRONT || this == BEHIND;
    }
  }

  /** What is wrong with a field. */
  public enum Fault {
    MISSING,
    NO_NUMBER,
    OUT_OF_RANGE,
    EDGES_SWAPPED,
    LINE_TWICE
  }

  /**
   * A description with what was typed.
   *
   * @param description the one it was given where something is wrong
   * @param faults what is wrong, by the names of the fields
   */
  public record Applied(PlateDescription description, Map<String, Fault> faults) {
    public Applied {
      faults = Map.copyOf(faults);
    }
  }

  /** How the names of a line's fields begin. */
  public static String line(int number) {
    return "line[" + number + "].";
  }

  /** The fields of a description. */
  static PlateMeasures of(PlateDescription description) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < description.plates().size(); i++) {
      int number = i + 1;
      description.plates().get(i).size().ifPresent(size -> edges(fields, number, size));
    }
    for (int i = 0; i < description.lines().size(); i++) {
      MeasuringLine line = description.lines().get(i);
      String row = line(i + 1);
      boolean minus = line.positionMm() < 0;
      boolean forward = line.sense() == Sense.FORWARD;
      SideOfZero side =
          forward
              ? minus ? SideOfZero.BEHIND : SideOfZero.FRONT
              : minus ? SideOfZero.LEFT : SideOfZero.RIGHT;
      fields.put(row + "name", line.name());
      fields.put(row + "mm", number(line.positionMm()));
      fields.put(row + "side", side.code());
      fields.put(row + "registration", number(line.registrationMm()));
    }
    return new PlateMeasures(fields);
  }

  private static void edges(Map<String, String> fields, int plate, Extent size) {
    Map<Edge, Double> edges = new EnumMap<>(Edge.class);
    edges.put(Edge.LEFT, size.leftMm());
    edges.put(Edge.RIGHT, size.rightMm());
    edges.put(Edge.REAR, size.rearMm());
    edges.put(Edge.FRONT, size.frontMm());
    edges.forEach(
        (edge, mm) -> {
          fields.put(edge.field(plate), number(mm));
          edge.sides().stream()
              .filter(side -> side.sign * mm >= 0)
              .findFirst()
              .ifPresent(side -> fields.put(edge.field(plate) + "-side", side.code()));
        });
  }

  private static String number(double mm) {
    return BigDecimal.valueOf(Math.abs(mm)).stripTrailingZeros().toPlainString();
  }

  /** A description with these edges and lines in the place of its own. */
  Applied to(PlateDescription given) {
    Map<String, Fault> faults = new LinkedHashMap<>();
    List<PlateLayout> plates = new ArrayList<>();
    for (PlateLayout plate : given.plates()) {
      plates.add(sized(plate, extent(plates.size() + 1, faults)));
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
    for (int i = 1; i <= MOST_LINES; i++) {
      String row = line(i);
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
