package caryatid.alignment;

import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.Finding;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.TargetComparison;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
  public static AlignmentState of(List<Stand> stands, AssumedUncertainties doubts) {
    return of(stands, doubts, List.of());
  }

  /**
   * The same, the wearer's earlier states telling how far their stands scatter.
   *
   * @param stands at least one, all with the same trial sheet
   * @param doubts what differs between stands, where one stand cannot show it
   * @param before earlier states of the same wearer, whatever their alignment
   * @throws IllegalArgumentException if there is no stand
   */
  public static AlignmentState of(
      List<Stand> stands, AssumedUncertainties doubts, List<EarlierState> before) {
    if (stands.isEmpty()) {
      throw new IllegalArgumentException("a state without a stand");
    }
    TrialSheet trial = stands.get(0).trial();
    List<StateOffset> all =
        stands.get(0).offsets().stream().map(o -> state(o, stands, doubts, before)).toList();
    List<Offset> offsets = all.stream().map(StateOffset::offset).toList();
    TargetComparison judged =
        TargetComparison.of(
            offsets,
            trial.targets(),
            trial.stance(),
            stands.get(0).standing().loads(),
            trial.rule());
    List<Side> knees = trial.level().prostheticKnee() ? trial.side().sides() : List.of();
    List<Remark> remarks =
        new ArrayList<>(KneeSafety.of(offsets, stands.get(0).landmarks(), knees));
    for (Finding finding : judged.findings()) {
      CombinedStands repeats = repeats(finding.offset(), stands, doubts, before);
      if (repeats.disagree()) {
        remarks.add(scatter(StateRemark.STANDS_DISAGREE, finding, repeats, repeats.spreadMm()));
      }
      if (repeats.needMore()) {
        remarks.add(scatter(StateRemark.FIVE_STANDS, finding, repeats, repeats.scatter().ownMm()));
      }
    }
    remarks.addAll(StateRemarks.of(stands, trial, judged, all));
    return new AlignmentState(stands, all, judged.findings(), judged.withheld(), remarks);
  }

  private static StateOffset state(
      Offset first, List<Stand> stands, AssumedUncertainties doubts, List<EarlierState> before) {
    CombinedStands repeats = repeats(first, stands, doubts, before);
    Offset offset = new Offset(first.at(), first.of(), first.kind(), repeats.mean());
    return new StateOffset(offset, repeats.smallestDifference(), PrecisionHints.on(repeats));
  }

  private static CombinedStands repeats(
      Offset wanted, List<Stand> stands, AssumedUncertainties doubts, List<EarlierState> before) {
    List<Offset> same = stands.stream().map(stand -> same(wanted, stand)).toList();
    return new CombinedStands(same, doubts, before);
  }

  private static Remark scatter(
      StateRemark topic, Finding finding, CombinedStands repeats, OptionalDouble spreadMm) {
    Target target = finding.target();
    return Remark.of(
        topic,
        Argument.term(target.plane()),
        Argument.text(target.landmark()),
        Argument.term(target.side()),
        Argument.of(spreadMm.orElseThrow(), Unit.MM),
        Argument.of(repeats.scatter().usualMm(), Unit.MM));
  }

  private static Offset same(Offset wanted, Stand stand) {
    return stand.offsets().stream()
        .filter(wanted::isSameAs)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("stands differ in their landmarks"));
  }
}
