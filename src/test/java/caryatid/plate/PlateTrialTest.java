package caryatid.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof.MeasuredValue;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.uncertainty.Quantiles;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlateTrialTest {
  private static final Axes AXES = new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.PLUS_Z);
  private static final double[][] CORNERS = {{-150, -200}, {150, -200}, {150, 200}, {-150, 200}};
  private static final PersonMoves PERSON = person(OptionalDouble.empty(), 800);

  private static PersonMoves person(OptionalDouble kg, double upN) {
    return new PersonMoves(load(0, 0, upN), load(2, 60, upN), load(-90, 0, upN), Side.LEFT, kg);
  }

  private static ShownLoad load(double right, double anterior, double upN) {
    return new ShownLoad(
        List.of("plate 1"), right, anterior, OptionalDouble.of(upN), Optional.empty());
  }

  private static ProofDoubts doubts(double placeMm) {
    return new ProofDoubts(placeMm, 0.002, 80, List.of());
  }

  private static PlateTrial.ProofOutcome outcome(List<MarkedWeight> marks, double placeMm) {
    return new PlateTrial(marks, PERSON, doubts(placeMm), AXES, Place.of("p.yaml")).outcome();
  }

  /** Four corners, shown with errors; a weight of so many kilograms. */
  private static List<MarkedWeight> marks(double kg, double[][] errors) {
    List<MarkedWeight> marks = new ArrayList<>();
    for (int i = 0; i < CORNERS.length; i++) {
      double right = CORNERS[i][0];
      double anterior = CORNERS[i][1];
      ShownLoad shown = load(right + errors[i][0], anterior + errors[i][1], kg * 9.80665);
      marks.add(new MarkedWeight(right, anterior, kg, shown));
    }
    return marks;
  }

  /**
   * Validation, by hand: errors of 3 and -3 mm in turn around the corners are no map's. Each
   * direction keeps 4 times 9 mm^2, 72 in all, with 2 times 4 - 6 = 2 degrees: 6 mm of scatter. Of
   * the scale to the right sum (150^2) = 90,000: 6 / 300 = 0.02; the mean of four: 6 / 2 = 3 mm.
   */
  @Test
  void scatterAndWhatItLeavesInScaleAndZeroAreThoseOfAComputationByHand() {
    double[][] errors = {{3, 3}, {-3, -3}, {3, 3}, {-3, -3}};
    AffineFit fit = new AffineFit(marks(80, errors));
    assertThat(Math.sqrt(fit.variance())).isCloseTo(6, within(1e-9));
    assertThat(fit.degrees()).isEqualTo(2);
    assertThat(fit.ofScaleRight()).isCloseTo(1.0 / 300, within(1e-12));
    assertThat(fit.ofScaleAnterior()).isCloseTo(1.0 / 400, within(1e-12));
    assertThat(fit.ofTurn()).isCloseTo(Math.hypot(1.0 / 300, 1.0 / 400) / 2, within(1e-12));
    assertThat(fit.ofZero()).isCloseTo(0.5, within(1e-12));
  }

  /**
   * Validation, by hand: root mean square 3 mm with 4 degrees, place 1 mm with 8, and at 80 kg
   * nothing for the load: u = sqrt(9 + 1), t = 2.776 and 2.306, half-width sqrt(9 2.776^2 +
   * 2.306^2).
   */
  @Test
  void theCentreOfPressureIsAsUncertainAsItsDeviationsAndTheWeightsPlace() {
    double[][] errors = {{3, 3}, {-3, -3}, {3, 3}, {-3, -3}};
    PlateAccuracy accuracy = outcome(marks(80, errors), 1).accuracy();
    assertThat(accuracy.copMm()).isCloseTo(Math.sqrt(10), within(1e-9));
    double t = Quantiles.t(0.975, accuracy.degrees().cop());
    double half = Math.sqrt(9 * 2.7764451 * 2.7764451 + 2.3060041 * 2.3060041);
    assertThat(t * Math.sqrt(10)).isCloseTo(half, within(1e-4));
  }

  /** 20 kg are a quarter of 80 kg: three quarters of the assumed 2 mm are not seen. */
  @Test
  void aLightWeightSaysLittleOfAPlateUnderAPerson() {
    double[][] none = new double[4][2];
    assertThat(outcome(marks(80, none), 1).accuracy().copMm()).isCloseTo(1, within(1e-9));
    assertThat(outcome(marks(20, none), 1).accuracy().copMm())
        .isCloseTo(Math.hypot(1, 1.5), within(1e-9));
    assertThat(outcome(marks(120, none), 1).accuracy().copMm()).isCloseTo(1, within(1e-9));
  }

  @Test
  void anAccuracyThatWasNotMeasuredStaysAsAssumedWithEightDegrees() {
    PlateAccuracy accuracy = outcome(marks(20, new double[4][2]), 1).accuracy();
    assertThat(accuracy.levelRad()).isEqualTo(0.002);
    assertThat(accuracy.leanRad()).isEqualTo(Math.toRadians(0.7));
    assertThat(accuracy.degrees().level()).isEqualTo(8);
    assertThat(accuracy.degrees().lean()).isEqualTo(8);
  }

  @Test
  void aLevelThatWasReadFourTimesHasFourDegrees() {
    ProofDoubts read = new ProofDoubts(1, 0.002, 80, List.of(0.001, -0.001, 0.003, -0.003));
    PlateAccuracy accuracy =
        new PlateTrial(marks(20, new double[4][2]), PERSON, read, AXES, Place.of("p"))
            .outcome()
            .accuracy();
    assertThat(accuracy.levelRad()).isCloseTo(Math.sqrt(5e-6), within(1e-12));
    assertThat(accuracy.degrees().level()).isEqualTo(4);
  }

  /** A person of 81.577 kg bears 800 N: the force is seen at its load, and nothing is added. */
  @Test
  void aPersonOfKnownMassShowsTheForceAtItsLoad() {
    List<MarkedWeight> marks = marks(20, new double[4][2]);
    PersonMoves known = person(OptionalDouble.of(800 / 9.80665), 800);
    double alone = outcome(marks, 1).accuracy().forceFraction();
    double with =
        new PlateTrial(marks, known, doubts(1), AXES, Place.of("p"))
            .outcome()
            .accuracy()
            .forceFraction();
    assertThat(with).isCloseTo(Math.hypot(0.002, 0.026 / Math.sqrt(3) / 9.80665), within(1e-9));
    assertThat(alone).isCloseTo(Math.hypot(with, 0.00375), within(1e-9));
  }

  /**
   * Validation by simulation: marks that lie 1 mm off, each by itself and all together. Each
   * interval of 95 % holds the truth in 95 % or more of 1,000 proofs, as does that of a person's
   * centre of pressure anywhere near the marks. By chance alone 95 % would come out below 93.6 % in
   * one of 40 studies (binomial).
   */
  @Test
  void intervalsHoldTheTruth() {
    Random random = new Random(20261128);
    int[] held = new int[6];
    int proofs = 1000;
    for (int i = 0; i < proofs; i++) {
      double commonR = 0.7 * random.nextGaussian();
      double commonA = 0.7 * random.nextGaussian();
      double[][] errors = new double[4][2];
      for (double[] error : errors) {
        error[0] = commonR + 0.7 * random.nextGaussian();
        error[1] = commonA + 0.7 * random.nextGaussian();
      }
      PlateTrial.ProofOutcome outcome = outcome(marks(80, errors), 1);
      Shown shown = outcome.plates().get(0).shown();
      held[0] += holds(shown.scaleRight(), 1);
      held[1] += holds(shown.scaleAnterior(), 1);
      held[2] += holds(shown.turnDeg(), 0);
      held[3] += holds(shown.zeroRightMm(), 0);
      held[4] += holds(shown.zeroAnteriorMm(), 0);
      PlateAccuracy accuracy = outcome.accuracy();
      double error = commonR + 0.7 * random.nextGaussian();
      held[5] +=
          Math.abs(error) <= accuracy.copMm() * Quantiles.t(0.975, accuracy.degrees().cop())
              ? 1
              : 0;
    }
    assertThat(java.util.Arrays.stream(held).min().orElseThrow()).isGreaterThanOrEqualTo(950);
  }

  private static int holds(MeasuredValue measure, double truth) {
    return measure.excludes(truth) ? 0 : 1;
  }

  @Test
  void threeMarksAreTooFewAndFourAreEnough() {
    List<MarkedWeight> four = marks(20, new double[4][2]);
    assertThat(codes(four)).isEmpty();
    assertThat(codes(four.subList(0, 3))).containsExactly("PlateFault.FEW_MARKS");
  }

  @Test
  void marksOnALineOrNearEachOtherAreRefused() {
    double[][] line = {{-150, -200}, {-50, -66}, {50, 67}, {150, 200}};
    double[][] near = {{-49, -200}, {50, -200}, {50, 200}, {-49, 200}};
    double[][] apart = {{-50, -200}, {50, -200}, {50, 200}, {-50, 200}};
    assertThat(codes(at(line))).containsExactly("PlateFault.MARKS_TOO_CLOSE");
    assertThat(codes(at(near))).containsExactly("PlateFault.MARKS_TOO_CLOSE");
    assertThat(codes(at(apart))).isEmpty();
  }

  private static List<MarkedWeight> at(double[][] places) {
    List<MarkedWeight> marks = new ArrayList<>();
    for (double[] place : places) {
      marks.add(new MarkedWeight(place[0], place[1], 20, load(place[0], place[1], 20 * 9.80665)));
    }
    return marks;
  }

  private static List<String> codes(List<MarkedWeight> marks) {
    return outcome(marks, 1).faults().stream().map((Problem p) -> p.topic().code()).toList();
  }

  @Test
  void aPersonWhoFacesTheOtherWayIsFound() {
    ShownLoad middle = load(0, 0, 800);
    assertThat(person(load(0, -60, 800), load(-90, 0, 800)))
        .containsExactly("PlateFault.PERSON_FORWARD");
    assertThat(person(load(0, 60, 800), load(90, 0, 800)))
        .containsExactly("PlateFault.PERSON_SIDE");
    assertThat(person(load(0, 60, 800), middle)).containsExactly("PlateFault.PERSON_STILL");
    assertThat(person(load(0, 60, 800), load(-90, 0, 800))).isEmpty();
  }

  private static List<String> person(ShownLoad forward, ShownLoad oneFoot) {
    PersonMoves moves =
        new PersonMoves(load(0, 0, 800), forward, oneFoot, Side.LEFT, OptionalDouble.empty());
    return PersonMovesCheck.faults(moves, Place.of("p")).stream()
        .map(p -> p.topic().code())
        .toList();
  }

  /** Both sides of the threshold: the mean over both directions, so 20 mm in each. */
  @Test
  void aPlateThatShowsWeightsFarFromWhereTheyStandIsNotProven() {
    assertThat(codes(marks(20, shifted(19.99)))).isEmpty();
    assertThat(codes(marks(20, shifted(20.01)))).containsExactly("PlateFault.PLACES_OFF");
  }

  private static double[][] shifted(double mm) {
    double[][] errors = new double[CORNERS.length][2];
    for (double[] error : errors) {
      error[0] = mm;
      error[1] = mm;
    }
    return errors;
  }

  @Test
  void aPlateThatBearsThePersonAndNoWeightIsNotProven() {
    ShownLoad both =
        new ShownLoad(
            List.of("plate 1", "plate 2"), 0, 0, OptionalDouble.of(800), Optional.empty());
    PersonMoves moves =
        new PersonMoves(both, load(2, 60, 800), load(-90, 0, 800), Side.LEFT, PERSON.kg());
    List<Problem> faults =
        new PlateTrial(marks(20, new double[4][2]), moves, doubts(1), AXES, Place.of("p.yaml"))
            .outcome()
            .faults();
    assertThat(faults.stream().map(Wording.in(Locale.ENGLISH)::say))
        .containsExactly(
            "p.yaml: “plate 2” has 0 marks with a weight; at least 4 are needed. Put the weight on"
                + " more marks; five are better: four near the corners and one in the middle.");
  }

  /** A level is read to 0.1 degree: 0.1 / root 12 (JCGM 100:2008, F.2.2.1), by hand 0.0288675. */
  @Test
  void aLevelThatShowsNothingIsKnownToWhatItIsReadTo() {
    ProofDoubts flat = new ProofDoubts(1, 0.002, 80, List.of(0.0, 0.0, 0.0, 0.0));
    PlateAccuracy accuracy =
        new PlateTrial(marks(20, new double[4][2]), PERSON, flat, AXES, Place.of("p"))
            .outcome()
            .accuracy();
    assertThat(Math.toDegrees(accuracy.levelRad())).isCloseTo(0.0288675, within(1e-6));
  }

  @Test
  void aLeanIsFifteenMillimetresAnteriorly() {
    assertThat(person(load(14, 14.9, 800), load(-90, 0, 800)))
        .containsExactly("PlateFault.PERSON_FORWARD");
    assertThat(person(load(14, 15.1, 800), load(-90, 0, 800))).isEmpty();
  }

  @Test
  void aWeightOnTwoPlatesIsRefused() {
    List<MarkedWeight> marks = new ArrayList<>(marks(20, new double[4][2]));
    ShownLoad both =
        new ShownLoad(List.of("left", "right"), 0, 0, OptionalDouble.of(196), Optional.empty());
    marks.add(new MarkedWeight(0, 0, 20, both));
    assertThat(codes(marks)).containsExactly("PlateFault.TWO_PLATES");
  }
}
