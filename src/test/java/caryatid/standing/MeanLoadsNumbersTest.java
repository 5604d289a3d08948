package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What makes up the uncertainty of mean loads and shares, worked out from their definitions. */
class MeanLoadsNumbersTest {
  private static final int N = 3000;
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");
  private static final PlateAccuracy FORCE_ALONE = new PlateAccuracy(0, 0, 0.005, 0);

  /** Two slow waves, of which the first two cosine transforms are known: 3 n / 2 and n. */
  private static double waves(int i) {
    double at = Math.PI * (i + 0.5) / N;
    return 3 * Math.cos(at) + 2 * Math.cos(2 * at);
  }

  /** Too fast for its mean to be unsure, and more than a dead channel shows. */
  private static double tremble(int i) {
    return i % 2 == 0 ? 0.2 : -0.2;
  }

  private static Recording feet(IntToDoubleFunction leftRight, IntToDoubleFunction leftAnterior) {
    return Made.at(100, N / 100)
        .plate("left", leftRight, leftAnterior, i -> 360)
        .plate("right", i -> 100 + tremble(i), i -> 20 + tremble(i), i -> 440)
        .recording();
  }

  private static List<MeanLoad> loads(PlateAccuracy accuracy) {
    Recording recording = feet(i -> -90 + tremble(i), i -> 30 + tremble(i));
    LoadSignals left = LoadSignals.of(LoadLineOwner.LEFT_FOOT, recording.plates().get(0));
    LoadSignals right = LoadSignals.of(LoadLineOwner.RIGHT_FOOT, recording.plates().get(1));
    return new MeanLoads(accuracy).of(List.of(left, right, LoadSignals.both(left, right)));
  }

  private static double amount(Estimate estimate, Cause cause, String of) {
    return estimate.contributions().stream()
        .filter(c -> c.source().cause() == cause && c.source().of().equals(of))
        .mapToDouble(Contribution::amount)
        .sum();
  }

  /**
   * The class's own formula (Mueller 2007): the root of 2 (T1 squared + T2 squared) / (L1 + L2),
   * over n, with Lj = 1 / (1 + (pi j / effective size) squared).
   */
  @Test
  void swayAddsToAMeanWhatItsTwoSlowestCosinesSay() {
    double[] residuals = IntStream.range(0, N).mapToDouble(MeanLoadsNumbersTest::waves).toArray();
    double effective = EffectiveSampleSize.of(residuals);
    assertThat(effective).isBetween(1.0, 10.0);
    double level = 0;
    for (int j = 1; j <= 2; j++) {
      level += 1 / (1 + Math.pow(Math.PI * j / effective, 2));
    }
    double expected = Math.sqrt(2 * (1.5 * 1.5 + 1) / level);
    Contribution sway = MeanStandardError.of(new Source(Cause.SWAY, ""), residuals);
    assertThat(sway.amount()).isCloseTo(expected, within(1e-9));
    assertThat(sway.amount()).isGreaterThan(Math.sqrt(1.5 * 1.5 + 1));
  }

  /** However heavy the wearer is: the force weighs the samples and cancels. */
  @ParameterizedTest
  @CsvSource({"1", "400", "812"})
  void theSwayOfTheCentreOfPressureDoesNotDependOnTheForce(double upN) {
    Recording recording =
        Made.at(100, N / 100)
            .plate("left", MeanLoadsNumbersTest::waves, i -> 2 * waves(i), i -> upN)
            .recording();
    LoadSignals signals = LoadSignals.of(LoadLineOwner.LEFT_FOOT, recording.plates().get(0));
    MeanLoad load = new MeanLoads(new PlateAccuracy(0, 0, 0, 0)).of(List.of(signals)).get(0);
    double[] residuals = IntStream.range(0, N).mapToDouble(MeanLoadsNumbersTest::waves).toArray();
    double expected = MeanStandardError.of(new Source(Cause.SWAY, ""), residuals).amount();
    assertThat(load.copRightMm().orElseThrow().standardUncertainty())
        .isCloseTo(expected, within(1e-9));
    assertThat(load.copAnteriorMm().standardUncertainty()).isCloseTo(2 * expected, within(1e-9));
  }

  /** Half a percent of 360 and of 440 N. */
  @Test
  void theForceOfBothFeetErrsByEachPlatesOwnForce() {
    Estimate upN = loads(FORCE_ALONE).get(2).upN().orElseThrow();
    assertThat(amount(upN, Cause.PLATE_ACCURACY, "left force")).isCloseTo(1.8, within(1e-9));
    assertThat(amount(upN, Cause.PLATE_ACCURACY, "right force")).isCloseTo(2.2, within(1e-9));
  }

  /**
   * Of 0.45 and 0.55 of the load, 190 mm apart: 0.45 times 0.55 times 190 times half a percent.
   * More force on the left draws the point to the left; both forces wrong alike do not move it.
   */
  @Test
  void errorsOfForceMoveTheWholeBodysPointBetweenTheFeet() {
    Estimate right = loads(FORCE_ALONE).get(2).copRightMm().orElseThrow();
    double lever = 0.45 * 0.55 * 190 * 0.005;
    assertThat(amount(right, Cause.PLATE_ACCURACY, "left force")).isCloseTo(-lever, within(1e-9));
    assertThat(amount(right, Cause.PLATE_ACCURACY, "right force")).isCloseTo(lever, within(1e-9));
  }

