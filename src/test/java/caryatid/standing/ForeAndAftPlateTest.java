package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plates that measure fore and aft only say of that direction exactly what plates say that measure
 * both. Validation by invariance.
 */
class ForeAndAftPlateTest {
  private static final int SAMPLES = 6000;

  static List<Stance> stances() {
    return List.of(
        new Stance.PlatePerFoot("left", "right"),
        new Stance.ProstheticFootOnPlate(Optional.of("right")),
        new Stance.BothFeetOnOnePlate(Optional.of("left")));
  }

  private static IntToDoubleFunction sway(long seed, double mean, double sd) {
    double[] noise = Made.autoregressive(new Random(seed), SAMPLES, 0.99);
    return i -> mean + sd * noise[i];
  }

  private static Made recorded() {
    return Made.at(100, 60)
        .plate("left", sway(1, -90, 2), sway(2, 40, 5), sway(3, 410, 1))
        .plate("right", sway(4, 90, 2), sway(5, 35, 4), sway(6, 390, 1));
  }

  private static Standing analysed(Made made, Stance stance) throws BadInput {
    return StandAnalysis.analyse(made.recording(), Made.conditions(stance, Side.RIGHT));
  }

  @ParameterizedTest
  @MethodSource("stances")
  void theDirectionTheyMeasureIsAsOnAnyPlate(Stance stance) throws BadInput {
    Standing both = analysed(recorded(), stance);
    Standing alone = analysed(recorded().foreAndAft(), stance);
    assertThat(alone.stretch()).isEqualTo(both.stretch());
    assertThat(alone.share()).isEqualTo(both.share());
    assertThat(alone.loads()).hasSameSizeAs(both.loads());
    for (int i = 0; i < both.loads().size(); i++) {
      assertThat(alone.loads().get(i).copAnteriorMm())
          .isEqualTo(both.loads().get(i).copAnteriorMm());
      assertThat(alone.loads().get(i).upN()).isEqualTo(both.loads().get(i).upN());
    }
    for (int i = 0; i < both.sway().size(); i++) {
      Sway one = both.sway().get(i);
      assertThat(alone.sway().get(i))
          .isEqualTo(
              new Sway(
                  one.of(),
                  one.lowPassHz(),
                  one.sdAnteriorMm(),
                  one.rangeAnteriorMm(),
                  one.effectiveAnterior(),
                  Optional.empty()));
    }
  }

  @ParameterizedTest
  @MethodSource("stances")
  void nothingIsSaidSideways(Stance stance) throws BadInput {
    Standing alone = analysed(recorded().foreAndAft(), stance);
    assertThat(alone.loads()).allMatch(load -> load.copMm(Plane.FRONTAL).isEmpty());
    assertThat(alone.loads()).allMatch(load -> load.lean().isEmpty());
    assertThat(alone.placements())
        .extracting(PercentileRank::measure)
        .doesNotContain(PercentileRank.Measure.SD_RIGHT, PercentileRank.Measure.MEAN_SPEED);
    assertThat(alone.remarks())
        .noneMatch(
            remark ->
                remark.arguments().contains(Argument.term(Plane.FRONTAL))
                    || remark.topic() == StandRemark.DIRECTIONS_APART);
  }

  @Test
  void theSumOfAPlateThatMeasuresBothAndOneThatDoesNotSaysNothingSideways() throws BadInput {
    Made mixed =
        Made.at(100, 60)
            .plate("left", sway(1, -90, 2), sway(2, 40, 5), sway(3, 410, 1))
            .foreAndAft()
            .plate("right", sway(4, 90, 2), sway(5, 35, 4), sway(6, 390, 1));
    Standing standing = analysed(mixed, stances().get(0));
    assertThat(standing.loads())
        .extracting(load -> load.copRightMm().isPresent())
        .containsExactly(false, true, false);
    assertThat(standing.sway())
        .filteredOn(sway -> sway.both().isPresent())
        .extracting(Sway::of)
        .containsOnly(LoadLineOwner.RIGHT_FOOT);
  }
}
