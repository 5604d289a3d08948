package caryatid.usecase.inspect;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sampled;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tries to find a stand in a recording before the stance is known. */
final class StandTrial {
  private StandTrial() {}

  /**
   * Why no plate's recording holds a quiet stand, whichever foot stood there; empty if one does.
   */
  static List<Problem> problems(Sampled recording) {
    List<Problem> first = List.of();
    for (PlateTrack track : recording.plates()) {
      Optional<String> plate = Optional.of(track.plate());
      if (problems(recording, new Stance.BothFeetOnOnePlate(plate)).isEmpty()) {
        return List.of();
      }
      List<Problem> one = problems(recording, new Stance.ProstheticFootOnPlate(plate));
      if (one.isEmpty()) {
        return List.of();
      }
      first = first.isEmpty() ? one : first;
    }
    return first;
  }

  private static List<Problem> problems(Sampled recording, Stance stance) {
    try {
      StandAnalysis.seek(recording, stance);
      return List.of();
    } catch (BadInput e) {
      return e.problems();
    }
  }

  /**
   * Whether an export holds a quiet stand under a description, whose open directions are assumed.
   */
  static boolean passes(NamedBytes export, PlateDescription description) {
    for (Axes axes : description.axes().map(List::of).orElse(ASSUMED)) {
      Inspection seen = Importer.inspect(export, Optional.of(assumed(description, axes)));
      if (seen.sampled().filter(read -> problems(read).isEmpty()).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** z up and y up: no limit depends on where right and anterior are. */
  private static final List<Axes> ASSUMED =
      List.of(
          new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.PLUS_Z),
          new Axes(Direction.PLUS_Z, Direction.PLUS_X, Direction.PLUS_Y));

  private static PlateDescription assumed(PlateDescription description, Axes axes) {
    List<PlateLayout> plates = new ArrayList<>();
    for (PlateLayout plate : description.plates()) {
      plates.add(
          new PlateLayout(
              plate.name(),
              plate.columns(),
              plate.copUnit(),
              plate.forceUnit(),
              plate.momentUnit(),
              plate.size(),
              plate.trueOrigin().or(() -> Optional.of(new PlateLayout.TrueOrigin(0, 0, 0))),
              plate.exportOrigin().or(() -> Optional.of(new PlateLayout.ExportOrigin(0, 0))),
              plate.sensors(),
              plate.measures()));
    }
    return description.with(Optional.of(axes), plates);
  }
}
