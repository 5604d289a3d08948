package caryatid.alignment;

import caryatid.geometry.Side;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.Finding;
import caryatid.loadline.Target;
import caryatid.loadline.TargetComparison;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/** Remarks that concern the whole alignment state. */
final class StateRemarks {
  /** Load shares further apart are not comparable (common practice, no source). */
  private static final double SHARES_APART = 0.05;

  private StateRemarks() {}

  static List<Remark> of(
      List<Stand> stands, TrialSheet trial, TargetComparison judged, List<StateOffset> offsets) {
    List<Remark> remarks = new ArrayList<>(rule(trial.rule()));
    for (Side side : trial.side().sides()) {
      DoubleSummaryStatistics shares = shares(stands, side);
      if (shares.getMax() - shares.getMin() > SHARES_APART) {
        remarks.add(
            Remark.of(
                StateRemark.SHARES_DIFFER,
                Argument.term(side),
                Argument.of(100 * shares.getMin(), Unit.PERCENT),
                Argument.of(100 * shares.getMax(), Unit.PERCENT)));
      }
    }
    judged.findings().stream()
        .filter(f -> trial.rule().guarded() && !f.decidable())
        .forEach(f -> remarks.add(tooNarrow(f, offsets)));
    answers(StateRemark.BEYOND_LIMIT, trial.beyondLimits()).ifPresent(remarks::add);
    answers(StateRemark.AS_MEANT, trial.otherAnswers()).ifPresent(remarks::add);
    remarks.add(
        Remark.of(stands.size() == 1 ? StateRemark.ONE_STAND : StateRemark.LANDMARKS_SHARED));
    judged.findings().forEach(f -> remarks.add(smallestDifference(f, offsets)));
    return remarks;
  }

  private static Optional<Remark> answers(StateRemark topic, List<String> answers) {
    return answers.isEmpty()
        ? Optional.empty()
        : Optional.of(Remark.of(topic, Argument.text(String.join("; ", answers))));
  }

  private static List<Remark> rule(DecisionRule rule) {
    if (!rule.guarded()) {
      return List.of(Remark.of(StateRemark.SIMPLE_RULE));
    }
    return rule.equals(DecisionRule.USUAL)
        ? List.of()
        : List.of(
            Remark.of(
                StateRemark.OTHER_CONFIDENCE, Argument.of(100 * rule.confidence(), Unit.PERCENT)));
  }

  private static Remark smallestDifference(Finding finding, List<StateOffset> offsets) {
    Target target = finding.target();
    return Remark.of(
        StateRemark.SMALLEST_DIFFERENCE,
        Argument.term(target.plane()),
        Argument.text(target.landmark()),
        Argument.term(target.side()),
        Argument.of(of(finding, offsets).smallestDifferenceMm(), Unit.MM));
  }

  private static StateOffset of(Finding finding, List<StateOffset> offsets) {
    return offsets.stream()
        .filter(o -> o.offset().equals(finding.offset()))
        .findFirst()
        .orElseThrow();
  }

  /** Says what would help most, and how far. */
  private static Remark tooNarrow(Finding finding, List<StateOffset> offsets) {
    Target target = finding.target();
    PrecisionHint hint = of(finding, offsets).hint().orElseThrow();
    return Remark.of(
        StateRemark.TOLERANCE_TOO_NARROW,
        Argument.term(target.plane()),
        Argument.text(target.landmark()),
        Argument.term(target.side()),
        Argument.of((target.highestMm() - target.lowestMm()) / 2, Unit.MM),
        Argument.of(hint.halfWidthMm(), Unit.MM),
        Argument.term(hint.remedy()),
        Argument.of(hint.halfWidthThenMm(), Unit.MM));
  }

  private static DoubleSummaryStatistics shares(List<Stand> stands, Side side) {
    return stands.stream()
        .map(stand -> Optional.ofNullable(stand.standing().share().get(side)))
        .flatMap(Optional::stream)
        .mapToDouble(Estimate::value)
        .summaryStatistics();
  }
}
