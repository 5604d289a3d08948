package caryatid.recording.model;

/**
 * Horizontal force on the person, in the person's frame.
 *
 * @param rightN to the person's right, N
 * @param anteriorN anterior, N
 */
public record Horizontal(Samples rightN, Samples anteriorN) {}
