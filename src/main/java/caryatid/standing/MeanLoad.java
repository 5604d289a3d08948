package caryatid.standing;

import caryatid.geometry.Plane;
import caryatid.uncertainty.Estimate;
import java.util.Optional;

/**
 * The mean load over the quiet stretch, force-weighted, in the person's frame.
 *
 * @param of whose it is
 * @param copRightMm mean centre of pressure to the right of the origin, mm; empty where a plate
 *     measures fore and aft only
 * @param copAnteriorMm mean centre of pressure anterior to the origin, mm
 * @param upN mean vertical force, N; empty for a recording of the centre of pressure alone
 * @param lean of the mean force; empty without horizontal force
 */
public record MeanLoad(
    LoadLineOwner of,
    Optional<Estimate> copRightMm,
    Estimate copAnteriorMm,
    Optional<Estimate> upN,
    Optional<ForceInclination> lean) {
  /** The mean centre of pressure as it shows in a plane, mm; empty where it was not measured. */
  public Optional<Estimate> copMm(Plane plane) {
    return plane == Plane.SAGITTAL ? Optional.of(copAnteriorMm) : copRightMm;
  }
}
