package caryatid.uncertainty;

/**
 * One source of uncertainty. Two values that carry an equal source share it, and so are correlated
 * through it.
 *
 * @param cause what kind of source it is
 * @param of what distinguishes it from other sources of its kind, for example the landmark and
 *     plane marked
 */
public record Source(Cause cause, String of) {}
