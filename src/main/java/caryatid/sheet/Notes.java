package caryatid.sheet;

import java.util.Optional;

/**
 * What the practitioner writes in addition to the numbers; an empty note becomes a line to fill in
 * by hand.
 *
 * @param lastChange what was changed before this stand, and the setting that resulted
 * @param conclusion one sentence
 * @param comfort comfort in the wearer's words
 * @param skin what the skin showed
 * @param reason why it is left, or changed
 * @param nextStep what comes next
 * @param practitioner initials or a code, never required
 * @param role the practitioner's role
 */
public record Notes(
    Optional<String> lastChange,
    Optional<String> conclusion,
    Optional<String> comfort,
    Optional<String> skin,
    Optional<String> reason,
    Optional<String> nextStep,
    Optional<String> practitioner,
    Optional<String> role) {}
