package caryatid.views;

import caryatid.advice.Advice;
import caryatid.advice.Advisor;
import caryatid.advice.ChangeKind;
import caryatid.advice.MeasuredState;
import caryatid.advice.Proposal;
import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.geometry.Side;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What was advised after a stand, by what the record held then and by this version's method, and
 * what was changed before the next one.
 *
 * @param before number of the stand's entry
 * @param stand number of the next stand's entry
 * @param advised the proposal that was followed, or the first one; empty if nothing was advised
 * @param made what was set otherwise, by how much, in each kind's unit
 */
public record FollowedAdvice(
    int before, int stand, Optional<Proposal> advised, Map<ChangeKind, Double> made) {
  private static final double SAME = 1e-9;

  /** How what was changed goes with what was advised. */
  public enum HowFollowed {
    /** Nothing was advised. */
    NOTHING_ADVISED,
    /** What was advised, and nothing else. */
    AS_ADVISED,
    /** The same change by another amount. */
    OTHER_AMOUNT,
    /** Nothing was changed. */
    NOTHING_CHANGED,
    SOMETHING_ELSE
  }

  public FollowedAdvice {
    made = Map.copyOf(made);
  }

  /** How it was followed. */
  public HowFollowed how() {
    if (advised.isEmpty()) {
      return HowFollowed.NOTHING_ADVISED;
    }
    if (made.isEmpty()) {
      return HowFollowed.NOTHING_CHANGED;
    }
    Proposal.Change first = advised.get().first();
    Double by = made.get(first.of().kind());
    if (by == null || made.size() > 1 || Math.signum(by) != Math.signum(first.by())) {
      return HowFollowed.SOMETHING_ELSE;
    }
    return Math.abs(by - first.by()) < SAME ? HowFollowed.AS_ADVISED : HowFollowed.OTHER_AMOUNT;
  }

  /** What was made, in the order of the kinds. */
  public Map<ChangeKind, Double> inOrder() {
    return new TreeMap<>(made);
  }

  /**
   * What followed each stand but the newest that can be learnt from.
   *
   * @param measured these stands, oldest first
   */
  static List<FollowedAdvice> of(
      List<Entry> valid,
      Map<Integer, AlignmentState> states,
      Side leg,
      List<MeasuredState> measured) {
    List<FollowedAdvice> followed = new ArrayList<>();
    for (int i = 1; i < measured.size(); i++) {
      MeasuredState before = measured.get(i - 1);
      MeasuredState after = measured.get(i);
      Map<ChangeKind, Double> made = made(before, after);
      Advice then =
          Advisor.advise(new RecordSituation(upTo(valid, before), states, leg).situation());
      followed.add(new FollowedAdvice(before.name(), after.name(), advised(then, made), made));
    }
    return followed;
  }

  private static List<Entry> upTo(List<Entry> valid, MeasuredState stand) {
    int index = 0;
    while (valid.get(index).number() != stand.name()) {
      index++;
    }
    return valid.subList(0, index + 1);
  }

  private static Map<ChangeKind, Double> made(MeasuredState before, MeasuredState after) {
    Map<ChangeKind, Double> made = new EnumMap<>(ChangeKind.class);
    for (Map.Entry<ChangeKind, Double> set : after.settings().entrySet()) {
      double by = set.getValue() - before.settings().getOrDefault(set.getKey(), set.getValue());
      if (Math.abs(by) > SAME) {
        made.put(set.getKey(), by);
      }
    }
    return made;
  }

  private static Optional<Proposal> advised(Advice then, Map<ChangeKind, Double> made) {
    return then.proposals().stream()
        .filter(proposal -> made.keySet().equals(Set.of(proposal.first().of().kind())))
        .findFirst()
        .or(() -> then.proposals().stream().findFirst());
  }
}
