package caryatid.recording.model;

import caryatid.geometry.Side;
import java.util.List;
import java.util.Map;

/**
 * What markers on the legs show.
 *
 * @param tracks the markers whose names say a side and a place of a leg
 * @param feet the plate on which heel and toe of a side were, by its name; a side is missing where
 *     its foot was on no plate, on two, or has no markers
 */
public record Markers(List<MarkerTrack> tracks, Map<Side, String> feet) {
  /** A recording without markers. */
  public static final Markers NONE = new Markers(List.of(), Map.of());

  public Markers {
    tracks = List.copyOf(tracks);
    feet = Map.copyOf(feet);
  }
}
