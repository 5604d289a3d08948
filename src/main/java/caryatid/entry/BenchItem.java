package caryatid.entry;

import caryatid.loadline.LimitedQuantity;
import caryatid.remark.Coded;
import caryatid.sheet.AmputationLevel;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The usual items of a bench alignment, in terms of the trade (common practice, no source). Others
 * may be noted under any name.
 */
public enum BenchItem implements Coded {
  SOCKET_FLEXION(
      "BenchItem.SOCKET_FLEXION",
      SettingUnit.DEG,
      LimitedQuantity.BENCH_ANGLE,
      BenchItem::hasSocketAngles),
  SOCKET_ADDUCTION(
      "BenchItem.SOCKET_ADDUCTION",
      SettingUnit.DEG,
      LimitedQuantity.BENCH_ANGLE,
      BenchItem::hasSocketAngles),
  SOCKET_FORWARD(
      "BenchItem.SOCKET_FORWARD", SettingUnit.MM, LimitedQuantity.BENCH_DISTANCE, level -> true),
  SOCKET_LATERAL(
      "BenchItem.SOCKET_LATERAL", SettingUnit.MM, LimitedQuantity.BENCH_DISTANCE, level -> true),
  HIP_JOINT_FORWARD(
      "BenchItem.HIP_JOINT_FORWARD",
      SettingUnit.MM,
      LimitedQuantity.BENCH_DISTANCE,
      level -> level == AmputationLevel.HIP_DISARTICULATION),
  KNEE_FORWARD(
      "BenchItem.KNEE_FORWARD",
      SettingUnit.MM,
      LimitedQuantity.BENCH_DISTANCE,
      AmputationLevel::prostheticKnee),
  KNEE_HEIGHT("BenchItem.KNEE_HEIGHT", SettingUnit.MM, AmputationLevel::prostheticKnee),
  KNEE_ROTATION(
      "BenchItem.KNEE_ROTATION",
      SettingUnit.DEG,
      LimitedQuantity.BENCH_ANGLE,
      AmputationLevel::prostheticKnee),
  FOOT_ROTATION(
      "BenchItem.FOOT_ROTATION", SettingUnit.DEG, LimitedQuantity.BENCH_ANGLE, level -> true),
  FOOT_FORWARD(
      "BenchItem.FOOT_FORWARD", SettingUnit.MM, LimitedQuantity.BENCH_DISTANCE, level -> true),
  ANKLE("BenchItem.ANKLE", SettingUnit.DEG, LimitedQuantity.PLANTARFLEXION, level -> true),
  HEEL_HEIGHT("BenchItem.HEEL_HEIGHT", SettingUnit.MM, level -> true),
  HEIGHT("BenchItem.HEIGHT", SettingUnit.MM, level -> true),
  FASTENERS(
      "BenchItem.FASTENERS",
      SettingUnit.NEWTON_METRE,
      LimitedQuantity.FASTENER_TORQUE,
      level -> true),
  /** Chosen by name; no prosthesis is asked for it. */
  FOOT_LATERAL(
      "BenchItem.FOOT_LATERAL", SettingUnit.MM, LimitedQuantity.BENCH_DISTANCE, level -> false),
  /** The same. */
  FOOT_INVERSION(
      "BenchItem.FOOT_INVERSION", SettingUnit.DEG, LimitedQuantity.BENCH_ANGLE, level -> false);

  private final String code;
  private final SettingUnit unit;
  private final Optional<LimitedQuantity> limited;
  private final Predicate<AmputationLevel> at;

  BenchItem(String code, SettingUnit unit, Predicate<AmputationLevel> at) {
    this(code, unit, Optional.empty(), at);
  }

  BenchItem(String code, SettingUnit unit, LimitedQuantity limited, Predicate<AmputationLevel> at) {
    this(code, unit, Optional.of(limited), at);
  }

  BenchItem(
      String code,
      SettingUnit unit,
      Optional<LimitedQuantity> limited,
      Predicate<AmputationLevel> at) {
    this.code = code;
    this.unit = unit;
    this.limited = limited;
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

  /** What a setting in {@link #unit} is held against; empty where anything can be. */
  Optional<LimitedQuantity> limited() {
    return limited;
  }

  /** The usual items of a prosthesis. */
  public static List<BenchItem> of(AmputationLevel level) {
    return Arrays.stream(values()).filter(i -> i.at.test(level)).toList();
  }

  private static boolean hasSocketAngles(AmputationLevel level) {
    return level != AmputationLevel.HIP_DISARTICULATION && level != AmputationLevel.PARTIAL_FOOT;
  }
}
