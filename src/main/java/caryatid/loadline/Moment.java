package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.uncertainty.Estimate;
import java.util.Optional;

/**
 * External moment of the ground reaction about a landmark, in one stand: how the next stand would
 * differ is not in its uncertainty.
 *
 * @param plane in which plane
 * @param side the leg
 * @param landmark the landmark's name
 * @param kind by which line
 * @param newtonMetres N m: sagittal positive when the line runs anterior of the landmark (at the
 *     knee it straightens it); frontal positive when it runs lateral
 * @param newtonMetresPerKg the same for each kilogram of body mass, N m/kg; empty where the mass is
 *     not known
 * @param effect what it does to the joint
 */
public record Moment(
    Plane plane,
    Side side,
    String landmark,
    LoadLineMethod kind,
    Estimate newtonMetres,
    Optional<Estimate> newtonMetresPerKg,
    MomentEffect effect) {}
