package caryatid.calibration;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.SampleVariance;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Which means of a run of stands are compared.
 *
 * @param fore differences fore and aft
 * @param side differences sideways
 */
record Pairing(Differences fore, Differences side) {

  /**
   * Each part of a stand with the next of the same stand: nothing differs between them but sway.
   */
  static Pairing parts(List<List<RealMean>> stands) {
    Pairing pairing = new Pairing(new Differences(0), new Differences(0));
    stands.forEach(pairing::addNeighbours);
    return pairing;
  }

  /** Each stand with the next; the program's default stands for what differs between stands. */
  static Pairing neighbours(List<RealMean> means) {
    Pairing pairing = withDefaults();
    pairing.addNeighbours(means);
    return pairing;
  }

  /** Each stand with each later one. */
  static Pairing all(List<RealMean> means) {
    Pairing pairing = withDefaults();
    for (int i = 0; i < means.size(); i++) {
      for (int j = i + 1; j < means.size(); j++) {
        pairing.add(means.get(i), means.get(j));
      }
    }
    return pairing;
  }

  /** Three stands in a row with the next three, the spread of each three pooled with the usual. */
  static Pairing threes(List<RealMean> means) {
    Pairing pairing = new Pairing(new Differences(0), new Differences(0));
    List<RealMean> threes = new ArrayList<>();
    for (int i = 0; i + 3 <= means.size(); i += 3) {
      List<RealMean> three = means.subList(i, i + 3);
      threes.add(
          new RealMean(
              state(three, RealMean::anteriorMm, Clinic.DOUBTS.sagittalRepeatMm()),
              state(three, RealMean::rightMm, Clinic.DOUBTS.frontalRepeatMm())));
    }
    pairing.addNeighbours(threes);
    return pairing;
  }

  private static Estimate state(
      List<RealMean> stands, Function<RealMean, Estimate> direction, double usualMm) {
    double[] mm = stands.stream().mapToDouble(s -> direction.apply(s).value()).toArray();
    double sd = caryatid.samples.Measures.sd(mm);
    SampleVariance pooled =
        SampleVariance.pooled(
            List.of(
                new SampleVariance(usualMm * usualMm, Clinic.DOUBTS.repeatDegreesOfFreedom()),
                new SampleVariance(sd * sd, mm.length - 1)));
    double u = Math.sqrt(pooled.variance() / mm.length);
    Source spread = new Source(Cause.REPEATABILITY, "stands");
    return Estimate.exact(caryatid.samples.Measures.mean(mm))
        .with(new Contribution(spread, u, 1, pooled.degreesOfFreedom()));
  }

  private static Pairing withDefaults() {
    return new Pairing(
        new Differences(Clinic.DOUBTS.sagittalRepeatMm()),
        new Differences(Clinic.DOUBTS.frontalRepeatMm()));
  }

  private void addNeighbours(List<RealMean> means) {
    for (int i = 0; i + 1 < means.size(); i++) {
      add(means.get(i), means.get(i + 1));
    }
  }

  private void add(RealMean a, RealMean b) {
    fore.add(a.anteriorMm(), b.anteriorMm());
    side.add(a.rightMm(), b.rightMm());
  }
}
