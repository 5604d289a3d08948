package caryatid.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * All single changes and all pairs of two, on the steps of their adjustments, by how probably they
 * bring every offset within; of each kind or pair of kinds the smallest of the best. Each offset by
 * itself here; {@link Advisor} finds the joint probability of those that lead.
 */
final class Candidates {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** An amount counts as good as the best if its probability is at most this much lower. */
  private static final double AS_GOOD = 0.01;

  /** Beyond so many standard deviations the tail is taken by its exponent alone. */
  private static final double FAR_SD = 8;

  private static final double DEGREE_MM = 7.2;

  private final WearerModel model;
  private final ToleranceBounds bounds;
  private final List<Adjustment> adjustments;
  private final Extension extension;
  private final boolean prostheticKnee;
  private final OptionalInt knee;
  private final Optional<KneeGuard> guard;

  /**
   * @param bounds what each of the model's offsets may be, in their order
   * @param adjustments of kinds that the model knows
   * @param knee which offset is the knee's, seen from the side
   */
  Candidates(
      WearerModel model,
      ToleranceBounds bounds,
      List<Adjustment> adjustments,
      Extension extension,
      boolean prostheticKnee,
      OptionalInt knee,
      Optional<KneeGuard> guard) {
    this.model = model;
    this.bounds = bounds;
    this.adjustments = adjustments;
    this.extension = extension;
    this.prostheticKnee = prostheticKnee;
    this.knee = knee;
    this.guard = guard;
  }

  /**
   * One or two changes.
   *
   * @param logProbability of all offsets, each by itself
   * @param sizeMm how large the changes are, angles at the knee's height, mm
   */
  record Candidate(List<Proposal.Change> changes, double logProbability, double sizeMm) {}

  /**
   * What offsets may be, mm; infinite where nothing is asked of one.
   *
   * @param lowest smallest
   * @param highest largest
   */
  record ToleranceBounds(double[] lowest, double[] highest) {}

  /** The best single change of each kind, likeliest first. */
  List<Candidate> singles() {
    List<Candidate> best = new ArrayList<>();
    for (Adjustment one : adjustments) {
      List<Candidate> all = new ArrayList<>();
      for (double by : one.amounts()) {
        if (allowed(one, by)) {
          all.add(candidate(List.of(new Proposal.Change(one, by))));
        }
      }
      smallestOfBest(all).ifPresent(best::add);
    }
    return sorted(best);
  }

  /** The best pair of each two kinds, likeliest first; the better one of the two comes first. */
  List<Candidate> pairs() {
    List<Candidate> best = new ArrayList<>();
    for (int i = 0; i < adjustments.size(); i++) {
      for (int j = i + 1; j < adjustments.size(); j++) {
        smallestOfBest(pairs(adjustments.get(i), adjustments.get(j))).ifPresent(best::add);
      }
    }
    return sorted(best);
  }

