package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Both sides of every limit of {@link Sizes}; 60 s at 100 Hz. */
class SizesTest {
  private static final int N = 6000;
  private static final Stance BODY = new Stance.BothFeetOnOnePlate(Optional.empty());
  private static final Stance FOOT = new Stance.ProstheticFootOnPlate(Optional.empty());

  /** A sine of a standard deviation (n - 1) and a mean speed, mm and mm/s. */
  private static IntToDoubleFunction wave(double sdMm, double hz) {
    double amplitude = sdMm * Math.sqrt(2 * (N - 1.0) / N);
    return i -> amplitude * Math.sin(2 * Math.PI * hz * i / 100);
  }

  private static List<Topic> topics(Stance stance, Made made) throws Exception {
    return StandAnalysis.analyse(made.recording(), Made.conditions(stance, Side.RIGHT))
        .remarks()
        .stream()
        .map(Remark::topic)
        .filter(
            topic ->
                List.of(
                        StandRemark.SMALL_MOVEMENT,
                        StandRemark.SLOW_MOVEMENT,
                        StandRemark.FAST_MOVEMENT,
                        StandRemark.DIRECTIONS_APART,
                        StandRemark.LIGHT_LOAD,
                        StandRemark.SMALL_PUSH,
                        StandRemark.MUCH_LEAN)
                    .contains(topic))
        .toList();
  }

  private static List<Topic> body(IntToDoubleFunction right, IntToDoubleFunction anterior)
      throws Exception {
    return topics(
        new Stance.BothFeetOnOnePlate(Optional.empty()),
        Made.at(100, 60).plate("p", right, anterior, i -> 800));
  }

  private static List<Topic> foot(
      double upN, IntToDoubleFunction right, IntToDoubleFunction anterior) throws Exception {
    return topics(
        new Stance.ProstheticFootOnPlate(Optional.empty()),
        Made.at(100, 60).plate("p", right, anterior, i -> upN));
  }

  /** 0.21 mm and 0.075 mm times the root of 50. */
  @Test
  void aSmallMovementIsRemarked() throws Exception {
    assertThat(body(wave(1, 0.5), wave(1.484, 0.5))).containsExactly(StandRemark.SMALL_MOVEMENT);
    assertThat(body(wave(1, 0.5), wave(1.486, 0.5))).isEmpty();
    assertThat(body(wave(0.529, 1), wave(2, 0.5))).containsExactly(StandRemark.SMALL_MOVEMENT);
    assertThat(body(wave(0.531, 1), wave(2, 0.5))).isEmpty();
  }

  @Test
  void oneFootMayMoveLittleSideways() throws Exception {
    assertThat(foot(400, wave(0.3, 1), wave(2, 0.5))).isEmpty();
  }

  /** The mean speed of a sine is 4 amplitude times frequency: 2.26 and 2.03 mm/s at 0.2 mm. */
  @Test
  void aSlowMovementIsRemarked() throws Exception {
    assertThat(body(wave(1, 0.5), wave(4, 0.1))).isEmpty();
    assertThat(body(wave(1, 0.5), wave(4, 0.09))).containsExactly(StandRemark.SLOW_MOVEMENT);
  }

  /**
   * 4 times 10 mm times root 2 times 0.7 Hz are 39.6 mm/s; tenths of a second cut off the peaks.
   */
  @Test
  void aFastMovementIsRemarked() throws Exception {
    assertThat(body(wave(5, 0.5), wave(10, 0.7))).isEmpty();
    assertThat(body(wave(5, 0.5), wave(10.7, 0.7))).containsExactly(StandRemark.FAST_MOVEMENT);
    assertThat(body(wave(10.8, 0.5), wave(7, 0.7))).isEmpty();
    assertThat(body(wave(11.3, 0.5), wave(7, 0.7))).containsExactly(StandRemark.FAST_MOVEMENT);
  }

  @Test
  void directionsThatMoveApartAreRemarked() throws Exception {
    assertThat(foot(400, wave(0.5, 0.5), wave(4.9, 0.5))).isEmpty();
    assertThat(foot(400, wave(0.5, 0.5), wave(5.1, 0.5)))
        .containsExactly(StandRemark.DIRECTIONS_APART);
    assertThat(foot(400, wave(8, 0.5), wave(2.5, 0.5))).isEmpty();
    assertThat(foot(400, wave(8, 0.5), wave(2.3, 0.5)))
        .containsExactly(StandRemark.DIRECTIONS_APART);
  }

  @Test
  void aLightFootIsRemarked() throws Exception {
    assertThat(foot(98.1, wave(1, 0.5), wave(3, 0.5))).isEmpty();
    assertThat(foot(98.0, wave(1, 0.5), wave(3, 0.5))).containsExactly(StandRemark.LIGHT_LOAD);
  }

  @Test
  void aFootThatLeansFarIsRemarked() throws Exception {
    assertThat(leaning(47.99)).isEmpty();
    assertThat(leaning(48.01)).containsExactly(StandRemark.MUCH_LEAN);
  }

  private static List<Topic> leaning(double pushN) throws Exception {
    return topics(
        new Stance.ProstheticFootOnPlate(Optional.empty()),
        Made.at(100, 60)
            .plate("p", wave(1, 0.5), wave(3, 0.5), i -> 400)
            .pushed(0.6 * pushN, 0.8 * pushN));
  }

  /** 0.0003 and 0.0006 per mm, times 400 N, times the movement of 3 and 1 mm: 0.36 and 0.24 N. */
  @Test
  void aHorizontalForceThatHardlyFollowsTheFootIsRemarked() throws Exception {
    assertThat(pushed(FOOT, 0.241, 0.361)).isEmpty();
    assertThat(pushed(FOOT, 0.241, 0.359)).containsExactly(StandRemark.SMALL_PUSH);
    assertThat(pushed(FOOT, 0.239, 0.361)).containsExactly(StandRemark.SMALL_PUSH);
  }

  /** Sideways 0.0003 per mm, too. */
  @Test
  void sidewaysTheWholeBodyNeedsHalfAsMuch() throws Exception {
    assertThat(pushed(BODY, 0.121, 0.361)).isEmpty();
    assertThat(pushed(BODY, 0.119, 0.361)).containsExactly(StandRemark.SMALL_PUSH);
  }

  @Test
  void aConstantHorizontalForceIsNotRemarkedHere() throws Exception {
    assertThat(pushed(FOOT, 0, 0)).isEmpty();
  }

  private static List<Topic> pushed(Stance stance, double rightN, double anteriorN)
      throws Exception {
    return topics(
        stance,
        Made.at(100, 60)
            .plate("p", wave(1, 0.5), wave(3, 0.5), i -> 400)
            .pushed(wave(rightN, 0.5), wave(anteriorN, 0.5)));
  }
}
