package caryatid.standing;

import java.util.Collection;
import java.util.Optional;

/**
 * The stretch that somebody set by hand for one recording.
 *
 * @param recording the recording's file name, without folders
 * @param stretch which part of it is used
 */
public record NamedStretch(String recording, Stretch stretch) {
  /** The stretch of a recording, if one was set for it. */
  public static Optional<Stretch> of(String recording, Collection<NamedStretch> set) {
    return set.stream()
        .filter(one -> one.recording().equals(recording))
        .map(NamedStretch::stretch)
        .findFirst();
  }
}
