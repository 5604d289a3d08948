package caryatid.recording.c3d;

import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import java.util.Arrays;
import java.util.List;

/** A vector in the file's laboratory axes. */
record LabVector(double x, double y, double z) {
  LabVector plus(LabVector other) {
    return new LabVector(x + other.x, y + other.y, z + other.z);
  }

  LabVector minus(LabVector other) {
    return plus(other.times(-1));
  }

  LabVector times(double factor) {
    return new LabVector(factor * x, factor * y, factor * z);
  }

  double dot(LabVector other) {
    return x * other.x + y * other.y + z * other.z;
  }

  LabVector cross(LabVector other) {
    return new LabVector(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  LabVector unit() {
    return times(1 / length());
  }

  double along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  double along(Direction direction) {
    return direction.sign() * along(direction.axis());
  }

  /** The unit vector of a direction. */
  static LabVector of(Direction direction) {
    double sign = direction.sign();
    return switch (direction.axis()) {
      case X -> new LabVector(sign, 0, 0);
      case Y -> new LabVector(0, sign, 0);
      case Z -> new LabVector(0, 0, sign);
    };
  }

  /** The direction of an axis that is nearest to this vector. */
  Direction nearest() {
    List<Direction> all = Arrays.asList(Direction.values());
    return all.stream().max((a, b) -> Double.compare(along(a), along(b))).orElse(Direction.PLUS_X);
  }

  boolean finite() {
    return Double.isFinite(x + y + z);
  }
}
