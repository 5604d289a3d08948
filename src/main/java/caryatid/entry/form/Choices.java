package caryatid.entry.form;

import caryatid.entry.BodyMassSource;
import caryatid.entry.GaitPhase;
import caryatid.entry.GaitPlane;
import caryatid.entry.KeptFile;
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
import java.util.stream.Collectors;

/**
 * The codes of a closed choice: what forms are answered with and files hold, in every language.
 *
 * @param <E> the constants
 */
public final class Choices<E extends Enum<E>> {
  public static final Choices<ProstheticSide> PROSTHETIC_SIDE =
      new Choices<>(
          ProstheticSide.values(),
          Map.of(
              ProstheticSide.LEFT, "left",
              ProstheticSide.RIGHT, "right",
              ProstheticSide.BOTH, "both"));
  public static final Choices<AmputationLevel> LEVEL =
      new Choices<>(
          AmputationLevel.values(),
          Map.of(
              AmputationLevel.PARTIAL_FOOT, "partial foot",
              AmputationLevel.ANKLE_DISARTICULATION, "ankle disarticulation",
              AmputationLevel.TRANSTIBIAL, "transtibial",
              AmputationLevel.KNEE_DISARTICULATION, "knee disarticulation",
              AmputationLevel.TRANSFEMORAL, "transfemoral",
              AmputationLevel.HIP_DISARTICULATION, "hip disarticulation",
              AmputationLevel.ROTATIONPLASTY, "rotationplasty"));
  public static final Choices<Side> SIDE =
      new Choices<>(Side.values(), Map.of(Side.LEFT, "left", Side.RIGHT, "right"));
  public static final Choices<Plane> PLANE =
      new Choices<>(Plane.values(), Map.of(Plane.SAGITTAL, "sagittal", Plane.FRONTAL, "frontal"));
  public static final Choices<Verdict> RESULT =
      new Choices<>(
          Verdict.values(),
          Map.of(
              Verdict.WITHIN, "within",
              Verdict.INSIDE_TOO_CLOSE, "inside too close",
              Verdict.OUTSIDE_TOO_CLOSE, "outside too close",
              Verdict.OUTSIDE, "outside"));
  public static final Choices<BodyMassSource> MASS_FROM =
      of(BodyMassSource.values(), BodyMassSource::code);
  public static final Choices<SettingUnit> UNIT = of(SettingUnit.values(), SettingUnit::code);
  public static final Choices<GaitPlane> GAIT_PLANE = of(GaitPlane.values(), GaitPlane::code);
  public static final Choices<GaitPhase> PHASE = of(GaitPhase.values(), GaitPhase::code);
  public static final Choices<Severity> SEVERITY = of(Severity.values(), Severity::code);
  public static final Choices<KeptFile.Role> ROLE = of(KeptFile.Role.values(), KeptFile.Role::code);

  private final Map<E, String> codes;

  private Choices(E[] constants, Map<E, String> codes) {
    if (codes.size() != constants.length) {
      throw new IllegalArgumentException("no code for each constant: " + codes);
    }
    this.codes = new EnumMap<>(codes);
  }

  private static <E extends Enum<E>> Choices<E> of(E[] constants, Function<E, String> code) {
    return new Choices<>(
        constants, Arrays.stream(constants).collect(Collectors.toMap(Function.identity(), code)));
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
