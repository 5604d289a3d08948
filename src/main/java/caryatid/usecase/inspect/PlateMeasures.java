package caryatid.usecase.inspect;

import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout.Extent;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A plate's edges and the lines that one measures from, as they are typed: distances from the
 * plate's zero in mm, without a sign, each with the side it lies on.
 *
 * @param fields what was typed, by the names of the fields; numbers with a decimal point
 */
public record PlateMeasures(Map<String, String> fields) {
  /** Rows of lines at the most. */
  public static final int MOST_LINES = 12;

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

    final int sign;

    SideOfZero(int sign) {
      this.sign = sign;
    }

    /** What a field holds. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<SideOfZero> of(String code) {
      return List.of(values()).stream().filter(side -> side.code().equals(code)).findFirst();
    }

    boolean isForward() {
      return this == FRONT || this == BEHIND;
    }
  }

  /** What is wrong with a field. */
  public enum Fault {
    MISSING,
    NO_NUMBER,
    OUT_OF_RANGE,
    EDGES_SWAPPED,
    PLATES_OVERLAP,
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
    return new MeasuredPlates(fields).of(given);
  }
}
