/**
 * Invented people who stand: a generator of recordings whose truth is known, and the sample
 * recordings made by it. Way of the data: {@link caryatid.samples.Sway} (how the centre of pressure
 * moves about its mean) and {@link caryatid.samples.Stance} (where the feet are and what they bear)
 * to {@link caryatid.samples.Stand} (forces and centres of pressure under each foot), to {@link
 * caryatid.samples.PlateModel} (what a plate would measure), to {@link caryatid.samples.ExportText}
 * (what it would write). Everything follows from a seed, digit by digit, on every Java: {@code
 * StrictMath}, our own random numbers, our own number writer.
 */
package caryatid.samples;
