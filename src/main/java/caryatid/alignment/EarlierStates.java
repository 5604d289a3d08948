package caryatid.alignment;

import caryatid.recording.model.Provenance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The earlier states that a check was given: one input, kept with the result.
 *
 * @param file the input's bytes
 * @param states at least one
 */
public record EarlierStates(Provenance file, List<EarlierState> states) {
  /**
   * @throws IllegalArgumentException if there is none
   */
  public EarlierStates {
    if (states.isEmpty()) {
      throw new IllegalArgumentException("no earlier state");
    }
    states = List.copyOf(states);
  }

  /** The latest of those that drawings mark. */
  public Optional<EarlierState> marked() {
    return states.stream().filter(EarlierState::marked).max(Comparator.comparing(EarlierState::at));
  }
}
