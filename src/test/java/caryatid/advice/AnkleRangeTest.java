package caryatid.advice;

import static caryatid.advice.AdvisedLeg.KNEE;
import static caryatid.advice.AdvisedLeg.target;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.advice.AnkleRange.ShoeHeel;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnkleRangeTest {
  private static AnkleRange range(double... heelsMm) {
    return new AnkleRange(
        "ankle",
        OptionalDouble.of(5),
        OptionalDouble.of(20),
        Arrays.stream(heelsMm).mapToObj(mm -> new ShoeHeel("shoe", mm)).toList());
  }

  @Test
  void onlyShoesBeyondTheRangeAreNamed() {
    assertThat(range(4.9, 5, 12, 20, 20.1).shoes())
        .extracting(ShoeHeel::heelMm)
        .containsExactly(4.9, 20.1);
    assertThat(
            new AnkleRange(
                    "ankle", OptionalDouble.empty(), OptionalDouble.empty(), range(1).shoes())
                .shoes())
        .isEmpty();
  }

  /** By hand. */
  @ParameterizedTest
  @CsvSource({"2, 5, -3", "26, 20, 6"})
  void whatIsLeftIsMeasuredFromTheNearestEnd(double heel, double end, double left) {
    AnkleRange range = range(heel);
    assertThat(range.endMm(range.shoes().get(0))).isEqualTo(end);
    assertThat(range.leftMm(range.shoes().get(0))).isEqualTo(left);
  }

  /** Heel errors from 4 mm lower to 6 mm higher are within. */
  @ParameterizedTest
  @CsvSource({"1, true", "0.9, false", "26, true", "26.1, false"})
  void whatIsLeftStaysWithinWhereEveryOffsetAllowsIt(double heel, boolean within) {
    HeelAnswer answer =
        new HeelAnswer(target(KNEE, 15, 10), 20, 10, 30, false, -4, 6, List.of(), List.of());
    AnkleRange range = range(heel);
    assertThat(range.staysWithin(range.shoes().get(0), List.of(answer))).isEqualTo(within);
  }
}
