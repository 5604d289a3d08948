package caryatid.chart.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which load line a drawing shows, where, and how wide: 1.959964 times the standard uncertainty
 * where the degrees of freedom are infinite, 2.776445 times with four of them.
 */
class LoadLineTest {
  private static final AlignmentState STATE = Numbered.state();

  private static LoadLine line(List<Stand> stands, Plane plane) {
    return LoadLine.of(
            new AlignmentState(
                stands, STATE.offsets(), STATE.findings(), STATE.withheld(), List.of()),
            new LegView(plane, Side.RIGHT))
        .orElseThrow();
  }

  /** Of the right foot in the first stand: 48.8 mm anterior, u 2.3 mm; to the right u 0.6 mm. */
  @Test
  void ofOneStandItIsAsWideAsItsCentreOfPressureIsUncertain() {
    List<Stand> one = STATE.stands().subList(0, 1);
    LoadLine sagittal = line(one, Plane.SAGITTAL);
    assertThat(sagittal.of()).isEqualTo(LoadLineOwner.RIGHT_FOOT);
    assertThat(sagittal.acrossMm()).isCloseTo(48.8, within(1e-9));
    assertThat(sagittal.halfMm()).isCloseTo(1.959964 * 2.3, within(1e-5));
    assertThat(line(one, Plane.FRONTAL).halfMm()).isCloseTo(1.959964 * 0.6, within(1e-5));
  }

  /**
   * Of two stands the ankle's offset says it, without what makes the landmark doubtful: the root of
   * 1.1, 0.4, 0.7, 0.2, 0.9 and 3.1 mm squared and added.
   */
  @Test
  void ofTwoStandsItIsAsWideAsTheirStateSaysWithoutTheLandmark() {
    LoadLine sagittal = line(STATE.stands(), Plane.SAGITTAL);
    assertThat(sagittal.acrossMm()).isCloseTo((48.8 + 50.2) / 2, within(1e-9));
    assertThat(sagittal.halfMm()).isCloseTo(2.776445 * Math.sqrt(12.32), within(1e-4));
  }

  @Test
  void whereTheFootsLineIsUnknownTheWholeBodysIsShown() {
    Stand whole = without(STATE.stands().get(0), LoadLineOwner.RIGHT_FOOT);
    LoadLine sagittal = line(List.of(whole), Plane.SAGITTAL);
    assertThat(sagittal.of()).isEqualTo(LoadLineOwner.WHOLE_BODY);
    assertThat(sagittal.acrossMm()).isCloseTo(40.4, within(1e-9));
    assertThat(sagittal.halfMm()).isCloseTo(1.959964 * 2.5, within(1e-5));
  }

  private static Stand without(Stand stand, LoadLineOwner owner) {
    Standing all = stand.standing();
    List<MeanLoad> loads = all.loads().stream().filter(load -> load.of() != owner).toList();
    Standing rest =
        new Standing(
            all.stretch(),
            all.rateHz(),
            loads,
            all.sway(),
            all.placements(),
            all.share(),
            all.remarks());
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        stand.landmarks(),
        rest,
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }
}
