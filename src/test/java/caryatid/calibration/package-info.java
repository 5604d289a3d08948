/**
 * Whether the program's statements come true: simulated people whose truth is known, measured as a
 * clinic would measure them, and how often the stated intervals and results hold. Entry point:
 * {@link caryatid.calibration.CalibrationStudy}.
 */
package caryatid.calibration;
