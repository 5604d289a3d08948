package caryatid.sheet;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.uncertainty.Contribution;
import java.util.List;
import java.util.Optional;

/**
 * A landmark as the clinician measured it.
 *
 * @param name as the sheet calls it; unique on its side
 * @param kind what it is
 * @param side the leg it belongs to
 * @param forward measured forward; empty when not marked in the sagittal plane
 * @param rightward measured to the person's right; empty when not marked in the frontal plane
 * @param upMm height above the plate's top, mm
 * @param definition the axis or edge it stands for
 * @param readAtS when it was read, s from the first sample of the state's first recording; empty
 *     where nobody noted it
 */
public record LandmarkEntry(
    String name,
    LandmarkKind kind,
    Side side,
    Optional<MeasuredDistance> forward,
    Optional<MeasuredDistance> rightward,
    double upMm,
    Optional<String> definition,
    List<Double> readAtS) {

  /**
   * @throws IllegalArgumentException if the height is not finite
   */
  public LandmarkEntry {
    if (!Double.isFinite(upMm)) {
      throw new IllegalArgumentException("height: " + upMm);
    }
    readAtS = List.copyOf(readAtS);
  }

  /** The same, read nobody knows when. */
  public LandmarkEntry(
      String name,
      LandmarkKind kind,
      Side side,
      Optional<MeasuredDistance> forward,
      Optional<MeasuredDistance> rightward,
      double upMm,
      Optional<String> definition) {
    this(name, kind, side, forward, rightward, upMm, definition, List.of());
  }

  /** This one in a later stand, in whose recording nobody read it. */
  LandmarkEntry readBefore() {
    return new LandmarkEntry(name, kind, side, forward, rightward, upMm, definition);
  }

  /** What was measured for a plane. */
  public Optional<MeasuredDistance> in(Plane plane) {
    return plane == Plane.SAGITTAL ? forward : rightward;
  }

  /** Whether it goes by a name on a side. */
  boolean is(String otherName, Side otherSide) {
    return name.equals(otherName) && side == otherSide;
  }

  /**
   * A distance from a line or from another landmark.
   *
   * @param mm the distance, mm; forward and to the person's right are positive
   * @param from name of the measuring line or, when {@code fromLandmark}, of the landmark on the
   *     same side; empty for the frame's origin
   * @param fromLandmark whether it was measured from another landmark
   * @param markingMm standard uncertainty of marking, mm, not negative
   * @param markingDegrees its degrees of freedom, above 0
   */
  public record MeasuredDistance(
      double mm,
      Optional<String> from,
      boolean fromLandmark,
      double markingMm,
      double markingDegrees) {
    /**
     * @throws IllegalArgumentException if a number is out of its range or a landmark has no name
     */
    public MeasuredDistance {
      if (!Double.isFinite(mm) || !(markingMm >= 0) || !Double.isFinite(markingMm)) {
        throw new IllegalArgumentException(mm + " mm +/- " + markingMm + " mm");
      }
      if (!(markingDegrees > 0)) {
        throw new IllegalArgumentException("degrees of freedom: " + markingDegrees);
      }
      if (fromLandmark && from.isEmpty()) {
        throw new IllegalArgumentException("measured from a landmark without a name");
      }
    }

    /** A distance whose marking is stated and was not measured. */
    public MeasuredDistance(
        double mm, Optional<String> from, boolean fromLandmark, double markingMm) {
      this(mm, from, fromLandmark, markingMm, Contribution.STATED_DEGREES);
    }
  }
}