  @Test
  void theWholeBodysPointIsTheFeetsWeightedByTheirForceInBothDirections() {
    MeanLoad whole = loads(FORCE_ALONE).get(2);
    assertThat(whole.copRightMm().orElseThrow().value())
        .isCloseTo((360 * -90 + 440 * 100) / 800.0, within(1e-9));
    assertThat(whole.copAnteriorMm().value())
        .isCloseTo((360 * 30 + 440 * 20) / 800.0, within(1e-9));
  }

  /** What one foot bears more the other bears less: the shares' errors cancel in their sum. */
  @Test
  void theSharesOfBothFeetErrAgainstEachOther() throws BadInput {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            PLATES, List.of(Side.LEFT), OptionalDouble.empty(), FORCE_ALONE, Optional.empty());
    Recording recording = feet(i -> -90 + tremble(i), i -> 30 + tremble(i));
    var share = StandAnalysis.analyse(recording, conditions).share();
    Estimate left = share.get(Side.LEFT);
    double one = 0.45 * 0.55 * 0.005;
    assertThat(amount(left, Cause.PLATE_ACCURACY, "left force")).isCloseTo(one, within(1e-12));
    assertThat(amount(left, Cause.PLATE_ACCURACY, "right force")).isCloseTo(-one, within(1e-12));
    assertThat(left.plus(1, share.get(Side.RIGHT)).standardUncertainty())
        .isCloseTo(0, within(1e-12));
  }

  @Test
  void crossedFeetAreRefusedByHowFarTheyAreCrossed() {
    Recording recording = feet(i -> 117.5 + tremble(i), i -> 30 + tremble(i));
    assertThatThrownBy(() -> StandAnalysis.analyse(recording, Made.conditions(PLATES, Side.LEFT)))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(Wording.in(Locale.ENGLISH).say(bad.problems().get(0)))
                    .isEqualTo(
                        "made.csv: the left foot's centre of pressure lies 17.5\u00a0mm to the"
                            + " right of the right foot's. Check which plate the stance gives to"
                            + " which foot, and the axes in the plate description."));
  }

  /** One foot alone may stand on either side of the plate's middle. */
  @ParameterizedTest
  @CsvSource({"LEFT, 40", "LEFT, -40", "RIGHT, 40", "RIGHT, -40"})
  void oneFootAloneIsNotCrossed(Side side, double rightMm) throws BadInput {
    Recording recording =
        Made.at(100, N / 100)
            .plate("p", i -> rightMm + tremble(i), MeanLoadsNumbersTest::tremble, i -> 400)
            .recording();
    Standing standing =
        StandAnalysis.analyse(
            recording, Made.conditions(new Stance.ProstheticFootOnPlate(Optional.empty()), side));
    assertThat(standing.loads().get(0).copRightMm().orElseThrow().value())
        .isCloseTo(rightMm, within(1e-9));
  }

  /** Of 400 N and a mass of which they are 102 or 105 %, known together to 2.2 %. */
  @Test
  void aFootThatBearsMoreThanTheBodyIsRefusedOnceThatIsSure() throws BadInput {
    double sure = 400 / 9.80665 / 1.05;
    assertThat(bearing(400 / 9.80665 / 1.02).share().get(Side.RIGHT).value())
        .isCloseTo(1.02, within(1e-9));
    assertThatThrownBy(() -> bearing(sure))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(Wording.in(Locale.ENGLISH).say(bad.problems().get(0)))
                    .startsWith(
                        "made.csv: the right foot alone bears 105.0\u00a0% of the body's weight,"
                            + " which is impossible."));
  }

  private static Standing bearing(double bodyMassKg) throws BadInput {
    Recording recording =
        Made.at(100, N / 100)
            .plate("p", MeanLoadsNumbersTest::tremble, MeanLoadsNumbersTest::tremble, i -> 400)
            .recording();
    return StandAnalysis.analyse(
        recording,
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            List.of(Side.RIGHT),
            OptionalDouble.of(bodyMassKg),
            FORCE_ALONE,
            Optional.empty()));
  }

  /** Ten seconds unloaded at the end, twenty loaded before. */
  @Test
  void whatIsLeftOutAtTheEndAloneDoesNotCount() throws BadInput {
    Standing standing = loadedWhile(i -> i < 2000);
    assertThat(standing.stretch().fromIndex()).isZero();
    assertOfTheLoadedPart(standing);
  }

  /** Ten seconds unloaded at the start, twenty loaded after. */
  @Test
  void whatIsLeftOutAtTheStartAloneDoesNotCount() throws BadInput {
    Standing standing = loadedWhile(i -> i >= 1000);
    assertThat(standing.stretch().toIndex()).isEqualTo(N);
    assertOfTheLoadedPart(standing);
  }

  private static Standing loadedWhile(IntPredicate loaded) throws BadInput {
    Recording recording =
        Made.at(100, N / 100)
            .plate(
                "p",
                i -> loaded.test(i) ? tremble(i) : 900,
                MeanLoadsNumbersTest::tremble,
                i -> loaded.test(i) ? 400 : 0)
            .recording();
    return StandAnalysis.analyse(recording, Made.rightFoot());
  }

  private static void assertOfTheLoadedPart(Standing standing) {
    MeanLoad load = standing.loads().get(0);
    assertThat(load.upN().orElseThrow().value()).isEqualTo(400);
    assertThat(load.copRightMm().orElseThrow().value()).isCloseTo(0, within(1e-9));
  }
}
