package caryatid.entry.form;

import caryatid.entry.GaitPlane;
import caryatid.entry.KeptFile;
import caryatid.entry.MassFrom;
import caryatid.entry.Phase;
import caryatid.entry.SettingUnit;
import caryatid.entry.Severity;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Verdict;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The codes of a closed choice: what forms are answered with and files hold, in every language.
 *
 * @param <E> the constants
 */
public final class Choices<E extends Enum<E>> {
  public static final Choices<ProstheticSide> PROSTHETIC_SIDE =
      new Choices<>(
          ProstheticSide.class,
          Map.of(
              ProstheticSide.LEFT, "left",
              ProstheticSide.RIGHT, "right",
              ProstheticSide.BOTH, "both"));
  public static final Choices<AmputationLevel> LEVEL =
      new Choices<>(
          AmputationLevel.class,
          Map.of(
              AmputationLevel.ANKLE_DISARTICULATION, "ankle disarticulation",
              AmputationLevel.TRANSTIBIAL, "transtibial",
              AmputationLevel.KNEE_DISARTICULATION, "knee disarticulation",
              AmputationLevel.TRANSFEMORAL, "transfemoral",
              AmputationLevel.HIP_DISARTICULATION, "hip disarticulation"));
  public static final Choices<Side> SIDE =
      new Choices<>(Side.class, Map.of(Side.LEFT, "left", Side.RIGHT, "right"));
  public static final Choices<Plane> PLANE =
      new Choices<>(Plane.class, Map.of(Plane.SAGITTAL, "sagittal", Plane.FRONTAL, "frontal"));
  public static final Choices<Verdict> RESULT =
      new Choices<>(
          Verdict.class,
          Map.of(
              Verdict.WITHIN, "within",
              Verdict.INSIDE_TOO_CLOSE, "inside too close",
              Verdict.OUTSIDE_TOO_CLOSE, "outside too close",
              Verdict.OUTSIDE, "outside"));
  public static final Choices<MassFrom> MASS_FROM = of(MassFrom.class, MassFrom::code);
  public static final Choices<SettingUnit> UNIT = of(SettingUnit.class, SettingUnit::code);
  public static final Choices<GaitPlane> GAIT_PLANE = of(GaitPlane.class, GaitPlane::code);
  public static final Choices<Phase> PHASE = of(Phase.class, Phase::code);
  public static final Choices<Severity> SEVERITY = of(Severity.class, Severity::code);
  public static final Choices<KeptFile.Role> ROLE = of(KeptFile.Role.class, KeptFile.Role::code);

  private final Map<E, String> codes;

  private Choices(Class<E> type, Map<E, String> codes) {
    this.codes = new EnumMap<>(codes);
    if (this.codes.size() != type.getEnumConstants().length) {
      throw new IllegalArgumentException("no code for each constant of " + type);
    }
  }

  private static <E extends Enum<E>> Choices<E> of(Class<E> type, Function<E, String> code) {
    Map<E, String> codes = new EnumMap<>(type);
    Arrays.stream(type.getEnumConstants()).forEach(c -> codes.put(c, code.apply(c)));
    return new Choices<>(type, codes);
  }

  /** The codes, in the order of the constants. */
  public List<String> codes() {
    return List.copyOf(codes.values());
  }

  /** The code of a constant. */
  public String code(E constant) {
    return codes.get(constant);
  }

  /** The constant of a code. */
  public Optional<E> constant(String code) {
    return codes.entrySet().stream()
        .filter(c -> c.getValue().equals(code))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
