package caryatid.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A measured value with its budget of uncertainty (JCGM 100:2008, clauses 5 and G.4).
 *
 * @param value the value; its owner defines the unit
 * @param contributions what each source adds; each source at most once
 */
public record Estimate(double value, List<Contribution> contributions) {
  /**
   * Coverage probability of every interval that is stated or drawn (JCGM 100:2008, 6.3.3: about 95
   * %).
   */
  public static final double COVERAGE = 0.95;

  /**
   * @throws IllegalArgumentException if the value is not finite or a source stands twice
   */
  public Estimate {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value: " + value);
    }
    contributions = List.copyOf(contributions);
    if (contributions.stream().map(Contribution::source).distinct().count()
        != contributions.size()) {
      throw new IllegalArgumentException("a source stands twice in " + contributions);
    }
  }

  /** A value taken as exact. */
  public static Estimate exact(double value) {
    return new Estimate(value, List.of());
  }

  /** Combined standard uncertainty, root of the sum of squares (JCGM 100:2008, 5.1.2). */
  public double standardUncertainty() {
    return Math.sqrt(covariance(this));
  }

  /** Covariance with another value through the sources both share (JCGM 100:2008, F.1.2.3). */
  public double covariance(Estimate other) {
    Map<Source, Double> theirs = new LinkedHashMap<>();
    other.contributions.forEach(c -> theirs.put(c.source(), c.amount()));
    return contributions.stream()
        .mapToDouble(c -> c.amount() * theirs.getOrDefault(c.source(), 0.0))
        .sum();
  }

  /**
   * Degrees of freedom at which Student's t times the combined standard uncertainty is the
   * half-width that is stated, {@link #expanded} at {@link #COVERAGE}. Not rounded; infinite where
   * no contribution has finite ones.
   */
  public double degreesOfFreedom() {
    return new JointQuantile(contributions).degreesAt((1 - COVERAGE) / 2);
  }

  /**
   * Effective degrees of freedom by Welch-Satterthwaite (JCGM 100:2008, G.4.1), not rounded. It
   * takes estimated variances for the true ones: where a part of two degrees of freedom happens to
   * come out small beside a well-known part, its intervals hold the truth in 92 % of cases for 95 %
   * stated; and a larger part can narrow them.
   */
  public double welchSatterthwaite() {
    return degrees(2);
  }

  private double degrees(int power) {
    double variance = covariance(this);
    double sum = 0;
    for (Contribution c : contributions) {
      double share = variance > 0 ? c.amount() * c.amount() / variance : 0;
      sum += (power == 2 ? share * share : share) / c.degreesOfFreedom();
    }
    return sum > 0 ? 1 / sum : Double.POSITIVE_INFINITY;
  }

  /**
   * Half-width of the interval that holds the true value with a coverage probability: each
   * contribution expanded by Student's t with its own degrees of freedom, added in squares. It
   * never shrinks when a contribution grows.
   *
   * @param coverage between 0 and 1, for example 0.95
   */
  public double expanded(double coverage) {
    return new JointQuantile(contributions).at((1 - coverage) / 2);
  }

  /**
   * The half-width as method 1 found it and printed it: Student's t with the harmonic mean of the
   * contributions' degrees of freedom, weighted by their variances. A larger part can narrow it.
   *
   * @param coverage between 0 and 1, for example 0.95
   */
  public double expandedByShares(double coverage) {
    return Quantiles.t((1 + coverage) / 2, degrees(1)) * standardUncertainty();
  }

  /**
   * The probability that the true value lies further than so much to one side of this one, by the
   * same rule as {@link #expanded}.
   *
   * @param away how far, in the value's unit; negative where more than half lies there
   */
  double beyond(double away) {
    double tail = new JointQuantile(contributions).tail(Math.abs(away));
    return away < 0 ? 1 - tail : tail;
  }

  /** This value plus a factor times another; shared sources combine with their signs. */
  public Estimate plus(double factor, Estimate other) {
    Map<Source, Contribution> all = new LinkedHashMap<>();
    contributions.forEach(c -> all.put(c.source(), c));
    other.contributions.forEach(c -> all.merge(c.source(), scale(c, factor), Estimate::join));
    return new Estimate(value + factor * other.value, new ArrayList<>(all.values()));
  }

  /** This value times an exact factor. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, contributions.stream().map(c -> scale(c, factor)).toList());
  }

  /**
   * The product with another value, to first order (JCGM 100:2008, 5.1.3); shared sources combine
   * with their signs.
   */
  public Estimate multiply(Estimate other) {
    Estimate slopes = times(other.value).plus(value, other);
    return new Estimate(value * other.value, slopes.contributions);
  }

  /**
   * This value with one more contribution.
   *
   * @throws IllegalArgumentException if its source is there already
   */
  public Estimate with(Contribution contribution) {
    List<Contribution> all = new ArrayList<>(contributions);
    all.add(contribution);
    return new Estimate(value, all);
  }

  private static Contribution scale(Contribution c, double factor) {
    return new Contribution(
        c.source(), c.standardUncertainty(), factor * c.sensitivity(), c.degreesOfFreedom());
  }

  /** The same source twice: its sensitivities add, what is known of it is the first's to say. */
  private static Contribution join(Contribution a, Contribution b) {
    return new Contribution(
        a.source(),
        a.standardUncertainty(),
        a.sensitivity() + b.sensitivity(),
        a.degreesOfFreedom());
  }
}
