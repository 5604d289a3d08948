package caryatid.alignment;

import caryatid.geometry.Side;
import caryatid.loadline.Doubts;
import caryatid.loadline.Judgement;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Offset;
import caryatid.remark.Remark;
import caryatid.sheet.TrialSheet;
import java.util.ArrayList;
import java.util.List;

/** Combines the stands of one alignment state and judges them against the sheet's targets. */
public final class StateAnalysis {
  private StateAnalysis() {}

  /**
   * The state of stands between which nothing was changed.
   *
   * @param stands at least one, all with the same trial sheet
   * @param doubts what differs between stands, where one stand cannot show it
   * @throws IllegalArgumentException if there is no stand
   */
  public static AlignmentState of(List<Stand> stands, Doubts doubts) {
    if (stands.isEmpty()) {
      throw new IllegalArgumentException("a state without a stand");
    }
    TrialSheet trial = stands.get(0).trial();
    List<StateOffset> all =
        stands.get(0).offsets().stream().map(o -> state(o, stands, doubts)).toList();
    List<Offset> offsets = all.stream().map(StateOffset::offset).toList();
    Judgement judged = Judgement.of(offsets, trial.targets(), trial.stance(), trial.rule());
    List<Side> knees = trial.level().prostheticKnee() ? trial.side().sides() : List.of();
    List<Remark> remarks =
        new ArrayList<>(KneeSafety.of(offsets, stands.get(0).landmarks(), knees));
    remarks.addAll(StateRemarks.of(stands, trial, judged, all));
    return new AlignmentState(stands, all, judged.findings(), judged.withheld(), remarks);
  }

  private static StateOffset state(Offset first, List<Stand> stands, Doubts doubts) {
    List<Offset> same = stands.stream().map(stand -> same(first, stand)).toList();
    Repeats repeats =
        new Repeats(same, doubts.repeatMm(first.plane()), doubts.repeatDegreesOfFreedom());
    Offset offset =
        new Offset(
            first.plane(),
            first.side(),
            first.landmark(),
            first.of(),
            first.kind(),
            repeats.mean());
    double longestS =
        stands.stream().mapToDouble(s -> s.standing().stretch().durationS()).max().orElseThrow();
    return new StateOffset(offset, repeats.smallestDifference(), Advising.on(repeats, longestS));
  }

  private static Offset same(Offset wanted, Stand stand) {
    return stand.offsets().stream()
        .filter(o -> o.plane() == wanted.plane() && o.side() == wanted.side())
        .filter(o -> o.landmark().equals(wanted.landmark()))
        .filter(o -> o.of() == wanted.of() && o.kind() == wanted.kind())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("stands differ in their landmarks"));
  }
}
