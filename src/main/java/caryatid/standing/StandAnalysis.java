package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.PlateAccuracy;
import caryatid.recording.Recording;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what one recording says about one stand. */
public final class StandAnalysis {
  private StandAnalysis() {}

  /**
   * What is known about how the recording was made.
   *
   * @param stance which foot stood on which plate
   * @param prosthetic the prosthetic sides
   * @param bodyMassKg body mass, kg, where it is known
   * @param accuracy how far the plate can be trusted
   * @param byHand the stretch to use, where the user set it
   */
  public record Conditions(
      Stance stance,
      List<Side> prosthetic,
      OptionalDouble bodyMassKg,
      PlateAccuracy accuracy,
      Optional<Stretch> byHand) {}

  /**
   * Analyses a recording.
   *
   * @throws BadInput if it is not quiet standing, or a named plate is not in it
   */
  public static Standing analyse(Recording recording, Conditions conditions) throws BadInput {
    throw new UnsupportedOperationException("not built yet");
  }
}
