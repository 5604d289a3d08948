package caryatid.advice;

import caryatid.remark.Coded;
import caryatid.remark.Unit;

/**
 * The kinds of change between two stands, in the trade's terms; the closed list of what is learnt
 * from. Only some are ever proposed: socket flexion, the prosthetic knee's place, height and heel
 * are learnt from alone, because to change them merely to move a line would mask what they are for.
 */
public enum ChangeKind implements Coded {
  /** The foot's toes go down against the shank. */
  PLANTARFLEXION("ChangeKind.PLANTARFLEXION", Unit.DEG, true),
  /** The foot's sole turns inward; below 0 eversion. */
  INVERSION("ChangeKind.INVERSION", Unit.DEG, true),
  /** The foot's toes turn outward. */
  FOOT_ROTATION("ChangeKind.FOOT_ROTATION", Unit.DEG, true),
  /** The foot goes forward under the shank. */
  FOOT_FORWARD("ChangeKind.FOOT_FORWARD", Unit.MM, true),
  FOOT_LATERAL("ChangeKind.FOOT_LATERAL", Unit.MM, true),
  /** The socket goes forward over what is below it. */
  SOCKET_FORWARD("ChangeKind.SOCKET_FORWARD", Unit.MM, true),
  SOCKET_LATERAL("ChangeKind.SOCKET_LATERAL", Unit.MM, true),
  SOCKET_ADDUCTION("ChangeKind.SOCKET_ADDUCTION", Unit.DEG, true),
  SOCKET_FLEXION("ChangeKind.SOCKET_FLEXION", Unit.DEG, false),
  HIP_JOINT_FORWARD("ChangeKind.HIP_JOINT_FORWARD", Unit.MM, false),
  KNEE_FORWARD("ChangeKind.KNEE_FORWARD", Unit.MM, false),
  KNEE_HEIGHT("ChangeKind.KNEE_HEIGHT", Unit.MM, false),
  KNEE_ROTATION("ChangeKind.KNEE_ROTATION", Unit.DEG, false),
  HEIGHT("ChangeKind.HEIGHT", Unit.MM, false),
  /** By how much the shoe's effective heel is higher than the one that the ankle is set for. */
  HEEL("ChangeKind.HEEL", Unit.MM, false);

  private final String code;
  private final Unit unit;
  private final boolean proposed;

  ChangeKind(String code, Unit unit, boolean proposed) {
    this.code = code;
    this.unit = unit;
    this.proposed = proposed;
  }

  @Override
  public String code() {
    return code;
  }

  /** The unit that it is stated in, degrees or millimetres. */
  public Unit unit() {
    return unit;
  }

  /** Whether it may be proposed at all. */
  public boolean isProposed() {
    return proposed;
  }

  /** Whether it is an angle. */
  public boolean isAngle() {
    return unit == Unit.DEG;
  }
}
