package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Legs;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.StandRemark;
import caryatid.standing.Standing;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Numbers of a state that depend on plane, line or stand, each with one of its own. */
class StateNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Landmark KNEE = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 80, 0, 490);
  private static final AssumedUncertainties REPEAT_ONLY =
      new AssumedUncertainties(0, 0, 0, 0, 1e12, 5, 3.5, 4);

  private static AlignmentState state(
      AssumedUncertainties doubts, List<Standing> standings, Target... targets) throws BadInput {
    List<Stand> stands = new ArrayList<>();
    for (Standing standing : standings) {
      stands.add(Stands.of(standing, KNEE, Legs.rightFoot(doubts), targets));
    }
    return StateAnalysis.of(stands, doubts);
  }

  private static Standing standing(double rightMm, double anteriorMm, double lean) {
    return Legs.standing(
        Legs.load(
            LoadLineOwner.RIGHT_FOOT, rightMm, anteriorMm, 400, 1.5, Legs.lean(2 * lean, lean)));
  }

  /** The force leans 490 times 0.01 or 0.02 anterior at the knee, and twice as far to the right. */
  @Test
  void everyOffsetIsTheMeanOfItsOwnPlaneAndLine() throws BadInput {
    AlignmentState state =
        state(REPEAT_ONLY, List.of(standing(85, 12, 0.01), standing(88, 16, 0.02)));
    assertThat(mm(state, Plane.SAGITTAL, LoadLineMethod.VERTICAL)).isCloseTo(14, within(1e-12));
    assertThat(mm(state, Plane.SAGITTAL, LoadLineMethod.MEASURED_FORCE))
        .isCloseTo(14 + 490 * 0.015, within(1e-9));
    assertThat(mm(state, Plane.FRONTAL, LoadLineMethod.VERTICAL)).isCloseTo(6.5, within(1e-12));
    assertThat(mm(state, Plane.FRONTAL, LoadLineMethod.MEASURED_FORCE))
        .isCloseTo(6.5 + 490 * 0.03, within(1e-9));
  }

  private static double mm(AlignmentState state, Plane plane, LoadLineMethod kind) {
    return state.offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> o.plane() == plane && o.kind() == kind)
        .findFirst()
        .map(Offset::mm)
        .orElseThrow()
        .value();
  }

  /** What two offsets have in common cancels in their difference: only what has one name may. */
  @Test
  void theSpreadOfEachPlaneAndLineHasANameOfItsOwn() throws BadInput {
    AlignmentState state =
        state(REPEAT_ONLY, List.of(standing(85, 12, 0.01), standing(88, 16, 0.02)));
    assertThat(state.offsets())
        .extracting(
            o -> o.offset().plane() + " " + o.offset().kind(),
            o ->
                o.offset().mm().contributions().stream()
                    .map(c -> c.source().of())
                    .filter(of -> of.startsWith("RIGHT_FOOT") && of.contains("TAL "))
                    .toList())
        .contains(
            tuple("SAGITTAL VERTICAL", List.of("RIGHT_FOOT SAGITTAL VERTICAL")),
            tuple("SAGITTAL MEASURED_FORCE", List.of("RIGHT_FOOT SAGITTAL MEASURED_FORCE")),
            tuple("FRONTAL VERTICAL", List.of("RIGHT_FOOT FRONTAL VERTICAL")),
            tuple("FRONTAL MEASURED_FORCE", List.of("RIGHT_FOOT FRONTAL MEASURED_FORCE")));
  }

  /**
   * t(6) 0.975 is 2.446912; times root 2 times the root of (4 * 25 + 2 * 4) / 18 (sagittal) and of
   * (4 * 12.25 + 2 * 9) / 18 (frontal).
   */
  @Test
  void theSmallestDifferenceIsSaidOfEachFindingItsOwn() throws BadInput {
    List<String> said =
        said(
            state(
                REPEAT_ONLY,
                List.of(standing(85, 12, 0), standing(88, 14, 0), standing(91, 16, 0)),
                Legs.target(Plane.FRONTAL, LandmarkKind.KNEE_CENTRE, 8, 30, 30),
                Legs.target(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, 15, 30, 30)));
    assertThat(said)
        .anyMatch(
            s -> s.contains("the frontal offset") && s.contains("by at least 6.7 mm to count"))
        .anyMatch(
            s -> s.contains("the sagittal offset") && s.contains("by at least 8.5 mm to count"));
  }

  private static List<String> said(AlignmentState state) {
    return state.remarks().stream().map(ENGLISH::say).map(s -> s.replace('\u00a0', ' ')).toList();
  }

  @Test
  void sharesThatDifferAreSaidFromTheSmallestToTheLargest() throws BadInput {
    List<Standing> standings =
        List.of(
            Stands.bearing(standing(85, 40, 0), 0.473),
            Stands.bearing(standing(85, 40, 0), 0.412),
            Stands.bearing(standing(85, 40, 0), 0.436));
    assertThat(said(state(REPEAT_ONLY, standings)))
        .anyMatch(
            s -> s.startsWith("The right side bore between 41.2 % and 47.3 % of the load from"));
  }

  /** An exact stand past an exact mark at the plate's height, which does not swing. */
  @Test
  void whatIsExactNeedsNoAdvice() throws BadInput {
    Landmark toe = Legs.mark(LandmarkKind.OTHER, Side.RIGHT, 80, 0, 0);
    Standing exact =
        Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 85, 12, 400, 0, Optional.empty()));
    Stand stand = Stands.of(exact, toe, Legs.rightFoot(Legs.NONE));
    assertThat(StateAnalysis.of(List.of(stand), Legs.NONE).offsets())
        .hasSize(2)
        .allMatch(offset -> offset.hint().isEmpty());
  }

  /** However short: how far the mean wanders from stand to stand does not shrink with length. */
  @Test
  void noStandIsAdvisedToLastLonger() throws BadInput {
    PrecisionHint hint = advice(state(Legs.NONE, List.of(standing(85, 12, 0))));
    assertThat(hint.remedy()).isEqualTo(PrecisionHint.Remedy.REPEAT);
  }

  private static PrecisionHint advice(AlignmentState state) {
    return state.offsets().get(0).hint().orElseThrow();
  }

  /**
   * Two stands, 12 and 16 mm, pooled with the default: u is the root of 108 / 10. After two more it
   * is that times root 2/4, by t(7) 0.975, 2.364624.
   */
  @Test
  void twoStandsAreAdvisedTwoMore() throws BadInput {
    PrecisionHint hint =
        advice(state(REPEAT_ONLY, List.of(standing(85, 12, 0), standing(85, 16, 0))));
    assertThat(hint.remedy()).isEqualTo(PrecisionHint.Remedy.REPEAT);
    assertThat(hint.halfWidthThenMm())
        .isCloseTo(2.364624 * Math.sqrt(10.8) / Math.sqrt(2), within(1e-5));
  }

  @Test
  void anotherRuleIsSaidWithItsProbability() throws BadInput {
    assertThat(said(ruled(new DecisionRule(0.9, true))))
        .contains("The sheet asks for results at a probability of 90.0 % instead of 95 %.");
    assertThat(said(ruled(DecisionRule.SIMPLE)))
        .anyMatch(s -> s.startsWith("The sheet asks for the simple rule: "));
    assertThat(said(ruled(DecisionRule.USUAL))).noneMatch(s -> s.startsWith("The sheet asks for "));
  }

  private static AlignmentState ruled(DecisionRule rule) throws BadInput {
    Stand stand =
        Stands.ruled(Stands.of(standing(85, 12, 0), KNEE, Legs.rightFoot(REPEAT_ONLY)), rule);
    return StateAnalysis.of(List.of(stand), REPEAT_ONLY);
  }

  /** Of a state first what weighs most; what holds for several stands once, with their number. */
  @Test
  void whatSeveralStandsRemarkIsSaidOnceWithTheirNumber() throws BadInput {
    Remark rate =
        Remark.of(StandRemark.LOW_RATE, Argument.of(40, Unit.HZ), Argument.of(50, Unit.HZ));
    Remark other =
        Remark.of(StandRemark.LOW_RATE, Argument.of(45, Unit.HZ), Argument.of(50, Unit.HZ));
    Remark knee = Remark.of(LoadLineRemark.KNEE_NOT_MARKED, Argument.term(Side.RIGHT));
    Remark unknown = Remark.of(StandRemark.SHARE_UNKNOWN);
    Stand stand = Stands.of(standing(85, 12, 0), KNEE, Legs.rightFoot(REPEAT_ONLY));
    AlignmentState state =
        new AlignmentState(
            List.of(
                Stands.remarking(stand, rate),
                Stands.remarking(stand, unknown),
                Stands.remarking(stand, other, knee)),
            List.of(),
            List.of(),
            List.of(),
            List.of(Remark.of(StateRemark.LANDMARKS_SHARED)));
    List<GroupedRemark> said = GroupedRemark.of(state);
    assertThat(said.get(0)).isEqualTo(new GroupedRemark(knee, 1));
    assertThat(said)
        .containsExactlyInAnyOrder(
            new GroupedRemark(knee, 1),
            new GroupedRemark(rate, 2),
            new GroupedRemark(unknown, 1),
            new GroupedRemark(Remark.of(StateRemark.LANDMARKS_SHARED), 0));
    assertThat(ENGLISH.say(new GroupedRemark(rate, 2)))
        .startsWith("Recorded at 40.0\u00a0Hz;")
        .endsWith("(In 2 of the stands.)");
  }
}
