package caryatid.recording;

import java.util.List;

/**
 * The last stage: what each plate recorded.
 *
 * @param tracks one a plate, in the plates' order
 * @param findings what was found on the way
 */
record Plates(List<PlateTrack> tracks, Findings findings) {
  Plates {
    tracks = List.copyOf(tracks);
  }
}
