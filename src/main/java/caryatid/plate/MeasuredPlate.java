package caryatid.plate;

import caryatid.recording.model.PlateProof;
import caryatid.uncertainty.Estimate;

/**
 * What known weights show of a plate whose axes and units are as described.
 *
 * @param plate its name
 * @param marks how many marks it was measured at
 * @param scaleRight how long it shows a true millimetre to the right
 * @param scaleAnterior how long it shows a true anterior millimetre
 * @param turnRad how far what it shows is turned, rad; positive to the left, seen from above
 * @param zeroRightMm where it shows the zero, to the right, mm
 * @param zeroAnteriorMm where it shows the zero, anteriorly, mm
 * @param copMm root mean square of how far it shows a place from where it is, each direction, as an
 *     estimate of 0 with its contributions, mm
 */
public record MeasuredPlate(
    String plate,
    int marks,
    Estimate scaleRight,
    Estimate scaleAnterior,
    Estimate turnRad,
    Estimate zeroRightMm,
    Estimate zeroAnteriorMm,
    Estimate copMm) {

  /** The numbers with their intervals of 95 %. */
  public PlateProof.Shown shown() {
    return new PlateProof.Shown(
        plate,
        marks,
        measure(scaleRight),
        measure(scaleAnterior),
        measure(turnRad.times(Math.toDegrees(1))),
        measure(zeroRightMm),
        measure(zeroAnteriorMm));
  }

  private static PlateProof.MeasuredValue measure(Estimate estimate) {
    return new PlateProof.MeasuredValue(estimate.value(), estimate.expanded(Estimate.COVERAGE));
  }
}
