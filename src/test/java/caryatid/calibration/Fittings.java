package caryatid.calibration;

import caryatid.samples.Noise;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Many simulated fittings of one family in one clinic.
 *
 * @param family the family
 * @param clinic the clinic
 * @param runs fittings that were simulated
 * @param sagittal what came out in the sagittal plane
 * @param frontal what came out in the frontal plane
 * @param widestSagittalMm 95th percentile of the sagittal half-widths, mm
 * @param widestFrontalMm the same of the frontal ones
 */
record Fittings(
    Family family,
    Clinic clinic,
    int runs,
    Tally sagittal,
    Tally frontal,
    double widestSagittalMm,
    double widestFrontalMm) {

  /** Runs them; the same seed gives the same counts. */
  static Fittings of(Family family, Clinic clinic, int runs, long seed) {
    List<List<Outcome>> outcomes =
        IntStream.range(0, runs)
            .parallel()
            .mapToObj(i -> Fitting.run(family, clinic, new Noise(seed + i)))
            .filter(outcome -> !outcome.isEmpty())
            .toList();
    return new Fittings(
        family,
        clinic,
        runs,
        sum(outcomes, 0),
        sum(outcomes, 1),
        widest(outcomes, 0),
        widest(outcomes, 1));
  }

  private static double widest(List<List<Outcome>> outcomes, int plane) {
    double[] sorted =
        outcomes.stream().mapToDouble(both -> both.get(plane).halfWidthMm()).sorted().toArray();
    return sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
  }

  private static Tally sum(List<List<Outcome>> outcomes, int plane) {
    return outcomes.stream().map(both -> Tally.of(both.get(plane))).reduce(Tally.NONE, Tally::plus);
  }

  /** Fittings in which a stand was refused, %. */
  double refusedPercent() {
    return 100.0 * (runs - sagittal.runs()) / runs;
  }
}
