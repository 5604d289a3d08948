package caryatid.sheet;

import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.GeometryLimits;
import caryatid.sheet.MeasuredSection.KnownTo;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.standing.Stance;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Reads the outermost section of a trial sheet. */
final class SheetSection {
  private static final Notes NO_NOTES =
      new Notes(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static final ValueParser<Boolean> RULES =
      ValueParsers.choice(new TreeMap<>(Map.of("by probability", true, "simple", false)));

  private static final ValueParser<AmputationLevel> LEVEL =
      ValueParsers.word(AmputationLevel.class);

  /** How the wearer stood; parts that are required but missing are empty. */
  private record Posture(
      Optional<Stance> stance, Optional<OtherFoot> otherFoot, Optional<Hands> hands) {
    static Posture of(Section root, Optional<ProstheticSide> side) {
      Optional<Stance> stance =
          root.requiredSection("stance").flatMap(s -> StanceSection.stance(s, side));
      return new Posture(
          stance,
          StanceSection.otherFoot(root, stance),
          root.required("hands", ValueParsers.word(Hands.class)));
    }
  }

  /** What the prosthesis is made of. */
  private record Prosthesis(
      Optional<KneeSetting> knee, Optional<AnkleAxis> ankleAxis, List<Component> components) {
    static Prosthesis of(
        Section root, Optional<ProstheticSide> side, Optional<AmputationLevel> level) {
      return new Prosthesis(
          WearerSection.knee(root, level),
          WearerSection.ankleAxis(root, side),
          WearerSection.components(root));
    }
  }

  /** How offsets are judged, and the practitioner's notes. */
  private record Judging(
      AssumedUncertainties doubts,
      DecisionRule rule,
      GeometryLimits limits,
      List<String> asMeant,
      Notes notes) {
    static Judging of(Section root, Optional<KnownTo> turn) {
      Optional<AssumedUncertainties> doubts =
          root.optionalSection("doubts").flatMap(s -> SheetSection.doubts(s, turn));
      Optional<DecisionRule> rule =
          root.optionalSection("decision-rule").flatMap(SheetSection::rule);
      Optional<GeometryLimits> limits =
          root.optionalSection("limits")
              .flatMap(section -> LimitsSection.limits(section, LimitsSection.OF_A_SHEET));
      List<String> asMeant = root.list("as-meant", ValueParsers.TEXT);
      Optional<Notes> notes = root.optionalSection("notes").flatMap(WearerSection::notes);
      return new Judging(
          doubts.orElseGet(() -> turned(AssumedUncertainties.ASSUMED, turn)),
          rule.orElse(DecisionRule.USUAL),
          limits.orElse(GeometryLimits.USUAL),
          asMeant,
          notes.orElse(NO_NOTES));
    }
  }

  /** How the feet stood, and for how long they had walked. */
  private record FeetPlacement(
      OptionalDouble widthMm, OptionalDouble toeOutRad, OptionalDouble minutesWalked) {
    static FeetPlacement of(Section root) {
      return new FeetPlacement(
          number(root, "stance-width-mm", ValueParsers.number(0, 2_000)),
          radians(number(root, "toe-out-deg", ValueParsers.number(-90, 90))),
          number(root, "minutes-walked", ValueParsers.number(0, 100_000)));
    }
  }

  private SheetSection() {}

  static Optional<TrialSheet> sheet(Section root, Optional<TrialSheet> earlier) {
    Optional<String> wearer = root.required("wearer", ValueParsers.TEXT);
    Optional<OffsetDateTime> at = root.required("at", ValueParsers.TIME);
    Optional<ProstheticSide> side = root.required("side", ValueParsers.word(ProstheticSide.class));
    Optional<AmputationLevel> level = root.required("level", LEVEL);
    OptionalDouble mass = number(root, "body-mass-kg", ValueParsers.number(2, 500));
    Posture posture = Posture.of(root, side);
    Prosthesis prosthesis = Prosthesis.of(root, side, level);
    Optional<Footwear> footwear = footwear(root, earlier);
    FeetPlacement feet = FeetPlacement.of(root);
    Measurements measured = Measurements.of(root, side, wearer, earlier);
    Judging judging = Judging.of(root, measured.turn());
    LimitsSection.requirePossible(root, footwear, feet.widthMm(), judging.limits());
    return root.build(
        () ->
            new TrialSheet(
                wearer.orElseThrow(),
                at.orElseThrow(),
                side.orElseThrow(),
                level.orElseThrow(),
                mass,
                posture.stance().orElseThrow(),
                posture.otherFoot(),
                posture.hands().orElseThrow(),
                prosthesis.knee(),
                prosthesis.ankleAxis(),
                footwear.orElseThrow(),
                feet.widthMm(),
                feet.toeOutRad(),
                feet.minutesWalked(),
                prosthesis.components(),
                measured.landmarks(),
                measured.targets(),
                measured.stretches(),
                judging.doubts(),
                judging.rule(),
                judging.limits(),
                judging.asMeant(),
                judging.notes()));
  }

  private static Optional<Footwear> footwear(Section root, Optional<TrialSheet> earlier) {
    Optional<Footwear> footwear = root.requiredSection("footwear").flatMap(WearerSection::footwear);
    HeelCheck.check(root, footwear, earlier);
    return footwear;
  }

  /** What a clinic knows better than is assumed; the rest stays as assumed. */
  private static Optional<AssumedUncertainties> doubts(
      Section section, Optional<KnownTo> measuredTurn) {
    Optional<KnownTo> measured = section.has("turn-deg") ? Optional.empty() : measuredTurn;
    return stated(section).map(doubts -> turned(doubts, measured));
  }

  private static AssumedUncertainties turned(AssumedUncertainties doubts, Optional<KnownTo> turn) {
    return turn.map(
            known -> doubts.withYaw(Math.toRadians(known.value()), known.degreesOfFreedom()))
        .orElse(doubts);
  }

  private static Optional<AssumedUncertainties> stated(Section section) {
    AssumedUncertainties assumed = AssumedUncertainties.ASSUMED;
    OptionalDouble turn = radians(number(section, "turn-deg", ValueParsers.number(0, 45)));
    OptionalDouble foot = number(section, "foot-line-aside-mm", ValueParsers.number(0, 300));
    OptionalDouble body = number(section, "body-line-aside-mm", ValueParsers.number(0, 500));
    OptionalDouble swing = number(section, "swing-height-mm", ValueParsers.number(300, 2000));
    OptionalDouble foreAndAft =
        number(section, "between-stands-fore-and-aft-mm", ValueParsers.number(0, 100));
    OptionalDouble sideways =
        number(section, "between-stands-sideways-mm", ValueParsers.number(0, 100));
    return section.build(
        () ->
            new AssumedUncertainties(
                assumed.levelRad(),
                turn.orElse(assumed.yawRad()),
                foot.orElse(assumed.footLeverMm()),
                body.orElse(assumed.bodyLeverMm()),
                swing.orElse(assumed.pendulumMm()),
                foreAndAft.orElse(assumed.sagittalRepeatMm()),
                sideways.orElse(assumed.frontalRepeatMm()),
                assumed.repeatDegreesOfFreedom()));
  }

  private static Optional<DecisionRule> rule(Section section) {
    Optional<Boolean> guarded = section.required("kind", RULES);
    OptionalDouble percent = number(section, "confidence-percent", ValueParsers.number(51, 99.9));
    return section.build(
        () ->
            new DecisionRule(
                percent.isPresent() ? percent.getAsDouble() / 100 : DecisionRule.USUAL.confidence(),
                guarded.orElseThrow()));
  }

  private static OptionalDouble number(Section root, String key, ValueParser<Double> form) {
    return ExportSection.toDouble(root.optional(key, form));
  }

  private static OptionalDouble radians(OptionalDouble degrees) {
    return degrees.isPresent() ? OptionalDouble.of(Math.toRadians(degrees.getAsDouble())) : degrees;
  }
}
