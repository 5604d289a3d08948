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
  SOCKET_FLEXION("socket flexion", "deg", BenchItem::hasResidualLimb),
  SOCKET_ADDUCTION("socket adduction", "deg", BenchItem::hasResidualLimb),
  SOCKET_FORWARD("socket forward of the reference line", "mm", level -> true),
  SOCKET_LATERAL("socket lateral of the reference line", "mm", level -> true),
  HIP_JOINT_FORWARD(
      "hip joint forward of the reference line",
      "mm",
      level -> level == AmputationLevel.HIP_DISARTICULATION),
  KNEE_FORWARD("knee axis forward of the reference line", "mm", AmputationLevel::prostheticKnee),
  KNEE_HEIGHT("knee axis height", "mm", AmputationLevel::prostheticKnee),
  KNEE_ROTATION("knee rotation outward", "deg", AmputationLevel::prostheticKnee),
  FOOT_ROTATION("foot rotation outward", "deg", level -> true),
  FOOT_FORWARD("foot forward of the reference line", "mm", level -> true),
  ANKLE("ankle plantarflexion", "deg", level -> true),
  HEEL_HEIGHT("heel height", "mm", level -> true),
  HEIGHT("height", "mm", level -> true),
  FASTENERS("fasteners secured to torque", "N m", level -> true);

  private final String item;
  private final String unit;
  private final Predicate<AmputationLevel> at;

  BenchItem(String item, String unit, Predicate<AmputationLevel> at) {
    this.item = item;
    this.unit = unit;
    this.at = at;
  }

  /** Its name in an entry. */
  public String item() {
    return item;
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
