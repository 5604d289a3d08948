package caryatid.alignment;

import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineCheck;
import caryatid.loadline.LoadLineResult;
import caryatid.loadline.StanceConditions;
import caryatid.loadline.Target;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.Footwear;
import caryatid.sheet.Hands;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.Notes;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Stands of a right transfemoral prosthesis for tests; invented. */
final class Stands {
  private static final Provenance BYTES = new Provenance("made", 0, "0".repeat(128));

  private static final LandmarkEntry KNEE =
      new LandmarkEntry(
          "knee",
          LandmarkKind.KNEE_CENTRE,
          Side.RIGHT,
          Optional.of(new LandmarkEntry.MeasuredDistance(0, Optional.empty(), false, 0)),
          Optional.empty(),
          490,
          Optional.empty());

  private Stands() {}

  static Stand of(Standing standing, Landmark landmark, StanceConditions how, Target... targets)
      throws BadInput {
    LoadLineResult past = LoadLineCheck.evaluate(standing, List.of(landmark), how);
    return new Stand(
        BYTES,
        BYTES,
        Optional.empty(),
        trial(how, targets),
        List.of(landmark),
        standing,
        past.offsets(),
        past.moments(),
        past.remarks());
  }

  /** The same standing with what the right side bears of the load. */
  static Standing bearing(Standing s, double share) {
    return new Standing(
        s.stretch(),
        s.rateHz(),
        s.loads(),
        s.sway(),
        s.placements(),
        Map.of(Side.RIGHT, Estimate.exact(share)),
        s.remarks());
  }

  /** The same stand, its sheet asking for another rule. */
  static Stand ruled(Stand s, DecisionRule rule) {
    TrialSheet t = s.trial();
    TrialSheet ruled =
        new TrialSheet(
            t.wearer(),
            t.at(),
            t.side(),
            t.level(),
            t.bodyMassKg(),
            t.stance(),
            t.otherFoot(),
            t.hands(),
            t.knee(),
            t.ankleAxis(),
            t.footwear(),
            t.stanceWidthMm(),
            t.toeOutRad(),
            t.minutesWalked(),
            t.components(),
            t.landmarks(),
            t.targets(),
            t.stretches(),
            t.doubts(),
            rule,
            GeometryLimits.USUAL,
            List.of(),
            t.notes());
    return with(s, ruled, s.remarks());
  }

  /** The same stand with these remarks alone. */
  static Stand remarking(Stand s, Remark... remarks) {
    return with(s, s.trial(), List.of(remarks));
  }

  private static Stand with(Stand s, TrialSheet trial, List<Remark> remarks) {
    return new Stand(
        s.recording(),
        s.sheet(),
        s.description(),
        trial,
        s.landmarks(),
        s.standing(),
        s.offsets(),
        s.moments(),
        remarks);
  }

  private static TrialSheet trial(StanceConditions how, Target... targets) {
    Optional<String> nothing = Optional.empty();
    return new TrialSheet(
        "T0",
        OffsetDateTime.parse("2026-01-01T00:00Z"),
        ProstheticSide.RIGHT,
        AmputationLevel.TRANSFEMORAL,
        OptionalDouble.empty(),
        how.stance(),
        Optional.empty(),
        Hands.FREE,
        Optional.empty(),
        Optional.empty(),
        new Footwear("barefoot", 0),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        List.of(KNEE),
        List.of(targets),
        List.of(),
        AssumedUncertainties.ASSUMED,
        DecisionRule.USUAL,
        GeometryLimits.USUAL,
        List.of(),
        new Notes(nothing, nothing, nothing, nothing, nothing, nothing, nothing, nothing));
  }
}
