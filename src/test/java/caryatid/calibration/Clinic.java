package caryatid.calibration;

import caryatid.loadline.Doubts;
import caryatid.recording.PlateAccuracy;

/**
 * How a simulated clinic measures.
 *
 * @param rateHz sampling rate, Hz
 * @param seconds how long each stand is recorded, s
 * @param stands how many stands, stepping off between
 * @param plates one under the prosthetic foot, or two
 */
record Clinic(double rateHz, double seconds, int stands, int plates) {
  /** How far its plates can be trusted, as it states itself. */
  static final PlateAccuracy ACCURACY = new PlateAccuracy(1.5, 0.002, 0.005);

  /** How well it marks a landmark, mm. */
  static final double MARKING_MM = 3;

  /** How well its ruler's zero lies on the plate, mm. */
  static final double REGISTRATION_MM = 1;

  /** What the program doubts beside. */
  static final Doubts DOUBTS = Doubts.ASSUMED.withLevel(ACCURACY.levelRad());

  int samples() {
    return (int) StrictMath.round(seconds * rateHz);
  }

  /** As the tables name it. */
  String title() {
    return stands
        + (stands == 1 ? " stand" : " stands")
        + " of "
        + (int) seconds
        + " s, "
        + (int) rateHz
        + " Hz, "
        + (plates == 1 ? "one plate" : "two plates");
  }
}
