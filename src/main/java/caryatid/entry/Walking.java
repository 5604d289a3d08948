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
 * @param note what else is to be said
 */
public record Walking(
    List<Observation> observations,
    OptionalInt comfort,
    Optional<String> skin,
    Optional<String> heelStiffness,
    Optional<String> walkingAid,
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
    Range.COMFORT.require(comfort);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.WALKING;
  }
}
