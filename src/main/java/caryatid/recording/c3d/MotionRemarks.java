package caryatid.recording.c3d;

import caryatid.geometry.Direction;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.List;
import java.util.Optional;

/** What is remarkable about a file's plates and was read all the same. */
final class MotionRemarks {
  private MotionRemarks() {}

  /**
   * The remarks.
   *
   * @param up where up is, if that is known
   */
  static StageMessages of(
      C3dFile file, List<MotionPlate> plates, Optional<Direction> up, String name) throws C3dFault {
    StageMessages remarks = StageMessages.none(name);
    for (MotionPlate plate : plates) {
      Argument called = Argument.text(plate.name());
      if (plate.origin(up).filter(MotionPlate.Origin::reversed).isPresent()) {
        remarks = remarks.withRemark(RecordingRemark.MOTION_ORIGIN, called);
      }
      if (up.filter(plate::upsideDown).isPresent()) {
        remarks = remarks.withRemark(RecordingRemark.MOTION_UPSIDE_DOWN, called);
      }
    }
    return remarks.and(unloaded(file, name));
  }

  private static StageMessages unloaded(C3dFile file, String name) throws C3dFault {
    StageMessages nothing = StageMessages.none(name);
    List<Double> zero = file.parameters().numbers("FORCE_PLATFORM:ZERO");
    boolean stretch = zero.size() == 2 && zero.get(1) > 0;
    return stretch
        ? nothing.withRemark(
            RecordingRemark.MOTION_ZERO,
            Argument.count(Math.round(zero.get(0))),
            Argument.count(Math.round(zero.get(1))))
        : nothing;
  }
}
