package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.uncertainty.Estimate;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What must not change, or change in a known way, when a recording is changed in a known way. */
class InvariantsTest {
  private static final int N = 3000;
  private static final double[] RIGHT = Made.autoregressive(new Random(21), N, 0.99);
  private static final double[] ANTERIOR = Made.autoregressive(new Random(22), N, 0.995);
  private static final double[] FORCE = Made.autoregressive(new Random(23), N, 0.98);
  private static final IntToDoubleFunction X = i -> 91 + 2 * RIGHT[i];
  private static final IntToDoubleFunction Y = i -> 43 + 5 * ANTERIOR[i];
  private static final IntToDoubleFunction F = i -> 400 + 2 * FORCE[i];

  private static Standing stand(
      IntToDoubleFunction x, IntToDoubleFunction y, IntToDoubleFunction f, Side side)
      throws BadInput {
    return StandAnalysis.analyse(
        Made.at(100, 30).plate("p", x, y, f).recording(),
        Made.conditions(new Stance.ProstheticFootOnPlate(java.util.Optional.empty()), side));
  }

  private static void alike(Estimate a, Estimate b, double shift, double scale) {
    assertThat(b.value()).isCloseTo(scale * a.value() + shift, within(1e-9));
    assertThat(b.standardUncertainty())
        .isCloseTo(Math.abs(scale) * a.standardUncertainty(), within(1e-9));
  }

  @Test
  void shiftingThePlateShiftsTheMeanAndNothingElse() throws BadInput {
    Standing here = stand(X, Y, F, Side.RIGHT);
    Standing there = stand(i -> X.applyAsDouble(i) + 250, Y, F, Side.RIGHT);
    alike(
        here.loads().get(0).copRightMm().orElseThrow(),
        there.loads().get(0).copRightMm().orElseThrow(),
        250,
        1);
    alike(here.loads().get(0).copAnteriorMm(), there.loads().get(0).copAnteriorMm(), 0, 1);
    assertThat(there.stretch()).isEqualTo(here.stretch());
    assertThat(there.sway().get(0).both().orElseThrow().pathMm())
        .isCloseTo(here.sway().get(0).both().orElseThrow().pathMm(), within(1e-9));
  }

  @Test
  void theMirroredPersonIsTheMirroredStandExactly() throws BadInput {
    Standing right = stand(X, Y, F, Side.RIGHT);
    Standing left = stand(i -> -X.applyAsDouble(i), Y, F, Side.LEFT);
    Estimate a = right.load(LoadLineOwner.RIGHT_FOOT).orElseThrow().copRightMm().orElseThrow();
    Estimate b = left.load(LoadLineOwner.LEFT_FOOT).orElseThrow().copRightMm().orElseThrow();
    assertThat(b.value()).isEqualTo(-a.value());
    assertThat(b.standardUncertainty()).isEqualTo(a.standardUncertainty());
    assertThat(left.sway().get(0).both().orElseThrow().ellipseMm2())
        .isEqualTo(right.sway().get(0).both().orElseThrow().ellipseMm2());
  }

  @Test
  void aHeavierPersonWhoSwaysAlikeHasTheSameLine() throws BadInput {
    Standing light = stand(X, Y, F, Side.RIGHT);
    Standing heavy = stand(X, Y, i -> 1.7 * F.applyAsDouble(i), Side.RIGHT);
    alike(
        light.loads().get(0).copRightMm().orElseThrow(),
        heavy.loads().get(0).copRightMm().orElseThrow(),
        0,
        1);
    alike(
        light.loads().get(0).upN().orElseThrow(), heavy.loads().get(0).upN().orElseThrow(), 0, 1.7);
  }

  @Test
  void timeBackwardsChangesNothing() throws BadInput {
    Standing forwards = stand(X, Y, F, Side.RIGHT);
    Standing backwards =
        stand(
            i -> X.applyAsDouble(N - 1 - i),
            i -> Y.applyAsDouble(N - 1 - i),
            i -> F.applyAsDouble(N - 1 - i),
            Side.RIGHT);
    alike(
        forwards.loads().get(0).copRightMm().orElseThrow(),
        backwards.loads().get(0).copRightMm().orElseThrow(),
        0,
        1);
    alike(forwards.loads().get(0).copAnteriorMm(), backwards.loads().get(0).copAnteriorMm(), 0, 1);
    assertThat(backwards.sway().get(1).both().orElseThrow().pathMm())
        .isCloseTo(forwards.sway().get(1).both().orElseThrow().pathMm(), within(1e-6));
    assertThat(backwards.stretch().size()).isEqualTo(forwards.stretch().size());
  }

  /** The person turned by a right angle: what was sideways is fore and aft. */
  @Test
  void turningByARightAngleSwapsTheDirections() throws BadInput {
    Standing before = stand(X, Y, F, Side.RIGHT);
    Standing after = stand(i -> -Y.applyAsDouble(i), X, F, Side.RIGHT);
    alike(
        before.loads().get(0).copRightMm().orElseThrow(),
        after.loads().get(0).copAnteriorMm(),
        0,
        1);
    alike(
        before.loads().get(0).copAnteriorMm(),
        after.loads().get(0).copRightMm().orElseThrow(),
        0,
        -1);
    assertThat(after.sway().get(0).both().orElseThrow().ellipseMm2())
        .isCloseTo(before.sway().get(0).both().orElseThrow().ellipseMm2(), within(1e-9));
  }
}
