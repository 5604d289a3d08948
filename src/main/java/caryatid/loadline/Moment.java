package caryatid.loadline;

import caryatid.uncertainty.Estimate;
import java.util.Optional;

/**
 * External moment of the ground reaction about a landmark, in one stand: how the next stand would
 * differ is not in its uncertainty.
 *
 * @param at the landmark, and the plane it is seen in
 * @param kind by which line
 * @param newtonMetres N m: sagittal positive when the line runs anterior of the landmark (at the
 *     knee it straightens it); frontal positive when it runs lateral
 * @param newtonMetresPerKg the same for each kilogram of body mass, N m/kg; empty where the mass is
 *     not known
 * @param effect what it does to the joint
 */
public record Moment(
    LandmarkInPlane at,
    LoadLineMethod kind,
    Estimate newtonMetres,
    Optional<Estimate> newtonMetresPerKg,
    MomentEffect effect) {}
