package caryatid.standing;

import caryatid.uncertainty.Estimate;
import java.util.Optional;

/**
 * The mean load over the quiet stretch, force-weighted, in the person's frame.
 *
 * @param of whose it is
 * @param copRightMm mean centre of pressure to the right of the origin, mm
 * @param copAnteriorMm mean centre of pressure anterior to the origin, mm
 * @param upN mean vertical force, N; empty for a recording of the centre of pressure alone
 * @param lean of the mean force; empty without horizontal force
 */
public record MeanLoad(
    LoadLineOwner of,
    Estimate copRightMm,
    Estimate copAnteriorMm,
    Optional<Estimate> upN,
    Optional<ForceInclination> lean) {}
