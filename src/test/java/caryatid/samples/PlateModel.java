package caryatid.samples;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;

/**
 * What a plate measures of a foot. Moments are those of the force about the true origin, which lies
 * below the surface, and of the free moment: M = (r - o) x F + T, r the centre of pressure in the
 * surface. Recomputing the centre of pressure from F and M gives r again.
 *
 * @param axes how the plate's axes lie in the person's frame; right-handed
 * @param onPerson whether it states the force on the person, not on the plate
 * @param rightMm where the plate's centre lies in the person's frame, mm
 * @param anteriorMm the same, anterior, mm
 * @param originMm the true origin in the plate's axes, from the centre of its surface, mm
 */
record PlateModel(Axes axes, boolean onPerson, double rightMm, double anteriorMm, Vector originMm) {

  /** Three components along the plate's axes. */
  record Vector(double x, double y, double z) {
    Vector minus(Vector v) {
      return new Vector(x - v.x, y - v.y, z - v.z);
    }

    Vector plus(Vector v) {
      return new Vector(x + v.x, y + v.y, z + v.z);
    }

    Vector cross(Vector v) {
      return new Vector(y * v.z - z * v.y, z * v.x - x * v.z, x * v.y - y * v.x);
    }
  }

  /**
   * One sample of a plate, in its axes.
   *
   * @param force N
   * @param moment about the true origin, N mm
   * @param pressure centre of pressure from the centre of the surface, mm
   */
  record Reading(Vector force, Vector moment, Vector pressure) {}

  /** What the plate measures of a foot, sample by sample. */
  Reading[] read(FootTrace foot) {
    Reading[] readings = new Reading[foot.size()];
    for (int i = 0; i < readings.length; i++) {
      double sense = onPerson ? 1 : -1;
      Vector force =
          turned(sense * foot.rightN()[i], sense * foot.anteriorN()[i], sense * foot.upN()[i]);
      Vector at = turned(foot.rightMm()[i] - rightMm, foot.anteriorMm()[i] - anteriorMm, 0);
      Vector free = turned(0, 0, sense * foot.turnNmm()[i]);
      readings[i] = new Reading(force, at.minus(originMm).cross(force).plus(free), at);
    }
    return readings;
  }

  private Vector turned(double right, double anterior, double up) {
    double[] v = new double[3];
    put(v, axes.right(), right);
    put(v, axes.anterior(), anterior);
    put(v, axes.up(), up);
    return new Vector(v[0], v[1], v[2]);
  }

  private static void put(double[] v, Direction direction, double amount) {
    v[direction.axis().ordinal()] = direction.sign() * amount;
  }
}
