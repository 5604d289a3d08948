package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * A body that stands 4 mm to the right and 10 mm to the front of its mean in the first 10 s of 20,
 * and as far to the left and back in the rest, trembling by 0.5 mm.
 */
class LeaningTest {
  private static double lean(int i, double mm) {
    return (i < 1000 ? mm : -mm) + (i % 2 == 0 ? 0.5 : -0.5);
  }

  private static Recording foot() {
    return Made.at(100, 20)
        .plate("p", i -> 80 + lean(i, 4), i -> 40 + lean(i, 10), i -> 400)
        .recording();
  }

  private static Leaning at(Recording recording, Double... atS) throws BadInput {
    StandAnalysis.Conditions how = Made.rightFoot();
    Standing standing = StandAnalysis.analyse(recording, how);
    return Leaning.at(recording, how, standing, List.of(atS));
  }

  /** Against the stand's mean, whatever that is. */
  @Test
  void itIsWhereTheCentreOfPressureWasWithinASecondOfTheMoment() throws BadInput {
    Leaning front = at(foot(), 5.0);
    Leaning back = at(foot(), 15.0);
    assertThat(front.of()).isEqualTo(LoadLineOwner.RIGHT_FOOT);
    assertThat(front.anteriorMm() - back.anteriorMm()).isCloseTo(20, within(0.01));
    assertThat(front.rightMm() - back.rightMm()).isCloseTo(8, within(0.01));
  }

  /** 201 samples that lie 0.5 mm to one side and the other: root of 201 / 200 times 0.5 mm. */
  @Test
  void itsSpreadIsThatOfTwoSecondsOverTheRootOfTheMoments() throws BadInput {
    assertThat(at(foot(), 5.0).anteriorSdMm()).isCloseTo(0.5, within(0.002));
    assertThat(at(foot(), 5.0, 15.0).anteriorSdMm()).isCloseTo(0.5 / Math.sqrt(2), within(0.002));
  }

  @Test
  void severalMomentsAreAveraged() throws BadInput {
    Leaning both = at(foot(), 5.0, 15.0);
    Leaning front = at(foot(), 5.0);
    Leaning back = at(foot(), 15.0);
    assertThat(both.anteriorMm())
        .isCloseTo((front.anteriorMm() + back.anteriorMm()) / 2, within(1e-9));
  }

  @Test
  void withBothFeetItIsTheWholeBodys() throws BadInput {
    Recording recording =
        Made.at(100, 20)
            .plate("left", i -> -90 + lean(i, 2), i -> 30 + lean(i, 3), i -> 400)
            .plate("right", i -> 100 + lean(i, 2), i -> 30 + lean(i, 3), i -> 400)
            .recording();
    StandAnalysis.Conditions how =
        Made.conditions(new Stance.PlatePerFoot("left", "right"), Side.LEFT);
    Standing standing = StandAnalysis.analyse(recording, how);
    assertThat(Leaning.at(recording, how, standing, List.of(5.0)).of())
        .isEqualTo(LoadLineOwner.WHOLE_BODY);
  }

  /** The last of 2,000 samples is at 19.99 s. */
  @Test
  void aMomentLiesInTheRecordingWithLoadAboutIt() throws BadInput {
    assertThat(at(foot(), 0.0)).isNotNull();
    assertThat(at(foot(), 19.99)).isNotNull();
    refused(foot(), 20.0, "20.00");
    Recording late =
        Made.at(100, 20)
            .plate("p", i -> 80 + lean(i, 1), i -> 40 + lean(i, 1), i -> i < 300 ? 0 : 400)
            .recording();
    assertThat(at(late, 4.01)).isNotNull();
    refused(late, 3.98, "3.98");
  }

  private static void refused(Recording recording, double atS, String said) {
    assertThatThrownBy(() -> at(recording, atS))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(Wording.in(Locale.ENGLISH).say(bad.problems().get(0)))
                    .isEqualTo(
                        "made.csv: `read-at-s` says that a landmark was read at "
                            + said
                            + "\u00a0s, but the recording has no samples with load for a second"
                            + " before and after. Correct the time, counted from the first sample"
                            + " of the first recording, or leave it out."));
  }
}
