package caryatid.alignment;

import caryatid.loadline.KneeSafety;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.StandRemark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A remark about a state. One that holds for several stands is given once, with the arguments of
 * the first of them.
 *
 * @param remark the remark
 * @param stands how many stands it holds for; 0 if it is about the state
 */
public record GroupedRemark(Remark remark, int stands) {

  private static final int BEFORE_REMEDY = 5;

  /**
   * All remarks on a state and its stands, the weightiest first. Where a prosthetic knee may bend,
   * none of them advises to measure again.
   */
  public static List<GroupedRemark> of(AlignmentState state) {
    List<GroupedRemark> said = new ArrayList<>();
    boolean advise = !KneeSafety.mayBend(state.remarks());
    state.remarks().stream()
        .map(remark -> advise ? remark : withoutRemedy(remark))
        .forEach(remark -> said.add(new GroupedRemark(remark, 0)));
    boolean several = state.stands().size() > 1;
    Set<Topic> topics = new LinkedHashSet<>();
    if (several) {
      said.addAll(setByHand(state.stands()));
      topics.add(StandRemark.SET_BY_HAND);
    }
    for (Stand stand : state.stands()) {
      Set<Topic> fresh = topics(stand);
      fresh.removeAll(topics);
      stand.remarks().stream()
          .distinct()
          .filter(remark -> fresh.contains(remark.topic()))
          .forEach(remark -> said.add(new GroupedRemark(remark, stands(state, remark.topic()))));
      topics.addAll(fresh);
    }
    return said.stream().sorted(Comparator.comparing(s -> s.remark.topic().weight())).toList();
  }

  /** Each stand has a stretch of its own, so that one sentence for all would be wrong. */
  private static List<GroupedRemark> setByHand(List<Stand> stands) {
    List<GroupedRemark> said = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      List<Argument> led = new ArrayList<>();
      led.add(Argument.count(i + 1));
      led.add(Argument.text(stands.get(i).recording().name()));
      for (Remark remark : stands.get(i).remarks()) {
        if (remark.topic() == StandRemark.SET_BY_HAND) {
          led.addAll(remark.arguments());
          said.add(new GroupedRemark(new Remark(StateRemark.STRETCH_BY_HAND, led), 0));
        }
      }
    }
    return said;
  }

  private static Remark withoutRemedy(Remark remark) {
    return remark.topic() == StateRemark.TOLERANCE_TOO_NARROW
        ? new Remark(
            StateRemark.TOLERANCE_UNDECIDABLE, remark.arguments().subList(0, BEFORE_REMEDY))
        : remark;
  }

  private static int stands(AlignmentState state, Topic topic) {
    return (int) state.stands().stream().filter(stand -> topics(stand).contains(topic)).count();
  }

  private static Set<Topic> topics(Stand stand) {
    return stand.remarks().stream()
        .map(Remark::topic)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
