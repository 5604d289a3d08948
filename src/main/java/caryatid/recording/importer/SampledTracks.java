package caryatid.recording.importer;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Sampled;
import caryatid.recording.time.Timeline;
import java.util.List;
import java.util.Objects;

/**
 * TrackBuilder whose bytes were not digested: enough to seek a stand in, not to keep a result of.
 */
record SampledTracks(String file, Timeline timeline, List<PlateTrack> plates) implements Sampled {
  SampledTracks {
    file = Provenance.fileName(file);
    plates = List.copyOf(plates);
  }

  @Override
  public int size() {
    return timeline.size();
  }

  @Override
  public double timeS(int sample) {
    return Objects.checkIndex(sample, size()) / rateHz();
  }

  @Override
  public double rateHz() {
    return timeline.rateHz();
  }
}
