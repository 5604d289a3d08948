package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distances with their directions; what is written as 0 has none. */
class OffsetWordsTest {
  private final OffsetWords words = new OffsetWords(Wording.in(Locale.ENGLISH));

  @ParameterizedTest
  @CsvSource({
    "SAGITTAL, 12.34, 12.3 mm anterior, 12 mm anterior",
    "SAGITTAL, -12.34, 12.3 mm posterior, 12 mm posterior",
    "FRONTAL, 0.5, 0.5 mm lateral, 1 mm lateral",
    "FRONTAL, -0.5, 0.5 mm medial, 1 mm medial",
    "FRONTAL, -0.49, 0.5 mm medial, 0 mm",
    "SAGITTAL, 0.051, 0.1 mm anterior, 0 mm",
    "SAGITTAL, -0.04, 0.0 mm, 0 mm",
    "FRONTAL, 0, 0.0 mm, 0 mm"
  })
  void theSignBecomesAWord(Plane plane, double mm, String exact, String rounded) {
    assertThat(words.distance(plane, mm).replace('\u00a0', ' ')).isEqualTo(exact);
    assertThat(words.rounded(plane, mm).replace('\u00a0', ' ')).isEqualTo(rounded);
  }

  /** The ankle's tolerance is too narrow; where it is not met that hardly matters. */
  @Test
  void aToleranceTooNarrowIsSaidUnlessItIsNotMet() {
    Finding open = Numbered.state().findings().get(0);
    Finding met = with(open, Verdict.WITHIN, true);
    assertThat(words.result(open))
        .endsWith("; the tolerance is narrower than this measurement can decide");
    assertThat(words.result(met)).doesNotContain("narrower");
    assertThat(words.result(with(open, Verdict.OUTSIDE, false))).doesNotContain("narrower");
  }

  private static Finding with(Finding finding, Verdict verdict, boolean decidable) {
    return new Finding(
        finding.offset(), finding.target(), finding.probabilityWithin(), decidable, verdict);
  }
}
