package caryatid.loadline;

import caryatid.geometry.Plane;
import java.util.Optional;

/**
 * What a target's document says to check if the load line is too far to one side, in the
 * clinician's words. The program adds no advice here.
 *
 * @param tooFarAnterior for a line too far anterior
 * @param tooFarPosterior for a line too far posterior
 * @param tooFarMedial for a line too far medial
 * @param tooFarLateral for a line too far lateral
 */
public record OffTargetHints(
    Optional<String> tooFarAnterior,
    Optional<String> tooFarPosterior,
    Optional<String> tooFarMedial,
    Optional<String> tooFarLateral) {
  /** Nothing. */
  public static final OffTargetHints NOTHING =
      new OffTargetHints(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * What to check if the line is too far in a direction.
   *
   * @param positive whether the line is too far anterior or lateral
   */
  public Optional<String> at(Plane plane, boolean positive) {
    if (plane == Plane.SAGITTAL) {
      return positive ? tooFarAnterior : tooFarPosterior;
    }
    return positive ? tooFarLateral : tooFarMedial;
  }
}
