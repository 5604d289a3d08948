package caryatid.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Over random budgets: a stated uncertainty that is raised never narrows an interval, and never
 * makes a result. Welch-Satterthwaite, and one t for the sum by the parts' shares, fail both, so
 * that the properties can fail.
 */
class MoreNeverHurtsTest {
  private static final int BUDGETS = 3000;
  private static final double TOLERANCE_MM = 12;

  /** A rule: the half-width of an estimate's interval at a coverage. */
  private interface Rule {
    double halfWidth(Estimate estimate, double coverage);
  }

  private static final Rule OURS = Estimate::expanded;

  private static final Rule WELCH_SATTERTHWAITE =
      (estimate, coverage) ->
          Quantiles.t((1 + coverage) / 2, estimate.welchSatterthwaite())
              * estimate.standardUncertainty();

  private static final Rule BY_SHARES =
      (estimate, coverage) -> {
        double variance = estimate.covariance(estimate);
        double sum =
            estimate.contributions().stream()
                .mapToDouble(c -> c.amount() * c.amount() / variance / c.degreesOfFreedom())
                .sum();
        double degrees = sum > 0 ? 1 / sum : Double.POSITIVE_INFINITY;
        return Quantiles.t((1 + coverage) / 2, degrees) * Math.sqrt(variance);
      };

  private static Estimate budget(Random random) {
    List<Contribution> parts = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      if (parts.isEmpty() || random.nextBoolean()) {
        parts.add(
            new Contribution(
                new Source(cause, ""),
                Math.exp(1.2 * random.nextGaussian()),
                random.nextBoolean() ? 1 : -1,
                degrees(random)));
      }
    }
    return new Estimate(20 * random.nextGaussian(), parts);
  }

  private static double degrees(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> 2;
      case 1 -> 1 + 10 * random.nextDouble();
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /** One part of it raised, a little or much. */
  private static Estimate raised(Estimate estimate, Random random) {
    List<Contribution> parts = new ArrayList<>(estimate.contributions());
    int which = random.nextInt(parts.size());
    Contribution c = parts.get(which);
    double factor = 1 + Math.exp(2 * random.nextGaussian() - 1);
    parts.set(
        which,
        new Contribution(
            c.source(), factor * c.standardUncertainty(), c.sensitivity(), c.degreesOfFreedom()));
    return new Estimate(estimate.value(), parts);
  }

  private static int narrowed(Rule rule) {
    Random random = new Random(17);
    int narrowed = 0;
    for (int i = 0; i < BUDGETS; i++) {
      Estimate before = budget(random);
      Estimate after = raised(before, random);
      double coverage = List.of(0.8, 0.95, 0.99, 0.999).get(i % 4);
      double was = rule.halfWidth(before, coverage);
      narrowed += rule.halfWidth(after, coverage) < was * (1 - 1e-12) ? 1 : 0;
    }
    return narrowed;
  }

  @Test
  void anUncertaintyThatIsRaisedNeverNarrowsTheInterval() {
    assertThat(narrowed(OURS)).isZero();
    assertThat(narrowed(WELCH_SATTERTHWAITE)).isGreaterThan(BUDGETS / 50);
    assertThat(narrowed(BY_SHARES)).isGreaterThan(BUDGETS / 100);
  }

  @Test
  void anUncertaintyThatIsRaisedNeverMakesAResult() {
    Random random = new Random(18);
    int decided = 0;
    for (int i = 0; i < BUDGETS; i++) {
      Estimate before = budget(random);
      Conformity was = Conformity.of(before, -TOLERANCE_MM, TOLERANCE_MM);
      Conformity is = Conformity.of(raised(before, random), -TOLERANCE_MM, TOLERANCE_MM);
      for (double confidence : new double[] {0.8, 0.95, 0.99}) {
        boolean metNow = is.within() >= confidence;
        boolean notMetNow = Math.max(is.below(), is.above()) >= confidence;
        boolean metThen = was.within() >= confidence - 1e-11;
        boolean notMetThen = Math.max(was.below(), was.above()) >= confidence - 1e-11;
        assertThat(!metNow || metThen).as(before + " " + confidence).isTrue();
        assertThat(!notMetNow || notMetThen).as(before + " " + confidence).isTrue();
        decided += metNow || notMetNow ? 1 : 0;
      }
    }
    assertThat(decided).isGreaterThan(BUDGETS / 10);
  }

  /** A worse mark beside two degrees of freedom: Welch-Satterthwaite then says "met". */
  @Test
  void byWelchSatterthwaiteAWorseMarkCanTurnUndecidedIntoMet() {
    Estimate good = budget(0.3);
    Estimate worse = budget(2);
    assertThat(WELCH_SATTERTHWAITE.halfWidth(good, 0.95)).isGreaterThan(8);
    assertThat(WELCH_SATTERTHWAITE.halfWidth(worse, 0.95)).isLessThan(7);
    assertThat(OURS.halfWidth(worse, 0.95)).isGreaterThan(OURS.halfWidth(good, 0.95));
  }

  private static Estimate budget(double markMm) {
    return Estimate.exact(0)
        .with(new Contribution(new Source(Cause.REPEATABILITY, ""), 2, 1, 2))
        .with(
            new Contribution(new Source(Cause.MARKING, ""), markMm, -1, Double.POSITIVE_INFINITY));
  }
}
