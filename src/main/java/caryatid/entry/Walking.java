package caryatid.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the wearer walks.
 *
 * @param observations deviations that were seen
 * @param comfort comfort, 0 to 10
 * @param skin how the skin is
 * @param heelStiffness the heel stiffness that was chosen
 * @param walkingAid the walking aid
 * @param socketComfort the socket comfort score, 0 to 10
 * @param pain pain, 0 (none) to 10
 * @param wearerSays how it is in the wearer's words
 * @param note further remarks
 */
public record Walking(
    List<Observation> observations,
    OptionalInt comfort,
    Optional<String> skin,
    Optional<String> heelStiffness,
    Optional<String> walkingAid,
    OptionalInt socketComfort,
    OptionalInt pain,
    Optional<String> wearerSays,
    Optional<String> note)
    implements EntryContent {

  /**
   * One deviation.
   *
   * @param deviation which
   * @param plane in which plane
   * @param phase in which phase
   * @param severity how much of it
   * @param pointsTo what it usually points to; with a code, what that deviation does
   * @param source where that is written
   */
  public record Observation(
      TermOrText<WalkingDeviation> deviation,
      Optional<GaitPlane> plane,
      Optional<GaitPhase> phase,
      Optional<Severity> severity,
      Optional<TermOrText<WalkingDeviation>> pointsTo,
      Optional<TermOrText<WalkingDeviation.Reference>> source) {}

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Walking {
    observations = List.copyOf(observations);
    Range.SCORE.require(comfort);
    Range.SCORE.require(socketComfort);
    Range.SCORE.require(pain);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.WALKING;
  }
}
