package caryatid.recording.model;

import java.util.List;
import java.util.Optional;

/** Times and plates' tracks in the person's frame, as far as a stand can be sought in them. */
public interface Sampled {
  /** The file's name without the folders before it. */
  String file();

  /** How many samples there are, at least one. */
  int size();

  /**
   * Time of a sample from the first, s; greater with each sample.
   *
   * @throws IndexOutOfBoundsException if there is no such sample
   */
  double timeS(int sample);

  /** Sampling rate, Hz, above 0. */
  double rateHz();

  /** What each plate recorded; at least one. */
  List<PlateTrack> plates();

  /** What markers on the legs show. */
  Markers markers();

  /** The plate of a name. */
  default Optional<PlateTrack> plate(String name) {
    return plates().stream().filter(p -> p.plate().equals(name)).findFirst();
  }
}
