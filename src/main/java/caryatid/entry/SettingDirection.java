package caryatid.entry;

import caryatid.remark.Coded;
import java.util.List;
import java.util.Optional;

/**
 * The two directions in which an item of the bench alignment can be changed, in terms of the trade:
 * a difference is typed with one of them instead of a sign.
 */
public enum SettingDirection implements Coded {
  FORWARD("SettingDirection.FORWARD"),
  BACK("SettingDirection.BACK"),
  LATERAL("SettingDirection.LATERAL"),
  MEDIAL("SettingDirection.MEDIAL"),
  OUTWARD("SettingDirection.OUTWARD"),
  INWARD("SettingDirection.INWARD"),
  FLEXION("SettingDirection.FLEXION"),
  EXTENSION("SettingDirection.EXTENSION"),
  ADDUCTION("SettingDirection.ADDUCTION"),
  ABDUCTION("SettingDirection.ABDUCTION"),
  PLANTARFLEXION("SettingDirection.PLANTARFLEXION"),
  DORSIFLEXION("SettingDirection.DORSIFLEXION"),
  INVERSION("SettingDirection.INVERSION"),
  EVERSION("SettingDirection.EVERSION"),
  HIGHER("SettingDirection.HIGHER"),
  LOWER("SettingDirection.LOWER"),
  MORE("SettingDirection.MORE"),
  LESS("SettingDirection.LESS");

  private final String code;

  SettingDirection(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /**
   * The directions of an item: first the one in which its number rises, then the other.
   *
   * @param item empty for one under a name of its own
   */
  public static List<SettingDirection> of(Optional<BenchItem> item) {
    return item.map(SettingDirection::of).orElse(List.of(MORE, LESS));
  }

  private static List<SettingDirection> of(BenchItem item) {
    return switch (item) {
      case SOCKET_FLEXION -> List.of(FLEXION, EXTENSION);
      case SOCKET_ADDUCTION -> List.of(ADDUCTION, ABDUCTION);
      case SOCKET_FORWARD, HIP_JOINT_FORWARD, KNEE_FORWARD, FOOT_FORWARD -> List.of(FORWARD, BACK);
      case SOCKET_LATERAL, FOOT_LATERAL -> List.of(LATERAL, MEDIAL);
      case KNEE_ROTATION, FOOT_ROTATION -> List.of(OUTWARD, INWARD);
      case ANKLE -> List.of(PLANTARFLEXION, DORSIFLEXION);
      case FOOT_INVERSION -> List.of(INVERSION, EVERSION);
      case KNEE_HEIGHT, HEEL_HEIGHT, HEIGHT -> List.of(HIGHER, LOWER);
      case FASTENERS -> List.of(MORE, LESS);
    };
  }

  /** Whether an item's number rises in this direction. */
  public boolean rises() {
    return ordinal() % 2 == 0;
  }
}
