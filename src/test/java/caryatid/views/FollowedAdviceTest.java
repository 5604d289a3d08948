package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.advice.Adjustment;
import caryatid.advice.ChangeKind;
import caryatid.advice.Learnt;
import caryatid.advice.Proposal;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.TurnedAnkle;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.views.FollowedAdvice.HowFollowed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was advised after a stand, what was changed, and what the next stand shows. */
class FollowedAdviceTest {
  private static RecordAdvice of(Entries entries) {
    return RecordAdvice.of(entries.record(), Map.of()).get(0);
  }

  private static double advisedDeg() {
    return of(TurnedAnkle.turnedOnce()).advice().proposals().get(0).first().by();
  }

  /** The ankle stood at 3 deg when the advice was given. */
  private static Entries turnedBy(double deg, double kneeMm) {
    return TurnedAnkle.turnedOnce()
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3 + deg))
        .add(EntryKind.STAND, TurnedAnkle.stand(kneeMm));
  }

  private static FollowedAdvice last(Entries entries) {
    List<FollowedAdvice> followed = of(entries).followed();
    return followed.get(followed.size() - 1);
  }

  /** Entries 5, 7 and 9 are stands; after 5 nothing was known of the answer. */
  @Test
  void adviceChangeAndOutcomeFollowEachOther() {
    double deg = advisedDeg();
    RecordAdvice of = of(turnedBy(deg, -8 + 4 * deg));
    assertThat(of.followed()).extracting(FollowedAdvice::before).containsExactly(5, 7);
    assertThat(of.followed()).extracting(FollowedAdvice::stand).containsExactly(7, 9);
    assertThat(of.followed())
        .extracting(FollowedAdvice::how)
        .containsExactly(HowFollowed.NOTHING_ADVISED, HowFollowed.AS_ADVISED);
    assertThat(of.followed().get(1).made())
        .containsExactly(Map.entry(ChangeKind.PLANTARFLEXION, deg));
    Learnt.Predicted outcome = of.advice().learnt().predictions().get(1);
    assertThat(outcome.state()).isEqualTo(9);
    assertThat(outcome.measuredMm()).isCloseTo(-8 + 4 * deg, within(1e-9));
    assertThat(outcome.measuredMm()).isBetween(outcome.lowMm(), outcome.highMm());
  }

  /** What was expected then is what is said to have been advised: a later stand changes nothing. */
  @Test
  void whatWasAdvisedIsWhatTheRecordOfThenAdvises() {
    Proposal then = of(TurnedAnkle.turnedOnce()).advice().proposals().get(0);
    assertThat(last(turnedBy(1, 30)).advised()).contains(then);
  }

  @Test
  void anotherAmountNothingOrSomethingElseIsCalledSo() {
    assertThat(last(turnedBy(advisedDeg() - 0.5, 5)).how()).isEqualTo(HowFollowed.OTHER_AMOUNT);
    assertThat(last(turnedBy(0, -8)).how()).isEqualTo(HowFollowed.NOTHING_CHANGED);
    assertThat(last(turnedBy(-2, -16)).how()).isEqualTo(HowFollowed.SOMETHING_ELSE);
    Answers foot =
        Invented.answers(
            "items",
            Invented.answers("item", "foot forward of the reference line", "set", 4, "unit", "mm"));
    assertThat(
            last(TurnedAnkle.turnedOnce()
                    .add(EntryKind.BENCH_ALIGNMENT, foot)
                    .add(EntryKind.STAND, TurnedAnkle.stand(-8)))
                .how())
        .as("set for the first time, so that the record does not say by how much")
        .isEqualTo(HowFollowed.NOTHING_CHANGED);
  }

  /** Amounts count as the same up to a billionth of their unit. */
  @ParameterizedTest
  @CsvSource({
    "4, AS_ADVISED",
    "4.0000000009, AS_ADVISED",
    "4.0000000011, OTHER_AMOUNT",
    "3.9999999991, AS_ADVISED",
    "3.9999999989, OTHER_AMOUNT",
    "0.5, OTHER_AMOUNT",
    "-4, SOMETHING_ELSE"
  })
  void anAmountIsTheAdvisedOneOrAnother(double made, HowFollowed how) {
    assertThat(followed(Map.of(ChangeKind.PLANTARFLEXION, made)).how()).isEqualTo(how);
  }

  @Test
  void asAdvisedMeansNothingElse() {
    assertThat(followed(Map.of()).how()).isEqualTo(HowFollowed.NOTHING_CHANGED);
    assertThat(followed(Map.of(ChangeKind.INVERSION, 4.0)).how())
        .isEqualTo(HowFollowed.SOMETHING_ELSE);
    assertThat(followed(Map.of(ChangeKind.PLANTARFLEXION, 4.0, ChangeKind.INVERSION, 1.0)).how())
        .isEqualTo(HowFollowed.SOMETHING_ELSE);
    assertThat(new FollowedAdvice(5, 7, Optional.empty(), Map.of()).how())
        .isEqualTo(HowFollowed.NOTHING_ADVISED);
  }

  private static FollowedAdvice followed(Map<ChangeKind, Double> made) {
    Adjustment ankle =
        new Adjustment(ChangeKind.PLANTARFLEXION, 0, -8, 8, 0.5, OptionalDouble.empty());
    Proposal advised =
        new Proposal(
            List.of(new Proposal.Change(ankle, 4, 0)),
            0.9,
            List.of(),
            List.of(),
            OptionalDouble.empty(),
            false);
    return new FollowedAdvice(5, 7, Optional.of(advised), made);
  }

  /** A setting is a change from a billionth of its unit on. */
  @ParameterizedTest
  @CsvSource({"3.0000000009, false", "3.0000000011, true"})
  void aSettingIsChangedOrNot(double set, boolean changed) {
    FollowedAdvice last = last(turnedBy(set - 3, -8));
    assertThat(last.made().isEmpty()).isNotEqualTo(changed);
  }
}
