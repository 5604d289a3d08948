package caryatid.advice;

import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * True offsets as they are expected at a setting.
 *
 * @param meanMm expected offsets, mm
 * @param covariance of these, mm squared
 */
record Prediction(RealVector meanMm, RealMatrix covariance) {
  /** Standard deviation of one of them, mm. */
  double sdMm(int offset) {
    return Math.sqrt(covariance.getEntry(offset, offset));
  }
}
