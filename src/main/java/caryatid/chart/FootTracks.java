package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.geometry.Side;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.sheet.ProstheticSide;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Stance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which of a recording's plates shows which foot. */
final class FootTracks {
  private FootTracks() {}

  /** A foot's or the whole body's course on its plate. */
  record Track(LoadLineOwner of, PlateTrack plate) {}

  static List<Track> of(Stand stand, Recording recording) {
    List<Track> tracks = new ArrayList<>();
    Stance stance = stand.trial().stance();
    if (stance instanceof Stance.PlatePerFoot perFoot) {
      add(tracks, recording, LoadLineOwner.LEFT_FOOT, Optional.of(perFoot.leftPlate()));
      add(tracks, recording, LoadLineOwner.RIGHT_FOOT, Optional.of(perFoot.rightPlate()));
    } else if (stance instanceof Stance.ProstheticFootOnPlate alone) {
      ProstheticSide side = stand.trial().side();
      add(tracks, recording, LoadLineOwner.foot(side.sides().get(0)), alone.plate());
    } else if (stance instanceof Stance.BothFeetOnOnePlate both) {
      add(tracks, recording, LoadLineOwner.WHOLE_BODY, both.plate());
    }
    return tracks;
  }

  /** A foot's track; the whole body's where only that was recorded. */
  static Track of(Stand stand, Recording recording, Side side) {
    List<Track> tracks = of(stand, recording);
    return tracks.stream()
        .filter(track -> track.of() == LoadLineOwner.foot(side))
        .findFirst()
        .orElse(tracks.get(0));
  }

  private static void add(
      List<Track> tracks, Recording recording, LoadLineOwner of, Optional<String> plate) {
    plate
        .map(recording::plate)
        .orElse(Optional.of(recording.plates().get(0)))
        .ifPresent(track -> tracks.add(new Track(of, track)));
  }
}
