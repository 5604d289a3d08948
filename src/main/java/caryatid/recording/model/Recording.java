package caryatid.recording.model;

import caryatid.remark.Remark;
import java.util.List;

/**
 * What the plate exported, in millimetres, newtons, seconds and the person's frame.
 *
 * @param provenance the bytes it was read from
 * @param timeS time of each sample from the first, s, strictly increasing
 * @param rateHz sampling rate, Hz, above 0
 * @param plates at least one
 * @param remarks what the reader of a result should know about the file
 * @param markers what markers on the legs show
 */
public record Recording(
    Provenance provenance,
    Samples timeS,
    double rateHz,
    List<PlateTrack> plates,
    List<Remark> remarks,
    Markers markers)
    implements Sampled {
  /** A recording without markers. */
  public Recording(
      Provenance provenance,
      Samples timeS,
      double rateHz,
      List<PlateTrack> plates,
      List<Remark> remarks) {
    this(provenance, timeS, rateHz, plates, remarks, Markers.NONE);
  }

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

  @Override
  public String file() {
    return provenance.name();
  }

  @Override
  public int size() {
    return timeS.size();
  }

  @Override
  public double timeS(int sample) {
    return timeS.at(sample);
  }
}
