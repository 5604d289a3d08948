package caryatid.sheet;

import java.util.Optional;

/**
 * A component of the prosthesis.
 *
 * @param what the kind of component, for example {@code foot}
 * @param name as the clinic calls it
 * @param serial its serial number
 */
public record Component(String what, String name, Optional<String> serial) {}
