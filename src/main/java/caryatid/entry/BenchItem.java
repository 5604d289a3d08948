package caryatid.entry;

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
  SOCKET_FLEXION("BenchItem.SOCKET_FLEXION", SettingUnit.DEG, BenchItem::hasSocketAngles),
  SOCKET_ADDUCTION("BenchItem.SOCKET_ADDUCTION", SettingUnit.DEG, BenchItem::hasSocketAngles),
  SOCKET_FORWARD("BenchItem.SOCKET_FORWARD", SettingUnit.MM, level -> true),
  SOCKET_LATERAL("BenchItem.SOCKET_LATERAL", SettingUnit.MM, level -> true),
  HIP_JOINT_FORWARD(
      "BenchItem.HIP_JOINT_FORWARD",
      SettingUnit.MM,
      level -> level == AmputationLevel.HIP_DISARTICULATION),
  KNEE_FORWARD("BenchItem.KNEE_FORWARD", SettingUnit.MM, AmputationLevel::prostheticKnee),
  KNEE_HEIGHT("BenchItem.KNEE_HEIGHT", SettingUnit.MM, AmputationLevel::prostheticKnee),
  KNEE_ROTATION("BenchItem.KNEE_ROTATION", SettingUnit.DEG, AmputationLevel::prostheticKnee),
  FOOT_ROTATION("BenchItem.FOOT_ROTATION", SettingUnit.DEG, level -> true),
  FOOT_FORWARD("BenchItem.FOOT_FORWARD", SettingUnit.MM, level -> true),
  ANKLE("BenchItem.ANKLE", SettingUnit.DEG, level -> true),
  HEEL_HEIGHT("BenchItem.HEEL_HEIGHT", SettingUnit.MM, level -> true),
  HEIGHT("BenchItem.HEIGHT", SettingUnit.MM, level -> true),
  FASTENERS("BenchItem.FASTENERS", SettingUnit.NEWTON_METRE, level -> true),
  /** Chosen by name; no prosthesis is asked for it. */
  FOOT_LATERAL("BenchItem.FOOT_LATERAL", SettingUnit.MM, level -> false),
  /** The same. */
  FOOT_INVERSION("BenchItem.FOOT_INVERSION", SettingUnit.DEG, level -> false);

  private final String code;
  private final SettingUnit unit;
  private final Predicate<AmputationLevel> at;

  BenchItem(String code, SettingUnit unit, Predicate<AmputationLevel> at) {
    this.code = code;
    this.unit = unit;
    this.at = at;
  }

  @Override
  public String code() {
    return code;
  }

  /** The unit it is set in. */
  public SettingUnit unit() {
    return unit;
  }

  /** The usual items of a prosthesis. */
  public static List<BenchItem> of(AmputationLevel level) {
    return Arrays.stream(values()).filter(i -> i.at.test(level)).toList();
  }

  private static boolean hasSocketAngles(AmputationLevel level) {
    return level != AmputationLevel.HIP_DISARTICULATION && level != AmputationLevel.PARTIAL_FOOT;
  }
}
