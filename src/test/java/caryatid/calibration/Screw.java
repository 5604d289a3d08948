package caryatid.calibration;

/**
 * What can be turned or shifted at the prosthesis of the advice study, and what geometry expects of
 * it: the load line fixed to the foot, the knee 412 mm above the ankle, tangent of a degree.
 *
 * <p>The order of the offsets is that of {@link AlignedWearer#WHERE}: knee sagittal, ankle
 * sagittal, knee frontal.
 */
enum Screw {
  /** Plantarflexion, deg. */
  ANKLE(10, 0.5, 7.191, 0, 0),
  /** Inversion, deg. */
  FOOT_TILT(8, 0.5, 0, 0, 7.191),
  /** Forward, mm. */
  FOOT_FORWARD(20, 2, 1, 1, 0),
  /** Lateral, mm. */
  FOOT_LATERAL(16, 2, 0, 0, 1);

  private final double travel;
  private final double step;
  private final double[] slopes;

  Screw(double travel, double step, double... slopes) {
    this.travel = travel;
    this.step = step;
    this.slopes = slopes;
  }

  /** How far it goes to either side of where it stands at first, in its unit. */
  double travel() {
    return travel;
  }

  /** The smallest amount it is turned by. */
  double step() {
    return step;
  }

  /** What geometry expects of one unit at an offset, mm. */
  double slope(int offset) {
    return slopes[offset];
  }

  /** The largest of these, without sign. */
  double steepest() {
    double most = 0;
    for (double slope : slopes) {
      most = StrictMath.max(most, StrictMath.abs(slope));
    }
    return most;
  }
}
