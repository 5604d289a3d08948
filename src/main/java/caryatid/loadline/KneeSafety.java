package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LineOf;
import java.util.ArrayList;
import java.util.List;

/**
 * Warns where the load line runs behind a prosthetic knee's axis, or may: the ground reaction then
 * bends the knee, whatever a target says.
 */
public final class KneeSafety {
  private static final double COVERAGE = 0.95;

  private KneeSafety() {}

  /**
   * The warnings, by the foot's own line where it is known, else by the whole body's.
   *
   * @param offsets of one alignment state or stand
   * @param landmarks the landmarks they are measured from
   * @param sides sides that have a prosthetic knee
   */
  public static List<Remark> of(List<Offset> offsets, List<Landmark> landmarks, List<Side> sides) {
    List<Remark> warnings = new ArrayList<>();
    for (Offset offset : offsets) {
      boolean prosthetic = sides.contains(offset.side()) && isKnee(offset, landmarks);
      if (prosthetic && counts(offset) && (isOwn(offset) || !ownKnown(offset, offsets))) {
        warn(offset, warnings);
      }
    }
    return List.copyOf(warnings);
  }

  private static boolean counts(Offset offset) {
    return offset.plane() == Plane.SAGITTAL && offset.kind() == LineKind.VERTICAL;
  }

  private static boolean isOwn(Offset offset) {
    return offset.of() == LineOf.foot(offset.side());
  }

  private static boolean ownKnown(Offset offset, List<Offset> offsets) {
    return offsets.stream().anyMatch(o -> counts(o) && isOwn(o) && o.side() == offset.side());
  }

  private static boolean isKnee(Offset offset, List<Landmark> landmarks) {
    return landmarks.stream()
        .filter(l -> l.side() == offset.side() && l.name().equals(offset.landmark()))
        .anyMatch(l -> l.kind() == LandmarkKind.KNEE_CENTRE);
  }

  private static void warn(Offset offset, List<Remark> warnings) {
    double mm = offset.mm().value();
    double widthMm = offset.mm().expanded(COVERAGE);
    Argument side = Argument.term(offset.side());
    Argument line = Argument.term(offset.of());
    if (mm < 0) {
      warnings.add(
          Remark.of(LoadLineRemark.LINE_BEHIND_KNEE, side, Argument.of(-mm, Unit.MM), line));
    } else if (mm - widthMm < 0) {
      warnings.add(
          Remark.of(
              LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE,
              side,
              Argument.of(mm, Unit.MM),
              Argument.of(widthMm, Unit.MM),
              line));
    }
  }
}
