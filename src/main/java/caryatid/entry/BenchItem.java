package caryatid.entry;

import caryatid.entry.form.Answers;
import caryatid.remark.Coded;
import caryatid.sheet.AmputationLevel;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * The usual items of a bench alignment, in terms of the trade (common practice, no source). Others
 * may be noted under any name.
 */
public enum BenchItem implements Coded {
  SOCKET_FLEXION("BenchItem.SOCKET_FLEXION", "deg", BenchItem::hasResidualLimb),
  SOCKET_ADDUCTION("BenchItem.SOCKET_ADDUCTION", "deg", BenchItem::hasResidualLimb),
  SOCKET_FORWARD("BenchItem.SOCKET_FORWARD", "mm", level -> true),
  SOCKET_LATERAL("BenchItem.SOCKET_LATERAL", "mm", level -> true),
  HIP_JOINT_FORWARD(
      "BenchItem.HIP_JOINT_FORWARD", "mm", level -> level == AmputationLevel.HIP_DISARTICULATION),
  KNEE_FORWARD("BenchItem.KNEE_FORWARD", "mm", AmputationLevel::prostheticKnee),
  KNEE_HEIGHT("BenchItem.KNEE_HEIGHT", "mm", AmputationLevel::prostheticKnee),
  KNEE_ROTATION("BenchItem.KNEE_ROTATION", "deg", AmputationLevel::prostheticKnee),
  FOOT_ROTATION("BenchItem.FOOT_ROTATION", "deg", level -> true),
  FOOT_FORWARD("BenchItem.FOOT_FORWARD", "mm", level -> true),
  ANKLE("BenchItem.ANKLE", "deg", level -> true),
  HEEL_HEIGHT("BenchItem.HEEL_HEIGHT", "mm", level -> true),
  HEIGHT("BenchItem.HEIGHT", "mm", level -> true),
  FASTENERS("BenchItem.FASTENERS", "N m", level -> true);

  private final String code;
  private final String unit;
  private final Predicate<AmputationLevel> at;

  BenchItem(String code, String unit, Predicate<AmputationLevel> at) {
    this.code = code;
    this.unit = unit;
    this.at = at;
  }

  @Override
  public String code() {
    return code;
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
  public static boolean saysTorque(Answers content) {
    return content.rows("items").stream()
        .anyMatch(row -> row.words("unit").filter(FASTENERS.unit::equals).isPresent());
  }
}
