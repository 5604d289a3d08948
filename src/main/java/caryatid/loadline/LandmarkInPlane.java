package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;

/**
 * A landmark of a leg, seen in one plane: what an offset, its target and its moment are measured
 * from. Equal where all three are.
 *
 * @param plane in which plane
 * @param side the leg
 * @param landmark the landmark's name, unique on its side
 */
public record LandmarkInPlane(Plane plane, Side side, String landmark) {}
