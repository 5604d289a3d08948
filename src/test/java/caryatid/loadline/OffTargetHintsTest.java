package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each direction has its own hint. */
class OffTargetHintsTest {
  private static final OffTargetHints HINTS =
      new OffTargetHints(
          Optional.of("anterior"),
          Optional.of("posterior"),
          Optional.of("medial"),
          Optional.of("lateral"));

  @Test
  void aHintIsThatOfThePlaneAndTheDirection() {
    assertThat(HINTS.at(Plane.SAGITTAL, true)).contains("anterior");
    assertThat(HINTS.at(Plane.SAGITTAL, false)).contains("posterior");
    assertThat(HINTS.at(Plane.FRONTAL, true)).contains("lateral");
    assertThat(HINTS.at(Plane.FRONTAL, false)).contains("medial");
  }
}
