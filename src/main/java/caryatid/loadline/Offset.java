package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.standing.LineOf;
import caryatid.uncertainty.Estimate;

/**
 * How far a load line runs from a landmark.
 *
 * @param plane in which plane
 * @param side the leg of the landmark
 * @param landmark the landmark's name
 * @param of whose load line
 * @param kind how the line was drawn
 * @param mm the offset, mm: positive anterior (sagittal) or lateral on the landmark's side
 *     (frontal)
 */
public record Offset(
    Plane plane, Side side, String landmark, LineOf of, LoadLineMethod kind, Estimate mm) {}
