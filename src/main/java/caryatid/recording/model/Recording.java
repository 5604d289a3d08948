package caryatid.recording.model;

import caryatid.remark.Remark;
import java.util.List;
import java.util.Optional;

/**
 * What the plate exported, in millimetres, newtons, seconds and the person's frame.
 *
 * @param provenance the bytes it was read from
 * @param timeS time of each sample from the first, s, strictly increasing
 * @param rateHz sampling rate, Hz, above 0
 * @param plates at least one
 * @param remarks what the reader of a result should know about the file
 */
public record Recording(
    Provenance provenance,
    Samples timeS,
    double rateHz,
    List<PlateTrack> plates,
    List<Remark> remarks) {
  /**
   * @throws IllegalArgumentException if there is no sample, no plate, or the rate is not positive
   */
  public Recording {
    if (!(rateHz > 0) || timeS.size() == 0 || plates.isEmpty()) {
      throw new IllegalArgumentException(
          "rate " + rateHz + " Hz, " + timeS.size() + " samples, " + plates.size() + " plates");
    }
    plates = List.copyOf(plates);
    remarks = List.copyOf(remarks);
  }

  /** The plate of a name. */
  public Optional<PlateTrack> plate(String name) {
    return plates.stream().filter(p -> p.plate().equals(name)).findFirst();
  }
}
