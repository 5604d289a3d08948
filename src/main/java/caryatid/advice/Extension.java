package caryatid.advice;

import java.util.OptionalDouble;

/**
 * What a flexion contracture of the joint above the socket leaves to extend: the socket takes it up
 * by its flexion, and a change that asks the joint to extend further than that takes away its full
 * extension. Below the knee a foot that plantarflexes asks the knee for it, above the knee one that
 * dorsiflexes asks the hip, degree by degree.
 *
 * @param contractureDeg the contracture, deg; empty where none was noted
 * @param socketFlexionDeg the flexion that the socket is set to, deg; empty where it is not known
 */
public record Extension(OptionalDouble contractureDeg, OptionalDouble socketFlexionDeg) {
  /** Nothing is known of a contracture. */
  public static final Extension UNKNOWN =
      new Extension(OptionalDouble.empty(), OptionalDouble.empty());

  /** Whether a change leaves full extension to the joint. */
  boolean allows(ChangeKind kind, double by, boolean prostheticKnee) {
    if (kind != ChangeKind.PLANTARFLEXION || contractureDeg.isEmpty()) {
      return true;
    }
    return (prostheticKnee ? -by : by) <= reserveDeg();
  }

  /** Whether a socket set to a flexion takes the contracture up. */
  public boolean takenUpBy(double flexionDeg) {
    return contractureDeg.isEmpty() || flexionDeg >= contractureDeg.getAsDouble();
  }

  private double reserveDeg() {
    return socketFlexionDeg.isEmpty()
        ? 0
        : Math.max(0, socketFlexionDeg.getAsDouble() - contractureDeg.orElseThrow());
  }
}
