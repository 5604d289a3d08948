package caryatid.recording.model;

import caryatid.geometry.Axis;
import java.util.Map;
import java.util.Optional;

/**
 * One plate of an export, as far as a description states it.
 *
 * @param name the plate's name
 * @param columns which column holds which channel
 * @param copUnit unit of the exported centre of pressure
 * @param forceUnit unit of forces
 * @param momentUnit unit of moments
 * @param size the plate's extent
 * @param trueOrigin where the zero-moment origin lies
 * @param exportOrigin where the export's zero for this plate, a point of its top surface, lies in
 *     the person's frame
 * @param sensors raw sensors, where the plate exports neither a centre of pressure nor moments
 * @param measures in which horizontal directions it tells where the load is
 */
public record PlateLayout(
    String name,
    Map<Channel, String> columns,
    Optional<LengthUnit> copUnit,
    Optional<ForceUnit> forceUnit,
    Optional<MomentUnit> momentUnit,
    Optional<Extent> size,
    Optional<TrueOrigin> trueOrigin,
    Optional<ExportOrigin> exportOrigin,
    Optional<Sensors> sensors,
    MeasuredDirections measures) {
  public PlateLayout {
    columns = Map.copyOf(columns);
  }

  /** The same plate without its edges. */
  PlateLayout withoutEdges() {
    return new PlateLayout(
        name,
        columns,
        copUnit,
        forceUnit,
        momentUnit,
        Optional.empty(),
        trueOrigin,
        exportOrigin,
        sensors,
        measures);
  }

  /**
   * A plate's edges in the person's frame, mm.
   *
   * @param leftMm x of the left edge
   * @param rightMm x of the right edge, above left
   * @param rearMm y of the rear edge
   * @param frontMm y of the front edge, above rear
   */
  public record Extent(double leftMm, double rightMm, double rearMm, double frontMm) {
    private static final double MOST_OVERLAP_MM = 20;

    /**
     * @throws IllegalArgumentException if an edge is on the wrong side of the opposite one
     */
    public Extent {
      if (!(rightMm > leftMm) || !(frontMm > rearMm)) {
        throw new IllegalArgumentException(
            "edges " + leftMm + " " + rightMm + " " + rearMm + " " + frontMm);
      }
    }

    /**
     * Whether two plates cover the same ground by more than 20 mm in both directions, which no two
     * plates do (common practice, no source): measuring their edges is less wrong than that.
     */
    public boolean overlaps(Extent other) {
      double acrossMm = Math.min(rightMm, other.rightMm) - Math.max(leftMm, other.leftMm);
      double alongMm = Math.min(frontMm, other.frontMm) - Math.max(rearMm, other.rearMm);
      return Math.min(acrossMm, alongMm) > MOST_OVERLAP_MM;
    }
  }

  /**
   * Zero-moment origin in the export's axes, mm from the export's zero for this plate, a point of
   * its top surface, usually the centre. It lies below the surface: z is negative where the
   * export's z points up and positive where it points down. (C3D's ORIGIN is the same vector
   * reversed.)
   */
  public record TrueOrigin(double xMm, double yMm, double zMm) {
    /**
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public TrueOrigin {
      if (!Double.isFinite(xMm + yMm + zMm)) {
        throw new IllegalArgumentException("true origin " + xMm + ", " + yMm + ", " + zMm);
      }
    }

    /** The coordinate along one of the export's axes, mm. */
    public double mm(Axis axis) {
      return switch (axis) {
        case X -> xMm;
        case Y -> yMm;
        case Z -> zMm;
      };
    }
  }

  /** Where the export's zero for a plate lies in the person's frame, mm. */
  public record ExportOrigin(double rightMm, double anteriorMm) {
    /**
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public ExportOrigin {
      if (!Double.isFinite(rightMm + anteriorMm)) {
        throw new IllegalArgumentException("export origin " + rightMm + ", " + anteriorMm);
      }
    }
  }
}
