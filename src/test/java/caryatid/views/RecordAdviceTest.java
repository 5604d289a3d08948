package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.advice.AdviceOutcome;
import caryatid.advice.AdviceRemark;
import caryatid.advice.ChangeKind;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.TurnedAnkle;
import caryatid.entry.BenchItem;
import caryatid.entry.EntryKind;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The advice from a record of typed stands: they have no landmarks, so only answers are known. */
class RecordAdviceTest {
  private static RecordAdvice advice(Entries entries) {
    List<RecordAdvice> legs = RecordAdvice.of(entries.record(), Map.of());
    assertThat(legs).hasSize(1);
    return legs.get(0);
  }

  private static List<Topic> topics(RecordAdvice of) {
    return of.advice().remarks().stream().map(Remark::topic).toList();
  }

  @Test
  void theAnswerOfEarlierStandsTellsWhatToTurnNext() {
    RecordAdvice of = advice(TurnedAnkle.turnedOnce());
    assertThat(of.advice().outcome()).isEqualTo(AdviceOutcome.CHANGE);
    var change = of.advice().proposals().get(0).first();
    assertThat(change.of().kind()).isEqualTo(ChangeKind.PLANTARFLEXION);
    assertThat(change.to()).isBetween(6.0, 8.0);
    assertThat(change.of().turns(3)).hasValue(1.5);
    assertThat(of.stand().orElseThrow().number()).isEqualTo(7);
  }

  /** A stand that was typed has no landmarks; its knee is known by its name. */
  @Test
  void theKneeOfATypedStandIsGuardedToo() {
    assertThat(topics(advice(TurnedAnkle.turnedOnce()))).contains(AdviceRemark.OWN_KNEE_KEPT);
  }

