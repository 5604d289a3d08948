package caryatid.fitting;

import caryatid.sheet.AmputationLevel;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * The usual items of a bench alignment, in terms of the trade (common practice, no source). Others
 * may be noted under any name.
 */
public enum BenchItem {
  SOCKET_FLEXION("deg", BenchItem::hasResidualLimb),
  SOCKET_ADDUCTION("deg", BenchItem::hasResidualLimb),
  SOCKET_FORWARD("mm", level -> true),
  SOCKET_LATERAL("mm", level -> true),
  HIP_JOINT_FORWARD("mm", level -> level == AmputationLevel.HIP_DISARTICULATION),
  KNEE_FORWARD("mm", AmputationLevel::prostheticKnee),
  KNEE_HEIGHT("mm", AmputationLevel::prostheticKnee),
  KNEE_ROTATION("deg", AmputationLevel::prostheticKnee),
  FOOT_ROTATION("deg", level -> true),
  FOOT_FORWARD("mm", level -> true),
  ANKLE("deg", level -> true),
  HEEL_HEIGHT("mm", level -> true),
  HEIGHT("mm", level -> true),
  FASTENERS("N m", level -> true);

  private final String unit;
  private final Predicate<AmputationLevel> at;

  BenchItem(String unit, Predicate<AmputationLevel> at) {
    this.unit = unit;
    this.at = at;
  }

  /** The unit it is set in. */
  public String unit() {
    return unit;
  }

  /** The usual items of a prosthesis. */
  public static List<BenchItem> of(AmputationLevel level) {
    return Arrays.stream(values()).filter(i -> i.at.test(level)).toList();
  }

  private static boolean hasResidualLimb(AmputationLevel level) {
    return level != AmputationLevel.HIP_DISARTICULATION;
  }

  /** Whether the content of a bench alignment says to which torque fasteners were secured. */
  static boolean saysTorque(Answers content) {
    return content.rows("items").stream()
        .anyMatch(row -> row.words("unit").filter(FASTENERS.unit::equals).isPresent());
  }
}
