package caryatid.advice;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.Source;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The covariance of measured offsets of several states (JCGM 100:2008, F.1.2.3): offsets of one
 * state share all sources of the same name; those of two states on one plate share the plate, its
 * level and the measuring lines. A source that is known to few degrees of freedom counts as much
 * wider as its Student's t reaches beyond the normal distribution at 90 %. What an offset has for
 * itself keeps two that are the same line, and share all, from being one number twice.
 */
final class StateErrors {
  private static final Set<Cause> SHARED =
      EnumSet.of(Cause.PLATE_ACCURACY, Cause.LEVEL, Cause.REGISTRATION);

  /** What another shoe of the same heel may change, one standard deviation, mm (no source). */
  private static final double OTHER_SHOE_MM = 5;

  /**
   * What each measured offset has for itself, one standard deviation, mm (assumed): no length is
   * read more finely. Two marks of the same point share everything else.
   */
  private static final double FINEST_MM = 0.1;

  private static final double NINETY = 0.95;

  private StateErrors() {}

  /** One measured offset of a state. */
  record MeasuredOffset(MeasuredState state, int offset, Estimate mm) {}

  /**
   * The covariance of rows.
   *
   * @param plateCounts whether what is wrong with the plate counts; where it is the same in all
   *     states, what is measured is predicted without it
   */
  static RealMatrix covariance(List<MeasuredOffset> rows, boolean plateCounts) {
    RealMatrix all = new Array2DRowRealMatrix(rows.size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < i; j++) {
        double covariance = covariance(rows.get(i), rows.get(j), plateCounts);
        all.setEntry(i, j, covariance);
        all.setEntry(j, i, covariance);
      }
      double shoeMm = rows.get(i).state().sameShoe() ? 0 : OTHER_SHOE_MM;
      all.setEntry(
          i,
          i,
          covariance(rows.get(i), rows.get(i), plateCounts)
              + shoeMm * shoeMm
              + FINEST_MM * FINEST_MM);
    }
    return all;
  }

  private static double covariance(MeasuredOffset one, MeasuredOffset other, boolean plateCounts) {
    boolean same = one.state().equals(other.state());
    if (!same && !one.state().plate().equals(other.state().plate())) {
      return 0;
    }
    Map<Source, Contribution> theirs = new HashMap<>();
    other.mm().contributions().forEach(c -> theirs.put(c.source(), c));
    double sum = 0;
    for (Contribution c : one.mm().contributions()) {
      boolean shared = SHARED.contains(c.source().cause());
      if ((plateCounts ? same || shared : same && !shared) && theirs.containsKey(c.source())) {
        sum += wide(c) * wide(theirs.get(c.source()));
      }
    }
    return sum;
  }

  private static double wide(Contribution c) {
    return Double.isInfinite(c.degreesOfFreedom())
        ? c.amount()
        : c.amount()
            * Quantiles.t(NINETY, c.degreesOfFreedom())
            / Quantiles.t(NINETY, Double.POSITIVE_INFINITY);
  }
}
