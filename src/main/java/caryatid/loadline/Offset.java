package caryatid.loadline;

import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;

/**
 * How far a load line runs from a landmark.
 *
 * @param at the landmark, and the plane it is seen in
 * @param of whose load line
 * @param kind how the line was drawn
 * @param mm the offset, mm: positive anterior (sagittal) or lateral on the landmark's side
 *     (frontal)
 */
public record Offset(LandmarkInPlane at, LoadLineOwner of, LoadLineMethod kind, Estimate mm)
    implements AtLandmark {
  /** Whether another stand's or state's offset is of the same line past the same landmark. */
  public boolean isSameAs(Offset other) {
    return at.equals(other.at) && of == other.of && kind == other.kind;
  }
}
