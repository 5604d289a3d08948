package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import java.util.ArrayList;
import java.util.List;

/** Finds where the load lines of one stand run past its landmarks. */
public final class LoadLineCheck {
  private LoadLineCheck() {}

  /**
   * The offsets, moments and remarks of a stand.
   *
   * @param standing what the recording says
   * @param landmarks the landmarks in the person's frame
   * @param how how the wearer stood
   * @throws BadInput if the stand is of no use: a hand held something, or the feet were not level
   */
  public static LoadLineResult evaluate(
      Standing standing, List<Landmark> landmarks, StanceConditions how) throws BadInput {
    refuse(how);
    List<Offset> offsets = Offsets.of(standing, landmarks, how.doubts());
    Moments moments = new Moments(standing, landmarks, how);
    List<Remark> remarks = new ArrayList<>(remarks(how));
    remarks.addAll(Plausibility.of(offsets));
    remarks.addAll(moments.remarks());
    return new LoadLineResult(offsets, moments.of(offsets), remarks);
  }

  private static void refuse(StanceConditions how) throws BadInput {
    List<Problem> problems = new ArrayList<>();
    if (how.handHolds()) {
      problems.add(Problem.at(how.sheet(), LoadLineProblem.HAND_HOLDS));
    }
    double apartMm = Math.abs(how.otherFootHigherMm().orElse(0));
    if (how.otherFootOnFloor() && apartMm > how.limits().levelFeetMm()) {
      problems.add(
          heights(how, LoadLineProblem.FLOOR_NOT_LEVEL, apartMm, how.limits().levelFeetMm()));
    } else if (apartMm > how.limits().mostUnlevelMm()) {
      problems.add(
          heights(how, LoadLineProblem.FEET_NOT_LEVEL, apartMm, how.limits().mostUnlevelMm()));
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static Problem heights(
      StanceConditions how, LoadLineProblem topic, double apartMm, double limitMm) {
    return Problem.at(
        how.sheet(), topic, Argument.of(limitMm, Unit.MM), Argument.of(apartMm, Unit.MM));
  }

  private static List<Remark> remarks(StanceConditions how) {
    List<Remark> remarks = new ArrayList<>();
    if (how.stance() instanceof Stance.BothFeetOnOnePlate) {
      remarks.add(Remark.of(LoadLineRemark.WHOLE_BODY_LINE));
    }
    double apartMm = Math.abs(how.otherFootHigherMm().orElse(0));
    if (apartMm > how.limits().levelFeetMm()) {
      remarks.add(Remark.of(LoadLineRemark.FEET_NOT_LEVEL, Argument.of(apartMm, Unit.MM)));
    }
    if (how.handTouches()) {
      remarks.add(Remark.of(LoadLineRemark.HAND_TOUCHES));
    }
    if (how.kneeLocked()) {
      remarks.add(Remark.of(LoadLineRemark.KNEE_LOCKED));
    }
    return remarks;
  }

  /**
   * Remarks on a foot's load line far from its own leg's landmarks: mostly from a wrong sign, unit
   * or measuring line.
   */
  static final class Plausibility {
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
      double limitMm =
          offset.plane() == Plane.SAGITTAL ? UseLimits.FAR_SAGITTAL_MM : UseLimits.FAR_FRONTAL_MM;
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
}
