package caryatid.advice;

import caryatid.advice.OffsetChances.Amounts;
import caryatid.advice.OffsetChances.ToleranceBounds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * All single changes and all pairs of two, on the steps of their adjustments, by how probably they
 * bring every offset within; of each kind or pair of kinds the smallest of the best. Each offset by
 * itself here; {@link Advisor} finds the joint probability of those that lead.
 */
final class Candidates {
  /** An amount counts as good as the best if its probability is at most this much lower. */
  private static final double AS_GOOD = 0.01;

  private static final double DEGREE_MM = 7.2;

  private final WearerModel model;
  private final OffsetChances chances;
  private final List<Adjustment> adjustments;
  private final Extension extension;
  private final boolean prostheticKnee;
  private final OptionalInt knee;
  private final Optional<KneeGuard> guard;

  /**
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
    this.chances = new OffsetChances(model, bounds);
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
        Amounts both = Amounts.of(index(one), a).and(index(other), b);
        if (leaveExtension(one, a, other, b) && allowedAtKnee(both)) {
          ordered(new Proposal.Change(one, a), new Proposal.Change(other, b), both)
              .ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private boolean leaveExtension(Adjustment one, double a, Adjustment other, double b) {
    return extension.allows(one.kind(), a, prostheticKnee)
        && extension.allows(other.kind(), b, prostheticKnee);
  }

  /** The logarithm of the probability after none, one or two changes. */
  double log(List<Proposal.Change> changes) {
    if (changes.isEmpty()) {
      return chances.log(Amounts.NONE);
    }
    Proposal.Change one = changes.get(0);
    Amounts first = Amounts.of(index(one.of()), one.by());
    if (changes.size() == 1) {
      return chances.log(first);
    }
    Proposal.Change other = changes.get(1);
    return chances.log(first.and(index(other.of()), other.by()));
  }

  /** The order in which the first alone is allowed, and the better one where both are. */
  private Optional<Candidate> ordered(Proposal.Change one, Proposal.Change other, Amounts both) {
    Amounts first = both.first();
    Amounts second = both.second();
    boolean oneMay = allowedAtKnee(first) && allowedNext(first, both);
    boolean otherMay = allowedAtKnee(second) && allowedNext(second, both);
    if (!oneMay && !otherMay) {
      return Optional.empty();
    }
    boolean oneFirst = oneMay && (!otherMay || chances.log(first) >= chances.log(second));
    List<Proposal.Change> order = oneFirst ? List.of(one, other) : List.of(other, one);
    return Optional.of(new Candidate(order, chances.log(both), sizeMm(order)));
  }

  private Candidate candidate(List<Proposal.Change> one) {
    return new Candidate(one, log(one), sizeMm(one));
  }

  private boolean allowed(Adjustment one, double by) {
    return extension.allows(one.kind(), by, prostheticKnee)
        && allowedAtKnee(Amounts.of(index(one), by));
  }

  private boolean allowedAtKnee(Amounts by) {
    if (guard.isEmpty()) {
      return true;
    }
    int offset = knee.orElseThrow();
    return guard.get().allows(chances.mean(by, offset), chances.sd(by, offset));
  }

  private boolean allowedNext(Amounts first, Amounts both) {
    if (guard.isEmpty()) {
      return true;
    }
    int offset = knee.orElseThrow();
    double behind = KneeGuard.behind(chances.mean(first, offset), chances.sd(first, offset));
    return guard.get().allowsNext(behind, chances.mean(both, offset), chances.sd(both, offset));
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

  private int index(Adjustment of) {
    return 1 + model.kinds().indexOf(of.kind());
  }
}
