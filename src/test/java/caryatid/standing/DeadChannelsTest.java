package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What a dead channel leaves behind gives no result. Limits: see {@link Limits#USUAL}. */
class DeadChannelsTest {
  private static final Wording WORDS = Wording.in(Locale.ENGLISH);
  private static final IntToDoubleFunction LOAD = i -> 400;

  /** To and fro at every sample, with a standard deviation (n - 1) of so many mm in n samples. */
  private static IntToDoubleFunction trembling(double sdMm, int n) {
    double mm = sdMm * Math.sqrt((n - 1.0) / n);
    return i -> i % 2 == 0 ? mm : -mm;
  }

  private static Recording plate(
      double seconds, IntToDoubleFunction right, IntToDoubleFunction anterior) {
    return Made.at(100, seconds).plate("plate 1", right, anterior, LOAD).recording();
  }

  private static List<String> refusals(Recording recording) {
    return refusals(recording, Made.rightFoot());
  }

  private static List<String> refusals(Recording recording, StandAnalysis.Conditions conditions) {
    BadInput bad =
        catchThrowableOfType(BadInput.class, () -> StandAnalysis.analyse(recording, conditions));
    return bad == null
        ? List.of()
        : bad.problems().stream().map(p -> WORDS.say(p).replace('\u00a0', ' ')).toList();
  }

  @Test
  void aDirectionThatStandsStillIsRefused() {
    assertThat(refusals(plate(20, i -> 12, trembling(2, 2000))))
        .containsExactly(
            "made.csv: expected the centre of pressure on plate 1 to move sideways by at least 0.10"
                + " mm (standard deviation in 20.00 s), found 0.00 mm: no person stands so still,"
                + " so a channel seems to be dead. Check the plate, its cable and the export's"
                + " columns for the centre of pressure or for the moment it comes from, and record"
                + " again.");
    assertThat(refusals(plate(20, trembling(2, 2000), i -> 12)))
        .containsExactly(
            "made.csv: expected the centre of pressure on plate 1 to move fore and aft by at least"
                + " 0.10 mm (standard deviation in 20.00 s), found 0.00 mm: no person stands so"
                + " still, so a channel seems to be dead. Check the plate, its cable and the"
                + " export's columns for the centre of pressure or for the moment it comes from,"
                + " and record again.");
  }

  @Test
  void aTenthOfAMillimetreInTwentySecondsIsTheLimit() {
    assertThat(refusals(plate(20, trembling(0.0999, 2000), trembling(2, 2000)))).hasSize(1);
    assertThat(refusals(plate(20, trembling(0.1001, 2000), trembling(2, 2000)))).isEmpty();
  }

  /** A quarter of the length, half the limit. */
  @Test
  void theLimitOfAShorterStretchIsSmallerAsTheRootOfItsLength() {
    assertThat(refusals(plate(5.01, trembling(0.0498, 501), trembling(2, 501)))).hasSize(1);
    assertThat(refusals(plate(5.01, trembling(0.0502, 501), trembling(2, 501)))).isEmpty();
  }

  /** What deviates in every eighth sample, or only between them, counts by all samples. */
  @Test
  void samplesBetweenThoseThatAreLookedAtFirstCountAsWell() {
    for (int offset : new int[] {0, 5}) {
      IntToDoubleFunction under = everyEighth(0.0999, offset);
      IntToDoubleFunction over = everyEighth(0.1001, offset);
      assertThat(refusals(plate(20, under, trembling(2, 2000)))).hasSize(1);
      assertThat(refusals(plate(20, over, trembling(2, 2000)))).isEmpty();
    }
  }

  /** To and fro in one of eight samples, with a standard deviation (n - 1) in 2000 samples. */
  private static IntToDoubleFunction everyEighth(double sdMm, int offset) {
    double mm = sdMm * Math.sqrt(8 * 1999.0 / 2000);
    return i -> i % 8 != offset ? 0 : i % 16 < 8 ? mm : -mm;
  }

  @Test
  void aChannelThatDiesDuringTheStandIsRefused() {
    IntToDoubleFunction live = trembling(2, 6000);
    IntToDoubleFunction dying = i -> i < 3300 ? live.applyAsDouble(i) : 0;
    assertThat(refusals(plate(60, dying, live))).hasSize(1);
  }

  @Test
  void everyPlateAndDirectionIsNamed() {
    Recording recording =
        Made.at(100, 20)
            .plate("front", i -> -90, trembling(2, 2000), LOAD)
            .plate("rear", i -> 90, i -> 0, LOAD)
            .recording();
    assertThat(
            refusals(
                recording, Made.conditions(new Stance.PlatePerFoot("front", "rear"), Side.LEFT)))
        .extracting(sentence -> sentence.replaceAll(".* on (.*) by at least.*", "$1"))
        .containsExactly(
            "front to move sideways", "rear to move sideways", "rear to move fore and aft");
  }

  @Test
  void aHorizontalForceThatNobodyMakesIsRefused() {
    assertThat(refusals(pushed(356, 596)))
        .containsExactly(
            "made.csv: expected a mean horizontal force on plate 1 of at most 20.0 % of the"
                + " vertical force, found 596 N with 356 N (167.4 %): nobody stands like that. Check"
                + " which columns are force-x, force-y and force-z, their units and the axes in the"
                + " plate description, and set the empty plate to zero before recording.");
  }

  @Test
  void aFifthOfTheVerticalForceIsTheLimit() {
    assertThat(refusals(pushed(400, 80.01))).hasSize(1);
    assertThat(refusals(pushed(400, 79.99))).isEmpty();
  }

  /** One foot's force leans by about 4 deg in real standing. */
  @Test
  void aFootThatLeansAsFeetDoIsBelieved() {
    assertThatCode(
            () ->
                StandAnalysis.analyse(
                    pushed(400, 400 * Math.tan(Math.toRadians(4))), Made.rightFoot()))
        .doesNotThrowAnyException();
  }

  /** Pushed forward and to the right as 4 to 3. */
  private static Recording pushed(double upN, double horizontalN) {
    return Made.at(100, 20)
        .plate("plate 1", trembling(2, 2000), trembling(3, 2000), i -> upN)
        .pushed(0.6 * horizontalN, 0.8 * horizontalN)
        .recording();
  }
}
