package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.List;
import java.util.Optional;

/**
 * The unit of length: as {@code POINT:UNITS} states it, if the plates then have a plate's size.
 * Where it is missing or cut, the one of mm and m that gives them one.
 */
final class LengthFinder {
  /** Sides that plates have, mm (common practice, no source). */
  private static final double SHORTEST_MM = 150;

  private static final double LONGEST_MM = 3000;

  private final C3dParameters parameters;
  private StageMessages messages;

  LengthFinder(C3dParameters parameters, String file) {
    this.parameters = parameters;
    this.messages = StageMessages.none(file);
  }

  StageMessages messages() {
    return messages;
  }

  LengthUnit find() throws C3dFault {
    String text = parameters.texts("POINT:UNITS").stream().findFirst().orElse("");
    Optional<LengthUnit> stated = LengthUnit.named(text);
    if (stated.isPresent() && fits(stated.get())) {
      return stated.get();
    }
    List<LengthUnit> fitting = List.of(LengthUnit.MM, LengthUnit.M);
    for (LengthUnit unit : fitting) {
      if (fits(unit)) {
        messages =
            messages.withRemark(
                RecordingRemark.MOTION_LENGTH, Argument.text(text), Argument.term(unit));
        return unit;
      }
    }
    throw new C3dFault(ImportProblem.MOTION_LENGTH, Argument.text(text));
  }

  private boolean fits(LengthUnit unit) throws C3dFault {
    for (int number = 1; number <= PlateSpec.count(parameters); number++) {
      List<LabVector> corners = PlateSpec.corners(parameters, number);
      double one = corners.get(0).minus(corners.get(1)).length() * unit.mm();
      double other = corners.get(1).minus(corners.get(2)).length() * unit.mm();
      if (Math.min(one, other) < SHORTEST_MM || Math.max(one, other) > LONGEST_MM) {
        return false;
      }
    }
    return true;
  }
}