  private List<Candidate> pairs(Adjustment one, Adjustment other) {
    List<Candidate> all = new ArrayList<>();
    double[] others = other.amounts();
    for (double a : one.amounts()) {
      for (double b : others) {
        Change2 both = new Change2(index(one), a, index(other), b);
        if (extends2(one, a, other, b) && allowedAtKnee(both)) {
          ordered(new Proposal.Change(one, a), new Proposal.Change(other, b), both)
              .ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private boolean extends2(Adjustment one, double a, Adjustment other, double b) {
    return extension.allows(one.kind(), a, prostheticKnee)
        && extension.allows(other.kind(), b, prostheticKnee);
  }

  /** The logarithm of the probability after none, one or two changes. */
  double log(List<Proposal.Change> changes) {
    int one = changes.isEmpty() ? 0 : index(changes.get(0).of());
    int other = changes.size() < 2 ? 0 : index(changes.get(1).of());
    return log(
        new Change2(
            one,
            changes.isEmpty() ? 0 : changes.get(0).by(),
            other,
            changes.size() < 2 ? 0 : changes.get(1).by()));
  }

  /** The order in which the first alone is allowed, and the better one where both are. */
  private Optional<Candidate> ordered(Proposal.Change one, Proposal.Change other, Change2 both) {
    Change2 first = new Change2(both.one(), both.a(), 0, 0);
    Change2 second = new Change2(both.other(), both.b(), 0, 0);
    boolean oneMay = allowedAtKnee(first) && allowedNext(first, both);
    boolean otherMay = allowedAtKnee(second) && allowedNext(second, both);
    if (!oneMay && !otherMay) {
      return Optional.empty();
    }
    boolean oneFirst = oneMay && (!otherMay || log(first) >= log(second));
    List<Proposal.Change> order = oneFirst ? List.of(one, other) : List.of(other, one);
    return Optional.of(new Candidate(order, log(both), sizeMm(order)));
  }

  private Candidate candidate(List<Proposal.Change> one) {
    return new Candidate(one, log(one), sizeMm(one));
  }

  private boolean allowed(Adjustment one, double by) {
    return extension.allows(one.kind(), by, prostheticKnee)
        && allowedAtKnee(new Change2(index(one), by, 0, 0));
  }

  private boolean allowedAtKnee(Change2 by) {
    if (guard.isEmpty()) {
      return true;
    }
    int offset = knee.orElseThrow();
    return guard.get().allows(mean(by, offset), sd(by, offset));
  }

  private boolean allowedNext(Change2 first, Change2 both) {
    if (guard.isEmpty()) {
      return true;
    }
    int offset = knee.orElseThrow();
    double behind = KneeGuard.behind(mean(first, offset), sd(first, offset));
    return guard.get().allowsNext(behind, mean(both, offset), sd(both, offset));
  }

  private static double sizeMm(List<Proposal.Change> changes) {
    double sum = 0;
    for (Proposal.Change change : changes) {
      sum += Math.abs(change.by()) * (change.of().kind().isAngle() ? DEGREE_MM : 1);
    }
    return sum;
  }

  private static Optional<Candidate> smallestOfBest(List<Candidate> all) {
    Optional<Candidate> best = all.stream().max(Comparator.comparing(Candidate::logProbability));
    return best.flatMap(
        most ->
            all.stream()
                .filter(c -> asGood(c.logProbability(), most.logProbability()))
                .min(Comparator.comparing(Candidate::sizeMm)));
  }

  private static boolean asGood(double log, double best) {
    return log > best - 0.05 && Math.exp(best) - Math.exp(log) <= AS_GOOD;
  }

  private static List<Candidate> sorted(List<Candidate> all) {
    return all.stream().sorted(Comparator.comparing(Candidate::logProbability).reversed()).toList();
  }

  /** Amounts of two parameters of the model; 0 of the second for one alone. */
  private record Change2(int one, double a, int other, double b) {}

  private int index(Adjustment of) {
    return 1 + model.kinds().indexOf(of.kind());
  }

  private double mean(Change2 by, int j) {
    return model.mean(0, j)
        + by.a() * model.mean(by.one(), j)
        + (by.b() == 0 ? 0 : by.b() * model.mean(by.other(), j));
  }

  private double sd(Change2 by, int j) {
    int one = by.one();
    double variance =
        model.covariance(0, 0, j)
            + 2 * by.a() * model.covariance(0, one, j)
            + by.a() * by.a() * model.covariance(one, one, j);
    if (by.b() != 0) {
      int other = by.other();
      variance +=
          2 * by.b() * model.covariance(0, other, j)
              + by.b() * by.b() * model.covariance(other, other, j)
              + 2 * by.a() * by.b() * model.covariance(one, other, j);
    }
    return Math.sqrt(variance);
  }

  private double log(Change2 by) {
    double sum = 0;
    for (int j = 0; j < bounds.lowest().length; j++) {
      double mean = mean(by, j);
      double sd = sd(by, j);
      sum += logWithin((bounds.lowest()[j] - mean) / sd, (bounds.highest()[j] - mean) / sd);
    }
    return sum;
  }

  private static double logWithin(double from, double to) {
    double nearest = Math.max(from, -to);
    return nearest > FAR_SD
        ? -nearest * nearest / 2 - Math.log(nearest)
        : Math.log(
            Math.max(
                Double.MIN_NORMAL,
                from > 0
                    ? NORMAL.survivalProbability(from) - NORMAL.survivalProbability(to)
                    : NORMAL.cumulativeProbability(to) - NORMAL.cumulativeProbability(from)));
  }
}
