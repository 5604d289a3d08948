package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
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
 */
public record LandmarkEntry(
    String name,
    LandmarkKind kind,
    Side side,
    Optional<Measured> forward,
    Optional<Measured> rightward,
    double upMm,
    Optional<String> definition) {

  /**
   * A distance from a line or from another landmark.
   *
   * @param mm the distance, mm; forward and to the person's right are positive
   * @param from name of the measuring line or, when {@code fromLandmark}, of the landmark; empty
   *     for the frame's origin
   * @param fromLandmark whether it was measured from another landmark
   * @param markingMm standard uncertainty of marking, mm, not negative
   */
  public record Measured(
      double mm, Optional<String> from, boolean fromLandmark, double markingMm) {}
}
