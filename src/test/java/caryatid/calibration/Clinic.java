package caryatid.calibration;

import caryatid.loadline.AssumedUncertainties;
import caryatid.recording.model.PlateAccuracy;
import java.util.List;

/**
 * How a simulated clinic measures.
 *
 * @param rateHz sampling rate, Hz
 * @param seconds how long each stand is recorded, s
 * @param stands how many stands, stepping off between
 * @param plates one under the prosthetic foot, or two
 * @param putBackMm how far from their first place the feet stand in further stands, in each
 *     direction, standard deviation, mm
 * @param restless how much more than usual its wearers differ from stand to stand, as a factor
 * @param serial correlation of how a wearer stands with how they stood the time before
 * @param sessionMm by how much all stands of a state differ from the wearer's own mean, in each
 *     direction, standard deviation, mm
 * @param readsAt whether it notes when a landmark is read
 * @param earlier how many stands each earlier state of the wearer's record has
 */
record Clinic(
    double rateHz,
    double seconds,
    int stands,
    int plates,
    double putBackMm,
    double restless,
    double serial,
    double sessionMm,
    boolean readsAt,
    List<Integer> earlier) {
  /** How far its plates can be trusted, as it states itself. */
  static final PlateAccuracy ACCURACY = new PlateAccuracy(1.5, 0.002, 0.005, 0);

  /** How well it marks a landmark, mm. */
  static final double MARKING_MM = 3;

  /** How well its ruler's zero lies on the plate, mm. */
  static final double REGISTRATION_MM = 1;

  /** What the program doubts beside. */
  static final AssumedUncertainties DOUBTS =
      AssumedUncertainties.ASSUMED.withLevel(ACCURACY.levelRad(), ACCURACY.degrees().level());

  /** Its wearers put their feet back where they stood, and differ as is usual. */
  Clinic(double rateHz, double seconds, int stands, int plates) {
    this(rateHz, seconds, stands, plates, 0, 1, 0, 0, false, List.of());
  }

  /** This clinic, the feet put back with an error, mm. */
  Clinic puttingBack(double mm) {
    return new Clinic(
        rateHz, seconds, stands, plates, mm, restless, serial, sessionMm, readsAt, earlier);
  }

  /** This clinic, its wearers differing more from stand to stand, by a factor. */
  Clinic restless(double factor) {
    return new Clinic(
        rateHz, seconds, stands, plates, putBackMm, factor, serial, sessionMm, readsAt, earlier);
  }

  /** This clinic, its wearers standing in part as they stood the time before. */
  Clinic inARow(double correlation) {
    return new Clinic(
        rateHz,
        seconds,
        stands,
        plates,
        putBackMm,
        restless,
        correlation,
        sessionMm,
        readsAt,
        earlier);
  }

  /** This clinic, its wearers standing elsewhere in each session. */
  Clinic bySession(double mm) {
    return new Clinic(
        rateHz, seconds, stands, plates, putBackMm, restless, serial, mm, readsAt, earlier);
  }

  /** This clinic, with states of so many stands before in the wearer's record. */
  Clinic after(Integer... states) {
    return new Clinic(
        rateHz,
        seconds,
        stands,
        plates,
        putBackMm,
        restless,
        serial,
        sessionMm,
        readsAt,
        List.of(states));
  }

  /** This clinic, noting when a landmark is read. */
  Clinic readingAt() {
    return new Clinic(
        rateHz, seconds, stands, plates, putBackMm, restless, serial, sessionMm, true, earlier);
  }

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
        + (plates == 1 ? "one plate" : "two plates")
        + (restless == 1 ? "" : ", wearers " + restless + " times as restless")
        + (putBackMm == 0 ? "" : ", feet put back within " + (int) putBackMm + " mm")
        + (serial == 0 ? "" : ", serial correlation " + serial)
        + (sessionMm == 0 ? "" : ", sessions " + (int) sessionMm + " mm apart")
        + (readsAt ? ", read at a stated moment" : "")
        + (earlier.isEmpty() ? "" : ", after states of " + earlier + " stands");
  }
}
