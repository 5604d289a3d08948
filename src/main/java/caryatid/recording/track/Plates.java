package caryatid.recording.track;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.table.StageFindings;
import java.util.List;

/**
 * The last stage: what each plate recorded.
 *
 * @param tracks one a plate, in the plates' order
 * @param findings what was found on the way
 */
public record Plates(List<PlateTrack> tracks, StageFindings findings) {
  public Plates {
    tracks = List.copyOf(tracks);
  }
}
