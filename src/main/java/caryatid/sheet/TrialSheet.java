package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Target;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stance;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the wearer stood, as the clinician wrote it down.
 *
 * @param wearer the wearer's code, never a name
 * @param at when, with the offset from UTC
 * @param side the prosthetic side
 * @param level the level of amputation
 * @param bodyMassKg with prosthesis and shoes, kg, above 0
 * @param stance which foot stood on which plate
 * @param otherFoot what was under the other foot; empty for one plate per foot and for both on one
 * @param hands what the hands did
 * @param knee the prosthetic knee's setting; empty where there is none
 * @param ankleAxis which prosthetic ankles have an axis; empty if the sheet does not say
 * @param footwear what was worn
 * @param stanceWidthMm distance between the heels' midlines, mm
 * @param toeOutRad mean outward turn of the feet, rad
 * @param minutesWalked walked since the last change, min
 * @param components of the prosthesis
 * @param landmarks at least one
 * @param targets what the components' instructions recommend
 * @param stretches which part of a recording is used, where it was set by hand; at most one for
 *     each recording
 * @param doubts uncertainties other than those of the recording and the marks; its level is the
 *     plate description's to say
 * @param rule how a result follows from an offset and its tolerance
 * @param limits what is asked about and refused
 * @param asMeant what was asked and is meant as it is written or measured
 * @param notes what the practitioner writes
 */
public record TrialSheet(
    String wearer,
    OffsetDateTime at,
    ProstheticSide side,
    AmputationLevel level,
    OptionalDouble bodyMassKg,
    Stance stance,
    Optional<OtherFoot> otherFoot,
    Hands hands,
    Optional<KneeSetting> knee,
    Optional<AnkleAxis> ankleAxis,
    Footwear footwear,
    OptionalDouble stanceWidthMm,
    OptionalDouble toeOutRad,
    OptionalDouble minutesWalked,
    List<Component> components,
    List<LandmarkEntry> landmarks,
    List<Target> targets,
    List<NamedStretch> stretches,
    AssumedUncertainties doubts,
    DecisionRule rule,
    GeometryLimits limits,
    List<String> asMeant,
    Notes notes) {
  /** How an answer begins that says that a limit stated by a component's maker is exceeded. */
  public static final String BEYOND_LIMIT = "beyond limit: ";

  /**
   * @throws IllegalArgumentException if there is no landmark or a number is out of its range
   */
  public TrialSheet {
    if (landmarks.isEmpty()) {
      throw new IllegalArgumentException("a sheet without a landmark");
    }
    if (!(bodyMassKg.orElse(1) > 0)
        || !(stanceWidthMm.orElse(0) >= 0)
        || !(minutesWalked.orElse(0) >= 0)
        || !Double.isFinite(toeOutRad.orElse(0))) {
      throw new IllegalArgumentException(
          bodyMassKg + " kg, " + stanceWidthMm + " mm, " + toeOutRad + " rad, " + minutesWalked);
    }
    components = List.copyOf(components);
    landmarks = List.copyOf(landmarks);
    targets = List.copyOf(targets);
    stretches = List.copyOf(stretches);
    asMeant = List.copyOf(asMeant);
  }

  /**
   * Whether the ankle of a leg has an axis: the wearer's own, one that the sheet states, or one
   * that it marks beside a foot reference point.
   */
  public boolean hasAnkleAxis(Side leg) {
    return level == AmputationLevel.PARTIAL_FOOT
        || ankleAxis.filter(axis -> axis.legs().contains(leg)).isPresent()
        || isMarked(LandmarkKind.ANKLE_AXIS, leg)
            && isMarked(LandmarkKind.FOOT_REFERENCE_POINT, leg);
  }

  /** Whether an ankle axis is marked although nothing says that the ankle has one. */
  public boolean leavesAnkleAxisOpen() {
    return ankleAxis.isEmpty()
        && side.sides().stream()
            .anyMatch(leg -> isMarked(LandmarkKind.ANKLE_AXIS, leg) && !hasAnkleAxis(leg));
  }

  private boolean isMarked(LandmarkKind kind, Side leg) {
    return landmarks.stream().anyMatch(l -> l.kind() == kind && l.side() == leg);
  }

  /** What it says is meant although a component's maker states another limit. */
  public List<String> beyondLimits() {
    return asMeant.stream()
        .filter(answer -> answer.startsWith(BEYOND_LIMIT))
        .map(answer -> answer.substring(BEYOND_LIMIT.length()))
        .toList();
  }

  /** Everything else that it says is meant. */
  public List<String> otherAnswers() {
    return asMeant.stream().filter(answer -> !answer.startsWith(BEYOND_LIMIT)).toList();
  }
}
