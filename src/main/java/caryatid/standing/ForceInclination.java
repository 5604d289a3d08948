package caryatid.standing;

import caryatid.uncertainty.Estimate;

/**
 * How the mean measured force leans from the vertical, as horizontal over vertical force.
 *
 * @param rightPerUp to the person's right
 * @param anteriorPerUp anterior
 */
public record ForceInclination(Estimate rightPerUp, Estimate anteriorPerUp) {}
