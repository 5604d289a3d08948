package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import java.util.Optional;

/**
 * A marked point, in the person's frame. Known in the sagittal plane, the frontal plane or both.
 *
 * @param name as the sheet calls it; unique on its side
 * @param kind what it is
 * @param side the leg it belongs to
 * @param rightMm its x; empty when it was not marked in the frontal plane
 * @param anteriorMm its y; empty when it was not marked in the sagittal plane
 * @param heightMm its z above the plate's top, mm
 * @param definition the axis or edge it stands for, in the clinician's words
 */
public record Landmark(
    String name,
    LandmarkKind kind,
    Side side,
    Optional<Coordinate> rightMm,
    Optional<Coordinate> anteriorMm,
    double heightMm,
    Optional<String> definition) {
  /**
   * @throws IllegalArgumentException if the height is not finite
   */
  public Landmark {
    if (!Double.isFinite(heightMm)) {
      throw new IllegalArgumentException("height: " + heightMm);
    }
  }

  /** The landmark as seen in a plane. */
  public LandmarkInPlane at(Plane plane) {
    return new LandmarkInPlane(plane, side, name);
  }

  /** The coordinate that counts in a plane, where it was marked. */
  public Optional<Coordinate> in(Plane plane) {
    return plane == Plane.SAGITTAL ? anteriorMm : rightMm;
  }
}
