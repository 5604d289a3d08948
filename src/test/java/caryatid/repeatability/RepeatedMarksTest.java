package caryatid.repeatability;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.uncertainty.SampleVariance;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RepeatedMarksTest {
  private static final String HEAD =
      "hand-repeatability: 1\nat: 2026-11-28T09:00+01:00\nby: AB\nlandmarks:\n";

  private static RepeatedMarks read(String landmarks) throws BadInput {
    return RepeatedMarks.read(NamedBytes.of("hand.yaml", (HEAD + landmarks).getBytes(UTF_8)));
  }

  private static List<String> said(String landmarks) {
    return catchThrowableOfType(BadInput.class, () -> read(landmarks)).problems().stream()
        .map(Wording.in(Locale.ENGLISH)::say)
        .toList();
  }

  /**
   * Validation, by hand: 92, 94, 91, 95, 93 have the mean 93 and squares 1 + 1 + 4 + 4 + 0 = 10
   * with 4 degrees; 300, 306, 303 the mean 303 and squares 9 + 9 + 0 = 18 with 2. Pooled 28 / 6.
   */
  @Test
  void theVarianceIsPooledOverLandmarks() throws BadInput {
    SampleVariance variance =
        read("  - {name: ankle, mm: [92, 94, 91, 95, 93]}\n"
                + "  - {name: knee, mm: [300, 306, 303]}\n")
            .variance();
    assertThat(variance.variance()).isCloseTo(28.0 / 6, within(1e-12));
    assertThat(variance.degreesOfFreedom()).isEqualTo(6);
  }

  @Test
  void marksThatAllReadTheSameAreKnownToTheRulersMillimetre() throws BadInput {
    SampleVariance same = read("  - {name: ankle, mm: [92, 92, 92, 92, 92]}\n").variance();
    assertThat(Math.sqrt(same.variance())).isCloseTo(0.288675, within(1e-6));
  }

  @Test
  void fourDegreesAreEnoughAndThreeAreNot() throws BadInput {
    assertThat(read("  - {name: ankle, mm: [1, 2, 3, 4, 5]}\n").landmarks()).hasSize(1);
    assertThat(said("  - {name: ankle, mm: [1, 2, 3, 4]}\n"))
        .containsExactly(
            "hand.yaml line 5, column 3: the marks have 3 degrees of freedom together; at least 4"
                + " are needed. Mark one landmark five times, or several landmarks more than once,"
                + " and wipe the mark off each time.");
  }

  /** By hand: -a, a, -a, a, 0 scatter by a. What is larger could be written and not read again. */
  @Test
  void marksThatScatterByMoreThanFiftyMillimetresAreTakenForASlip() throws BadInput {
    assertThat(read("  - {name: knee, mm: [-50, 50, -50, 50, 0]}\n").landmarks()).hasSize(1);
    assertThat(said("  - {name: knee, mm: [-51, 51, -51, 51, 0]}\n"))
        .containsExactly(
            "hand.yaml line 5, column 3: they scatter by 51.0\u00a0mm; more than 50.0\u00a0mm is"
                + " taken for a typing error. Check the numbers.");
  }

  @Test
  void aLandmarkThatWasMarkedOnceIsRefused() {
    assertThat(said("  - {name: ankle, mm: [1, 2, 3, 4, 5]}\n  - {name: knee, mm: [3]}\n"))
        .containsExactly(
            "hand.yaml line 6, column 22: expected at least two distances in `mm`. Wipe the mark"
                + " off, then mark and measure the landmark again.");
  }
}
