package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.ForceUnit;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The share of the load that each side bears: from both feet's plates, or from one and the body
 * mass.
 */
final class LoadShare {
  /**
   * Standard uncertainty of the body's weight, as a fraction of it: scales, clothes and local
   * gravity (common practice, no source).
   */
  private static final double WEIGHT_FRACTION = 0.01;

  private LoadShare() {}

  static Map<Side, Estimate> of(
      List<LoadSignals> all, List<MeanLoad> loads, StandAnalysis.Conditions conditions) {
    if (all.size() == 3) {
      return ofBoth(all, new MeanLoads(conditions.accuracy()));
    }
    Optional<Estimate> force = loads.get(0).upN();
    LoadLineOwner of = loads.get(0).of();
    if (loads.size() != 1
        || of == LoadLineOwner.WHOLE_BODY
        || force.isEmpty()
        || conditions.bodyMassKg().isEmpty()) {
      return Map.of();
    }
    Estimate share = ofWeight(force.get(), conditions.bodyMassKg().getAsDouble());
    Side side = of == LoadLineOwner.LEFT_FOOT ? Side.LEFT : Side.RIGHT;
    return Map.of(side, share);
  }

  private static Map<Side, Estimate> ofBoth(List<LoadSignals> all, MeanLoads means) {
    LoadSignals left = all.get(0);
    LoadSignals right = all.get(1);
    LoadSignals whole = all.get(2);
    return Map.of(
        Side.LEFT, means.share(left, right, whole), Side.RIGHT, means.share(right, left, whole));
  }

  private static Estimate ofWeight(Estimate force, double bodyMassKg) {
    Estimate share = force.times(1 / (bodyMassKg * ForceUnit.STANDARD_GRAVITY));
    return share.with(
        new Contribution(
            new Source(Cause.BODY_MASS, ""),
            WEIGHT_FRACTION,
            share.value(),
            Contribution.STATED_DEGREES));
  }

  /** A foot cannot bear more than the whole body weighs. */
  static void refuseMoreThanWhole(Map<Side, Estimate> share, String file) throws BadInput {
    for (Map.Entry<Side, Estimate> borne : share.entrySet()) {
      if (borne.getValue().value() - borne.getValue().expanded(Estimate.COVERAGE) > 1) {
        throw new BadInput(
            Problem.at(
                Place.of(file),
                StandProblem.MORE_THAN_WHOLE,
                Argument.term(borne.getKey()),
                Argument.of(100 * borne.getValue().value(), Unit.PERCENT)));
      }
    }
  }

  static void refuseUnloaded(
      Map<Side, Estimate> share, StandAnalysis.Conditions conditions, Limits limits, String file)
      throws BadInput {
    for (Side side : conditions.prosthetic()) {
      Optional<Estimate> borne = Optional.ofNullable(share.get(side));
      if (borne.isPresent() && borne.get().value() < limits.leastShare()) {
        throw new BadInput(
            Problem.at(
                Place.of(file),
                StandProblem.PROSTHESIS_UNLOADED,
                Argument.term(side),
                Argument.of(100 * limits.leastShare(), Unit.PERCENT),
                Argument.of(100 * borne.get().value(), Unit.PERCENT)));
      }
    }
  }
}
