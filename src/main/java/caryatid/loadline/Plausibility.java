package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import java.util.ArrayList;
import java.util.List;

/**
 * Remarks on a foot's load line far from its own leg's landmarks: mostly from a wrong sign, unit or
 * measuring line.
 */
final class Plausibility {
  /** In standing no joint is further from its own foot's line (common practice, no source). */
  private static final double FAR_SAGITTAL_MM = 150;

  private static final double FAR_FRONTAL_MM = 100;

  private Plausibility() {}

  static List<Remark> of(List<Offset> offsets) {
    List<Remark> remarks = new ArrayList<>();
    for (Offset offset : offsets) {
      boolean own = offset.of() == LoadLineOwner.foot(offset.side());
      if (own && offset.kind() == LoadLineMethod.VERTICAL && isFar(offset)) {
        remarks.add(far(offset));
      }
    }
    return remarks;
  }

  private static boolean isFar(Offset offset) {
    double limitMm = offset.plane() == Plane.SAGITTAL ? FAR_SAGITTAL_MM : FAR_FRONTAL_MM;
    return Math.abs(offset.mm().value()) > limitMm;
  }

  private static Remark far(Offset offset) {
    return Remark.of(
        LoadLineRemark.FAR_FROM_LANDMARK,
        Argument.text(offset.landmark()),
        Argument.term(offset.plane()),
        Argument.of(Math.abs(offset.mm().value()), Unit.MM));
  }
}
