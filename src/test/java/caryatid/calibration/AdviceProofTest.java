package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Validation: the study of advice that docs/advice.md publishes, at its seed and its limits. With
 * fewer wearers the 95th percentile is only not worse: of so few, the number that nothing helps may
 * exceed one in twenty by chance. With all of them the page's rows are these figures.
 */
@Tag("proof")
class AdviceProofTest {
  private static final int PUBLISHED = 1200;
  private static final int WEARERS = Integer.getInteger("wearers", PUBLISHED);

  @Test
  void adviceIsWorthWhatIsPublished() throws IOException {
    Courses advice = Courses.of(ScrewByAdvice::new, WEARERS, Courses.SEED);
    Courses geometry = Courses.of(ScrewByGeometry::new, WEARERS, Courses.SEED);
    assertThat(advice.meanStands()).isLessThan(geometry.meanStands());
    assertThat(advice.percentileOfStands(95))
        .isLessThan(geometry.percentileOfStands(95) + (WEARERS < PUBLISHED ? 1 : 0));
    assertThat(advice.percentileOfStands(50)).isLessThanOrEqualTo(geometry.percentileOfStands(50));
    assertThat(advice.coveragePercent()).isBetween(85.0, 95.0);
    assertThat(advice.harmfulPercent()).isLessThanOrEqualTo(2);
    if (WEARERS == PUBLISHED) {
      assertThat(Files.readAllLines(Path.of("docs/advice.md")))
          .containsAll(AdviceTable.rows(geometry, advice));
    }
  }
}
