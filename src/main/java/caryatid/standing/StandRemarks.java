package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.ForceUnit;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.SampleStatistics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Remarks on a stand that do not prevent a result, in the order of their weight. */
final class StandRemarks {
  private final Standing standing;
  private final List<LoadSignals> quiet;
  private final StandAnalysis.Conditions conditions;
  private final List<Remark> remarks = new ArrayList<>();

  private StandRemarks(
      Standing standing, List<LoadSignals> quiet, StandAnalysis.Conditions conditions) {
    this.standing = standing;
    this.quiet = quiet;
    this.conditions = conditions;
  }

  static List<Remark> of(
      Standing standing,
      List<LoadSignals> quiet,
      StandAnalysis.Conditions conditions,
      Limits limits) {
    StandRemarks found = new StandRemarks(standing, quiet, conditions);
    found.load();
    found.sway();
    found.force();
    found.remarks.addAll(Sizes.of(quiet, standing.rateHz()));
    found.remarks.addAll(Wandering.of(quiet, standing.stretch(), limits));
    found.memory();
    found.stretch();
    found.shear();
    return List.copyOf(found.remarks);
  }

  private void load() {
    for (Side side : conditions.prosthetic()) {
      Optional<Estimate> share = Optional.ofNullable(standing.share().get(side));
      share
          .filter(s -> s.value() < StandLimits.LITTLE_SHARE)
          .ifPresent(
              s ->
                  say(
                      StandRemark.PROSTHESIS_LITTLE_LOADED,
                      Argument.term(side),
                      Argument.of(100 * s.value(), Unit.PERCENT)));
    }
    standing.share().forEach(this::nearlyWhole);
    if (standing.share().isEmpty()) {
      boolean force = standing.loads().stream().anyMatch(load -> load.upN().isPresent());
      say(force ? StandRemark.SHARE_UNKNOWN : StandRemark.SHARE_WITHOUT_FORCE);
    }
    standing.load(LoadLineOwner.WHOLE_BODY).flatMap(MeanLoad::upN).ifPresent(this::weigh);
  }

  private void nearlyWhole(Side side, Estimate share) {
    if (share.value() > StandLimits.NEARLY_WHOLE) {
      say(
          StandRemark.NEARLY_WHOLE_LOAD,
          Argument.term(side),
          Argument.of(100 * share.value(), Unit.PERCENT));
    }
  }

  private void weigh(Estimate upN) {
    double massKg = upN.value() / ForceUnit.STANDARD_GRAVITY;
    double statedKg = conditions.bodyMassKg().orElse(massKg);
    if (Math.abs(massKg / statedKg - 1) > StandLimits.MASS_DIFFERS) {
      say(
          StandRemark.BODY_MASS_DIFFERS,
          Argument.of(massKg, Unit.KG),
          Argument.of(statedKg, Unit.KG));
    }
  }

  private void sway() {
    for (Sway sway : standing.sway()) {
      double most =
          Math.max(
              sway.both().map(Sway.BothDirections::sdRightMm).orElse(0.0), sway.sdAnteriorMm());
      if (sway.lowPassHz().isEmpty() && most < StandLimits.LITTLE_SD_MM) {
        say(StandRemark.HARDLY_ANY_SWAY, Argument.term(sway.of()), Argument.of(most, Unit.MM));
      }
      if (sway.lowPassHz().isEmpty() && most > StandLimits.MUCH_SD_MM) {
        say(StandRemark.MUCH_SWAY, Argument.term(sway.of()), Argument.of(most, Unit.MM));
      }
    }
  }

  private void force() {
    for (LoadSignals signals : quiet) {
      double varies =
          SampleStatistics.standardDeviation(signals.upN) / SampleStatistics.mean(signals.upN);
      double plain =
          signals.of == LoadLineOwner.WHOLE_BODY
              ? StandLimits.BODY_VARIES
              : StandLimits.FOOT_VARIES;
      if (varies > plain) {
        say(
            StandRemark.FORCE_VARIES,
            Argument.term(signals.of),
            Argument.of(100 * varies, Unit.PERCENT),
            Argument.of(100 * plain, Unit.PERCENT));
      }
    }
  }

  /**
   * Said of every stand: what is slower than the stretch does not show in it, and a stretch that
   * happens to hide its slow part states the smaller uncertainty.
   */
  private void memory() {
    double fewest =
        standing.sway().stream().mapToDouble(StandRemarks::effective).min().orElseThrow();
    say(
        StandRemark.SLOWER_UNSEEN,
        Argument.of(standing.stretch().durationS(), Unit.S),
        Argument.count(Math.round(fewest)));
  }

  private static double effective(Sway sway) {
    return sway.both()
        .map(both -> Math.min(both.effectiveRight(), sway.effectiveAnterior()))
        .orElse(sway.effectiveAnterior());
  }

  private void stretch() {
    QuietStretch stretch = standing.stretch();
    if (stretch.size() < StandLimits.SHORT_S * standing.rateHz()) {
      say(
          StandRemark.SHORT_STRETCH,
          Argument.of(stretch.durationS(), Unit.S),
          Argument.of(StandLimits.SHORT_S, Unit.S));
    }
    if (standing.rateHz() < StandLimits.LOW_HZ) {
      say(
          StandRemark.LOW_RATE,
          Argument.of(standing.rateHz(), Unit.HZ),
          Argument.of(StandLimits.LOW_HZ, Unit.HZ));
    }
    if (stretch.byHand()) {
      say(
          StandRemark.SET_BY_HAND,
          Argument.of(stretch.fromS(), Unit.S),
          Argument.of(stretch.toS(), Unit.S));
    }
  }

  private void shear() {
    standing.load(LoadLineOwner.WHOLE_BODY).flatMap(MeanLoad::lean).ifPresent(this::shear);
  }

  private void shear(ForceInclination lean) {
    double right = lean.rightPerUp().value();
    double anterior = lean.anteriorPerUp().value();
    double most = Math.max(Math.abs(right), Math.abs(anterior));
    if (most > StandLimits.SHEAR_OFFSET) {
      say(StandRemark.SHEAR_OFFSET, Argument.of(Math.toDegrees(StrictMath.atan(most)), Unit.DEG));
    }
  }

  private void say(StandRemark topic, Argument... arguments) {
    remarks.add(Remark.of(topic, arguments));
  }
}
