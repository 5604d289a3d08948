package caryatid.advice;

import caryatid.geometry.Plane;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the landmarks of a leg go by a change, the foot flat on the floor and the load line fixed
 * to the foot: finite rotations about the ankle or the socket's reference point, and shifts. What
 * the person does about it is not in here; it is what is learnt.
 *
 * <p>The ankle's mark belongs to the shank. Places are lateral, anterior and up, mm.
 */
final class Kinematics {
  /** Horizontal distance from heel to ball, mm (assumed, where none is given). */
  static final double HEEL_TO_BALL_MM = 170;

  /** What moves with what, from the floor up. */
  private enum Segment {
    FOOT,
    SHANK,
    KNEE,
    SOCKET
  }

  private final LegChain leg;
  private final Optional<double[]> line;

  /**
   * @param leg the leg
   * @param line where the load line stands, lateral and anterior, mm; empty where it is not known
   *     in both planes
   */
  Kinematics(LegChain leg, Optional<double[]> line) {
    this.leg = leg;
    this.line = line;
  }

  /**
   * By how many millimetres an offset grows for one unit of a change, about the present setting;
   * empty where a landmark is missing that it would follow from.
   */
  OptionalDouble slope(ChangeKind kind, LandmarkInPlane at) {
    Optional<Landmark> landmark =
        leg.landmark(at.landmark()).filter(l -> l.in(at.plane()).isPresent());
    if (landmark.isEmpty() || landmark.get().kind() == LandmarkKind.OTHER) {
      return OptionalDouble.empty();
    }
    int axis = at.plane() == Plane.FRONTAL ? 0 : 1;
    if (kind == ChangeKind.FOOT_ROTATION) {
      return line.isEmpty() || leg.ankle().isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(turnedLine(0.5)[axis] - turnedLine(-0.5)[axis]);
    }
    Optional<double[]> less = moved(kind, -0.5, landmark.get());
    Optional<double[]> more = moved(kind, 0.5, landmark.get());
    return less.isPresent() && more.isPresent()
        ? OptionalDouble.of(less.get()[axis] - more.get()[axis])
        : OptionalDouble.empty();
  }

  /**
   * Where a landmark is after a change; empty where what it turns about is not marked.
   *
   * @param amount in the kind's unit
   */
  Optional<double[]> moved(ChangeKind kind, double amount, Landmark landmark) {
    double[] from = leg.place(landmark);
    Segment part = part(landmark.kind());
    return switch (kind) {
      case PLANTARFLEXION -> aboutAnkle(from, part, 1, Math.toRadians(amount));
      case INVERSION -> aboutAnkle(from, part, 0, Math.toRadians(amount));
      case HEEL -> aboutAnkle(from, part, 1, -Math.atan(amount / HEEL_TO_BALL_MM));
      case FOOT_FORWARD -> shifted(from, part, Segment.SHANK, 1, -amount);
      case FOOT_LATERAL -> shifted(from, part, Segment.SHANK, 0, -amount);
      case SOCKET_FORWARD -> shifted(from, part, Segment.SOCKET, 1, amount);
      case SOCKET_LATERAL -> shifted(from, part, Segment.SOCKET, 0, amount);
      case SOCKET_FLEXION -> aboutSocket(from, part, 1, -Math.toRadians(amount));
      case SOCKET_ADDUCTION -> aboutSocket(from, part, 0, -Math.toRadians(amount));
      case KNEE_FORWARD -> Optional.of(part == Segment.KNEE ? along(from, 1, amount) : from);
      case HIP_JOINT_FORWARD ->
          Optional.of(landmark.kind() == LandmarkKind.HIP ? along(from, 1, amount) : from);
      case HEIGHT -> shifted(from, part, Segment.SHANK, 2, amount);
      case KNEE_HEIGHT -> Optional.of(part == Segment.KNEE ? along(from, 2, amount) : from);
      case KNEE_ROTATION, FOOT_ROTATION -> Optional.of(from);
    };
  }

  /** By how much the knee rises with a change, mm; 0 where that is not known. */
  double riseMm(ChangeKind kind, double amount) {
    return leg.first(LandmarkKind.KNEE_CENTRE)
        .flatMap(knee -> moved(kind, amount, knee).map(to -> to[2] - leg.place(knee)[2]))
        .orElse(0.0);
  }

  private Segment part(LandmarkKind kind) {
    return switch (kind) {
      case FOOT_REFERENCE_POINT -> Segment.FOOT;
      case ANKLE_AXIS -> Segment.SHANK;
      case KNEE_CENTRE, OUTER_PATELLAR_BORDER ->
          leg.prostheticKnee() ? Segment.KNEE : Segment.SOCKET;
      case HIP, SOCKET_REFERENCE_POINT, OTHER -> Segment.SOCKET;
    };
  }

  private Optional<double[]> aboutAnkle(double[] from, Segment part, int axis, double backwardRad) {
    return part == Segment.FOOT
        ? Optional.of(from)
        : leg.ankle().map(ankle -> tilted(from, leg.place(ankle), axis, backwardRad));
  }

  private Optional<double[]> aboutSocket(
      double[] from, Segment part, int axis, double backwardRad) {
    return part == Segment.SOCKET
        ? leg.first(LandmarkKind.SOCKET_REFERENCE_POINT)
            .map(socket -> tilted(from, leg.place(socket), axis, backwardRad))
        : Optional.of(from);
  }

  /** Tilts what is above a point backward (axis 1) or medially (axis 0). */
  static double[] tilted(double[] from, double[] about, int axis, double backwardRad) {
    double cos = Math.cos(backwardRad);
    double sin = Math.sin(backwardRad);
    double[] to = from.clone();
    double ahead = from[axis] - about[axis];
    double above = from[2] - about[2];
    to[axis] = about[axis] + cos * ahead - sin * above;
    to[2] = about[2] + sin * ahead + cos * above;
    return to;
  }

  private static Optional<double[]> shifted(
      double[] from, Segment part, Segment lowest, int axis, double mm) {
    return Optional.of(part.compareTo(lowest) >= 0 ? along(from, axis, mm) : from);
  }

  private static double[] along(double[] from, int axis, double mm) {
    double[] to = from.clone();
    to[axis] += mm;
    return to;
  }

  /** Where the load line stands when the foot has turned outward about the ankle. */
  private double[] turnedLine(double outwardDeg) {
    double[] ankle = leg.place(leg.ankle().orElseThrow());
    double[] at = line.orElseThrow();
    double cos = Math.cos(Math.toRadians(outwardDeg));
    double sin = Math.sin(Math.toRadians(outwardDeg));
    double lateral = at[0] - ankle[0];
    double ahead = at[1] - ankle[1];
    return new double[] {
      ankle[0] + cos * lateral + sin * ahead, ankle[1] + cos * ahead - sin * lateral
    };
  }
}
