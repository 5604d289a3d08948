package caryatid.format;

import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Target;
import caryatid.uncertainty.Contribution;
import java.io.IOException;

/** Targets, assumed uncertainties and the decision rule. */
final class TargetJson {
  private TargetJson() {}

  static void write(Target target, JsonObjectWriter out) throws IOException {
    OffsetJson.writeAt(target.at(), out);
    out.number("recommended-mm", target.recommendedMm())
        .number("below-mm", target.belowMm())
        .number("above-mm", target.aboveMm())
        .text("source", target.source())
        .word("line", FindingSpellings.MEANT_FOR, target.line())
        .text("condition", target.condition())
        .object("look-at", target.lookAt(), TargetJson::writeLookAt);
  }

  private static void writeLookAt(OffTargetHints lookAt, JsonObjectWriter out) throws IOException {
    out.text("too-far-anterior", lookAt.tooFarAnterior())
        .text("too-far-posterior", lookAt.tooFarPosterior())
        .text("too-far-medial", lookAt.tooFarMedial())
        .text("too-far-lateral", lookAt.tooFarLateral());
  }

  private static OffTargetHints readLookAt(JsonObjectReader in) {
    return new OffTargetHints(
        in.textIfThere("too-far-anterior"),
        in.textIfThere("too-far-posterior"),
        in.textIfThere("too-far-medial"),
        in.textIfThere("too-far-lateral"));
  }

  static Target read(JsonObjectReader in) {
    return new Target(
        OffsetJson.readAt(in),
        in.number("recommended-mm"),
        in.number("below-mm"),
        in.number("above-mm"),
        in.text("source"),
        in.word("line", FindingSpellings.MEANT_FOR),
        in.textIfThere("condition"),
        in.objectIfThere("look-at", TargetJson::readLookAt));
  }

  static void writeDoubts(AssumedUncertainties doubts, JsonObjectWriter out) throws IOException {
    out.number("level-rad", doubts.levelRad())
        .number("yaw-rad", doubts.yawRad())
        .number("foot-lever-mm", doubts.footLeverMm())
        .number("body-lever-mm", doubts.bodyLeverMm())
        .number("pendulum-mm", doubts.pendulumMm())
        .number("sagittal-repeat-mm", doubts.sagittalRepeatMm())
        .number("frontal-repeat-mm", doubts.frontalRepeatMm())
        .number("repeat-degrees-of-freedom", doubts.repeatDegreesOfFreedom())
        .number("level-degrees-of-freedom", doubts.degrees().level())
        .number("yaw-degrees-of-freedom", doubts.degrees().yaw());
  }

  static AssumedUncertainties readDoubts(JsonObjectReader in) {
    return new AssumedUncertainties(
        in.number("level-rad"),
        in.number("yaw-rad"),
        in.number("foot-lever-mm"),
        in.number("body-lever-mm"),
        in.number("pendulum-mm"),
        in.number("sagittal-repeat-mm"),
        in.number("frontal-repeat-mm"),
        in.number("repeat-degrees-of-freedom"),
        new AssumedUncertainties.KnownLevelAndYaw(
            in.numberIfThere("level-degrees-of-freedom").orElse(Contribution.STATED_DEGREES),
            in.numberIfThere("yaw-degrees-of-freedom").orElse(Contribution.STATED_DEGREES)));
  }

  static void writeRule(DecisionRule rule, JsonObjectWriter out) throws IOException {
    out.number("confidence", rule.confidence()).flag("guarded", rule.guarded());
  }

  static DecisionRule readRule(JsonObjectReader in) {
    return new DecisionRule(in.number("confidence"), in.flag("guarded"));
  }
}
