package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Validation: a small version of the study of advice, with other seeds than the published one.
 * Limits are those that are claimed, widened by three standard errors of the count; the medians of
 * so few wearers differ by a stand either way, and are compared by {@link AdviceProofTest} alone.
 */
class AdviceTest {
  private static final int WEARERS = 60;
  private static final long SEED = 700_000;

  @Test
  void adviceBringsWearersThereInFewerStandsThanOneScrewAtATime() {
    Courses advice = Courses.of(ScrewByAdvice::new, WEARERS, SEED);
    Courses geometry = Courses.of(ScrewByGeometry::new, WEARERS, SEED);
    assertThat(advice.meanStands()).isLessThan(geometry.meanStands());
    assertThat(advice.percentileOfStands(95)).isLessThanOrEqualTo(geometry.percentileOfStands(95));
    double three = 3 * 100 * Math.sqrt(0.9 * 0.1 / turns(advice));
    assertThat(advice.coveragePercent()).isBetween(85 - three, 95 + three);
    assertThat(advice.harmfulPercent())
        .isLessThan(2 + 3 * 100 * Math.sqrt(0.02 * 0.98 / turns(advice)));
  }

  private static int turns(Courses of) {
    return of.all().stream().mapToInt(Course::turns).sum();
  }
}
