package caryatid.calibration;

import caryatid.samples.Noise;

/**
 * What goes wrong in one fitting, drawn from normal distributions of the standard deviations that
 * the clinic and the program state. All of it is the same in each stand of the fitting.
 *
 * @param copMm error of each plate's centre of pressure: left plate right, anterior, right plate
 *     right, anterior, mm
 * @param forceFraction error of each plate's force, left and right, as a fraction
 * @param tilt how the plate leans from level: to the right and anterior, mm for each mm of height
 * @param yawRad how far the wearer is turned on the plate, rad
 * @param markMm errors of marking and ruler together: to the right and anterior, mm
 * @param swingAt when the landmark was read, as a part of the first stand, 0 to 1
 */
record Errors(
    double[] copMm,
    double[] forceFraction,
    double[] tilt,
    double yawRad,
    double[] markMm,
    double swingAt) {

  static Errors draw(Noise noise) {
    return new Errors(
        normal(4, Clinic.ACCURACY.copMm(), noise),
        normal(2, Clinic.ACCURACY.forceFraction(), noise),
        normal(2, Clinic.ACCURACY.levelRad(), noise),
        Clinic.DOUBTS.yawRad() * noise.normal(),
        normal(2, StrictMath.hypot(Clinic.MARKING_MM, Clinic.REGISTRATION_MM), noise),
        noise.even());
  }

  private static double[] normal(int count, double sd, Noise noise) {
    double[] errors = new double[count];
    for (int i = 0; i < count; i++) {
      errors[i] = sd * noise.normal();
    }
    return errors;
  }
}
