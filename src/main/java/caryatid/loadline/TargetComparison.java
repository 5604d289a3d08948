package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.uncertainty.Conformity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Offsets against targets.
 *
 * @param findings one for each target that could be compared
 * @param withheld the other targets, and why
 */
public record TargetComparison(List<Finding> findings, List<UnjudgedTarget> withheld) {
  public TargetComparison {
    findings = List.copyOf(findings);
    withheld = List.copyOf(withheld);
  }

  /**
   * Judges offsets. A target is compared with the vertical load line it is meant for, and with no
   * other.
   *
   * @param offsets of one alignment state
   * @param targets what is recommended
   * @param stance which foot stood on which plate
   * @param loads of one of its stands: what the plates measured
   */
  public static TargetComparison of(
      List<Offset> offsets,
      List<Target> targets,
      Stance stance,
      List<MeanLoad> loads,
      DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    List<UnjudgedTarget> withheld = new ArrayList<>();
    for (Target target : targets) {
      Optional<Offset> offset = offset(offsets, target);
      offset.ifPresent(o -> findings.add(finding(o, target, rule)));
      if (offset.isEmpty()) {
        withheld.add(new UnjudgedTarget(target, reason(target, stance, loads)));
      }
    }
    return new TargetComparison(findings, withheld);
  }

  private static Optional<Offset> offset(List<Offset> offsets, Target target) {
    return offsets.stream()
        .filter(o -> o.kind() == LoadLineMethod.VERTICAL && o.of() == target.lineOf())
        .filter(o -> o.at().equals(target.at()))
        .findFirst();
  }

  private static Finding finding(Offset offset, Target target, DecisionRule rule) {
    double low = target.lowestMm();
    double high = target.highestMm();
    double mm = offset.mm().value();
    Conformity conformity = Conformity.of(offset.mm(), low, high);
    return new Finding(
        offset,
        target,
        conformity.within(),
        Conformity.decidable(offset.mm(), low, high, rule.confidence()),
        rule.verdict(mm >= low && mm <= high, conformity));
  }

  private static Remark reason(Target target, Stance stance, List<MeanLoad> loads) {
    boolean whole = target.line() == Target.MeantFor.WHOLE_BODY;
    boolean together = stance instanceof Stance.BothFeetOnOnePlate;
    if (target.plane() == Plane.FRONTAL && (whole || together)) {
      return Remark.of(LoadLineRemark.FRONTAL_OF_WHOLE_BODY);
    }
    if (!whole && together) {
      return Remark.of(LoadLineRemark.OWN_LINE_UNKNOWN);
    }
    if (whole && stance instanceof Stance.ProstheticFootOnPlate) {
      return Remark.of(LoadLineRemark.WHOLE_BODY_LINE_UNKNOWN);
    }
    if (loads.stream()
        .anyMatch(l -> l.of() == target.lineOf() && l.copMm(target.plane()).isEmpty())) {
      return Remark.of(LoadLineRemark.NOT_MEASURED);
    }
    return Remark.of(
        LoadLineRemark.NOT_MARKED,
        Argument.text(target.landmark()),
        Argument.term(target.side()),
        Argument.term(target.plane()));
  }
}