  @Test
  void aSettingMadeAfterTheStandAsksForAStandFirst() {
    RecordAdvice of =
        advice(TurnedAnkle.turnedOnce().add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(5)));
    assertThat(of.advice().outcome()).isEqualTo(AdviceOutcome.NOT_GIVEN);
    assertThat(topics(of)).contains(AdviceRemark.CHANGED_SINCE);
  }

  @Test
  void aStandWithoutFindingsGivesNoAdvice() {
    RecordAdvice of =
        advice(TurnedAnkle.turnedOnce().add(EntryKind.STAND, Invented.answers("footwear", "shoe")));
    assertThat(topics(of)).contains(AdviceRemark.REFUSED);
  }

  @Test
  void lengthAndSeatThatNobodyNotedAreRuledOutFirst() {
    RecordAdvice of =
        advice(
            Entries.opened()
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
                .add(EntryKind.STAND, TurnedAnkle.stand(-20))
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3))
                .add(EntryKind.STAND, TurnedAnkle.stand(-8, "load-share-percent", 30)));
    assertThat(of.advice().outcome()).isEqualTo(AdviceOutcome.CAUSES_FIRST);
    assertThat(topics(of))
        .contains(
            AdviceRemark.LENGTH_NOT_NOTED,
            AdviceRemark.SEAT_NOT_NOTED,
            AdviceRemark.LOAD_SHARE_LOW);
  }

  /** Pain of 4 and more, as it was scored last in an assessment or after walking. */
  @ParameterizedTest
  @CsvSource({"4, , true", "3, , false", "6, 3, false", "0, 4, true"})
  void painIsRuledOutFirst(int assessed, Integer walked, boolean first) {
    Entries entries =
        TurnedAnkle.turnedOnce().add(EntryKind.ASSESSMENT, Invented.answers("pain", assessed));
    if (walked != null) {
      entries.add(EntryKind.WALKING, Invented.answers("pain", walked));
    }
    RecordAdvice of = advice(entries.add(EntryKind.STAND, TurnedAnkle.stand(-8)));
    assertThat(topics(of).contains(AdviceRemark.PAIN)).isEqualTo(first);
  }

  @Test
  void painThatWasAcceptedIsNoCauseAnyMore() {
    Entries entries =
        TurnedAnkle.turnedOnce()
            .add(EntryKind.ASSESSMENT, Invented.answers("pain", 5, "socket-fit", "seated"))
            .add(
                EntryKind.ACCEPTED,
                Invented.answers("what", "pain", "why", "has been so for years", "stand", 8));
    assertThat(topics(advice(entries))).doesNotContain(AdviceRemark.PAIN);
  }

  /** A typed stand is one stand; 5 to 25 mm are recommended, and its interval is 4 mm. */
  @Test
  void aTypedStandThatDecidesNeitherWayIsSaidToBeOne() {
    Entries undecided = TurnedAnkle.turnedOnce().add(EntryKind.STAND, TurnedAnkle.stand(3));
    assertThat(topics(advice(undecided))).contains(AdviceRemark.ONE_UNDECIDED_STAND);
    assertThat(topics(advice(TurnedAnkle.turnedOnce())))
        .doesNotContain(AdviceRemark.ONE_UNDECIDED_STAND);
  }

  @Test
  void anAnkleSetForAnotherHeelIsRuledOutFirst() {
    Answers heel =
        Invented.answers("items", Invented.answers("item", "heel height", "set", 0, "unit", "mm"));
    RecordAdvice of =
        advice(
            TurnedAnkle.begun()
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
                .add(EntryKind.BENCH_ALIGNMENT, heel)
                .add(EntryKind.STAND, TurnedAnkle.stand(-20))
                .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3))
                .add(EntryKind.STAND, TurnedAnkle.stand(-8, "heel-height-mm", 15)));
    assertThat(of.advice().outcome()).isEqualTo(AdviceOutcome.CAUSES_FIRST);
    assertThat(topics(of)).contains(OpenIssue.ANKLE_AND_HEEL);
  }

  @Test
  void aLockedProstheticKneeGivesNoAdviceAndIsNotLearntFrom() {
    Entries above =
        new Entries()
            .add(
                EntryKind.OPENING,
                Invented.answers("wearer", "DEMO-7", "side", "right", "level", "transfemoral"))
            .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
            .add(EntryKind.STAND, TurnedAnkle.stand(20, "knee-mode", "locked"));
    assertThat(topics(advice(above))).contains(AdviceRemark.LOCKED, AdviceRemark.NO_STAND);
  }

  @Test
  void aPolycentricKneeIsAskedForItsAxis() {
    Entries above =
        new Entries()
            .add(
                EntryKind.OPENING,
                Invented.answers("wearer", "DEMO-7", "side", "right", "level", "transfemoral"))
            .add(
                EntryKind.COMPONENTS,
                Invented.answers(
                    "components", Invented.answers("what", "polycentric knee", "name", "invented")))
            .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
            .add(EntryKind.STAND, TurnedAnkle.stand(-20));
    assertThat(topics(advice(above)))
        .startsWith(AdviceRemark.KNEE_WARNING)
        .contains(AdviceRemark.AXIS_NOT_NAMED);
  }

  /** The contracture is the assessment's, whatever travel the socket's flexion has. */
  @Test
  void theWayBackIsNotAdvisedWhereItFlexesTheSocketLessThanTheContracture() {
    RecordAdvice less = advice(flexedFrom(4));
    assertThat(less.back()).isEmpty();
    assertThat(less.backAgainst().orElseThrow().topic())
        .isEqualTo(AdviceRemark.BACK_BELOW_CONTRACTURE);
    RecordAdvice enough = advice(flexedFrom(5));
    assertThat(enough.back().orElseThrow().turns()).hasSize(1);
    assertThat(enough.backAgainst()).isEmpty();
  }

  /** A contracture of 5 deg is noted; the socket was good at some flexion, and is at 8 deg now. */
  private static Entries flexedFrom(double goodDeg) {
    return TurnedAnkle.begun()
        .add(EntryKind.ASSESSMENT, Invented.answers("contracture-deg", 5))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.socketFlexion(goodDeg))
        .add(EntryKind.STAND, TurnedAnkle.stand(15))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.socketFlexion(8))
        .add(EntryKind.STAND, TurnedAnkle.stand(-20));
  }

  @Test
  void aNotedContractureLimitsPlantarflexionAndIsSaid() {
    Entries noted =
        TurnedAnkle.begun()
            .add(
                EntryKind.ASSESSMENT,
                Invented.answers("contracture-deg", 5, "socket-fit", "seated"))
            .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.socketFlexion(6))
            .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
            .add(EntryKind.STAND, TurnedAnkle.stand(-20))
            .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3))
            .add(EntryKind.STAND, TurnedAnkle.stand(-8));
    RecordAdvice of = advice(noted);
    assertThat(of.advice().proposals())
        .allSatisfy(p -> assertThat(p.first().by()).isLessThanOrEqualTo(1));
    assertThat(topics(of)).doesNotContain(AdviceRemark.CONTRACTURE_NOT_NOTED);
  }

  @Test
  void repeatedOwnSettingsAreSummedUp() {
    Entries entries = TurnedAnkle.begun();
    for (double mm : new double[] {14, 15, 16, 15}) {
      entries.add(
          EntryKind.OWN_SETTING,
          Invented.answers(
              "what",
              "ankle",
              "attempts",
              1,
              "succeeded",
              1,
              "heel-height-wanted-mm",
              15,
              "heel-height-set-mm",
              mm));
    }
    RecordAdvice.Attempts attempts = advice(entries).attempts().get(0);
    assertThat(attempts.what()).isEqualTo("ankle");
    assertThat(attempts.show().n()).isEqualTo(4);
    assertThat(attempts.show().meanMm()).isZero();
  }

  /** What the record already names as an item maps onto the closed list; two are no change. */
  @ParameterizedTest
  @EnumSource(BenchItem.class)
  void eachItemIsAKindOfChangeOrNone(BenchItem item) {
    boolean none = item == BenchItem.FASTENERS || item == BenchItem.HEEL_HEIGHT;
    var row =
        new caryatid.entry.BenchAlignment.Item(
            TermOrText.of(item),
            java.util.Optional.empty(),
            java.util.Optional.empty(),
            java.util.Optional.empty(),
            java.math.BigDecimal.ONE,
            item.unit(),
            java.util.Optional.empty(),
            java.util.Optional.empty(),
            java.util.Optional.empty());
    assertThat(ChangesOfItems.kind(row).isEmpty()).isEqualTo(none);
  }
}
