package caryatid.sheet;

import java.util.Optional;

/**
 * How the prosthetic knee was set during the stand.
 *
 * @param locked whether it was locked
 * @param mode the mode it was in, in the clinician's words
 */
public record KneeSetting(boolean locked, Optional<String> mode) {}
