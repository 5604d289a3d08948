package caryatid.plate;

import java.util.List;

/**
 * What is uncertain about a proof itself, as standard uncertainties.
 *
 * @param placeMm of where the weight's middle stands, each direction, mm
 * @param weightFraction of the weights' mass, as a fraction of it
 * @param bodyKg the mass for which the plate will be used, kg, above 0
 * @param levelRad what a level showed on the plate, in both directions and turned round, rad; empty
 *     where none was laid on it
 */
record ProofDoubts(double placeMm, double weightFraction, double bodyKg, List<Double> levelRad) {
  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public ProofDoubts {
    levelRad = List.copyOf(levelRad);
    boolean level = levelRad.stream().allMatch(Double::isFinite);
    if (!(placeMm > 0) || !(weightFraction >= 0) || !(bodyKg > 0) || !level) {
      throw new IllegalArgumentException(
          placeMm + " mm, " + weightFraction + ", " + bodyKg + " kg, " + levelRad);
    }
  }
}
