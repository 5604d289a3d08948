package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sampled;
import caryatid.recording.model.UsableMask;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a recording shows of each foot and of the whole body, by the stance it was made in.
 *
 * @param all feet first, left before right; then the whole body
 * @param usable samples that every plate of the stance can use
 */
record StanceSignals(List<LoadSignals> all, UsableMask usable) {

  /** The signals of a recording. */
  static StanceSignals of(Sampled recording, Stance stance, List<Side> prosthetic) throws BadInput {
    if (stance instanceof Stance.PlatePerFoot feet) {
      return feet(track(recording, feet.leftPlate()), track(recording, feet.rightPlate()));
    }
    if (stance instanceof Stance.BothFeetOnOnePlate both) {
      return one(LoadLineOwner.WHOLE_BODY, track(recording, both.plate()));
    }
    Optional<String> plate = ((Stance.ProstheticFootOnPlate) stance).plate();
    if (prosthetic.size() != 1) {
      throw bad(recording, StandProblem.WHICH_FOOT);
    }
    return one(LoadLineOwner.foot(prosthetic.get(0)), track(recording, plate));
  }

  /** A stretch of them. */
  List<LoadSignals> cut(int from, int to) {
    return all.stream().map(signals -> signals.cut(from, to)).toList();
  }

  private static StanceSignals one(LoadLineOwner of, PlateTrack track) {
    return new StanceSignals(List.of(LoadSignals.of(of, track)), track.usable());
  }

  private static StanceSignals feet(PlateTrack left, PlateTrack right) {
    LoadSignals a = LoadSignals.of(LoadLineOwner.LEFT_FOOT, left);
    LoadSignals b = LoadSignals.of(LoadLineOwner.RIGHT_FOOT, right);
    List<LoadSignals> all = new ArrayList<>(List.of(a, b));
    if (a.hasForce && b.hasForce) {
      all.add(LoadSignals.both(a, b));
    }
    return new StanceSignals(List.copyOf(all), left.usable().and(right.usable()));
  }

  private static PlateTrack track(Sampled recording, Optional<String> plate) throws BadInput {
    if (plate.isPresent()) {
      return track(recording, plate.get());
    }
    if (recording.plates().size() > 1) {
      throw bad(recording, StandProblem.PLATE_NOT_NAMED, names(recording));
    }
    return recording.plates().get(0);
  }

  private static PlateTrack track(Sampled recording, String plate) throws BadInput {
    Optional<PlateTrack> track = recording.plate(plate);
    if (track.isEmpty()) {
      throw bad(recording, StandProblem.NO_SUCH_PLATE, Argument.text(plate), names(recording));
    }
    return track.get();
  }

  private static Argument names(Sampled recording) {
    return Argument.text(
        recording.plates().stream().map(PlateTrack::plate).collect(Collectors.joining(", ")));
  }

  private static BadInput bad(Sampled recording, StandProblem topic, Argument... arguments) {
    return new BadInput(Problem.at(Place.of(recording.file()), topic, arguments));
  }
}
