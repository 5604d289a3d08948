package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Remarks on what is hardly possible: a foot's load line far from its own leg's landmarks, or
 * landmarks whose heights are not in the body's order. Both usually come from a wrong sign, unit or
 * measuring line.
 */
final class Plausibility {
  /** In standing no joint is further from its own foot's line (common practice, no source). */
  private static final double FAR_SAGITTAL_MM = 150;

  private static final double FAR_FRONTAL_MM = 100;

  /** The joints from the ground up. */
  private static final List<LandmarkKind> UPWARDS =
      List.of(LandmarkKind.ANKLE_AXIS, LandmarkKind.KNEE_CENTRE, LandmarkKind.HIP);

  private Plausibility() {}

  static List<Remark> of(List<Offset> offsets, List<Landmark> landmarks) {
    List<Remark> remarks = new ArrayList<>();
    for (Offset offset : offsets) {
      boolean own = offset.of() == LoadLineOwner.foot(offset.side());
      if (own && offset.kind() == LoadLineMethod.VERTICAL && isFar(offset)) {
        remarks.add(far(offset));
      }
    }
    for (Side side : Side.values()) {
      remarks.addAll(outOfOrder(landmarks.stream().filter(l -> l.side() == side).toList()));
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

  private static List<Remark> outOfOrder(List<Landmark> leg) {
    List<Remark> remarks = new ArrayList<>();
    for (int i = 1; i < UPWARDS.size(); i++) {
      Optional<Landmark> low = find(leg, UPWARDS.get(i - 1));
      Optional<Landmark> high = find(leg, UPWARDS.get(i));
      if (low.isPresent() && high.isPresent() && high.get().heightMm() <= low.get().heightMm()) {
        remarks.add(outOfOrder(low.get(), high.get()));
      }
    }
    return remarks;
  }

  private static Optional<Landmark> find(List<Landmark> leg, LandmarkKind kind) {
    return leg.stream().filter(landmark -> landmark.kind() == kind).findFirst();
  }

  private static Remark outOfOrder(Landmark low, Landmark high) {
    return Remark.of(
        LoadLineRemark.LANDMARKS_OUT_OF_ORDER,
        Argument.text(high.name()),
        Argument.of(high.heightMm(), Unit.MM),
        Argument.text(low.name()),
        Argument.of(low.heightMm(), Unit.MM));
  }
}
