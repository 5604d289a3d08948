package caryatid.usecase.prove;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.MeasuredValue;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.usecase.prove.SimulatedPlate.Kind;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Validation: plates that are wrong by a known fault each. What must be found is worked out here
 * from the fault, without the code under test.
 */
class SimulatedPlatesTest {
  private static final double KG = 20;

  private static ProvePlate.Proven prove(SimulatedPlate plate, long seed) throws BadInput {
    return prove(plate.description(), plate, seed);
  }

  private static ProvePlate.Proven prove(NamedBytes description, SimulatedPlate plate, long seed)
      throws BadInput {
    return ProvePlate.run(
        description, SimulatedPlate.sheet(KG), SimulatedPlate.finder(plate.recordings(KG, seed)));
  }

  private static List<String> faults(SimulatedPlate plate) {
    return faults(plate.description(), plate);
  }

  private static List<String> faults(NamedBytes description, SimulatedPlate plate) {
    try {
      prove(description, plate, 1);
      return List.of();
    } catch (BadInput e) {
      List<String> said = new ArrayList<>();
      for (Problem problem : e.problems()) {
        said.add(Wording.in(Locale.ENGLISH).say(problem));
      }
      return said;
    }
  }

  private static String flipped(String direction) {
    return (direction.startsWith("+") ? "-" : "+") + direction.substring(1);
  }

  private static String signed(String direction, int sign) {
    return sign > 0 ? direction : flipped(direction);
  }

  /** A wrong pair of axes. */
  private record Wrong(String name, boolean swapped, int first, int second) {
    /** The shown right is the first sign times the true right, or the true anterior if swapped. */
    double[] map() {
      return swapped
          ? new double[] {0, second, first, 0, 0, 0}
          : new double[] {first, 0, 0, second, 0, 0};
    }

    String axes(Kind kind) {
      String right = swapped ? signed(kind.anterior, second) : signed(kind.right, first);
      String anterior = swapped ? signed(kind.right, first) : signed(kind.anterior, second);
      return "axes: {right: " + right + ", anterior: " + anterior + ", up: " + kind.up + "}";
    }
  }

  private static final List<Wrong> WRONG =
      List.of(
          new Wrong("right reversed", false, -1, 1),
          new Wrong("anterior reversed", false, 1, -1),
          new Wrong("both reversed", false, -1, -1),
          new Wrong("swapped", true, 1, 1),
          new Wrong("swapped, right reversed", true, -1, 1),
          new Wrong("swapped, anterior reversed", true, 1, -1),
          new Wrong("swapped, both reversed", true, -1, -1));

  @TestFactory
  Stream<DynamicTest> reversedAndSwappedAxesAreFoundWithTheRightOnes() {
    return Stream.of(Kind.values())
        .flatMap(
            kind ->
                WRONG.stream()
                    .map(
                        wrong ->
                            DynamicTest.dynamicTest(
                                kind + " " + wrong.name(),
                                () ->
                                    assertThat(faults(SimulatedPlate.of(kind, wrong.map())))
                                        .anyMatch(said -> said.contains(wrong.axes(kind))))));
  }

  /** A plate that shows places elsewhere than they are: scales, turn in degrees, zero in mm. */
  private record Off(
      String name, double right, double anterior, double turnDeg, double zeroR, double zeroA) {
    double[] map() {
      double c = Math.cos(Math.toRadians(turnDeg));
      double s = Math.sin(Math.toRadians(turnDeg));
      return new double[] {right * c, right * s, -anterior * s, anterior * c, zeroR, zeroA};
    }
  }

  private static final List<Off> OFF =
      List.of(
          new Off("right times 1.02", 1.02, 1, 0, 0, 0),
          new Off("anterior times 1.02", 1, 1.02, 0, 0, 0),
          new Off("both times 1.02", 1.02, 1.02, 0, 0, 0),
          new Off("both times 0.98", 0.98, 0.98, 0, 0, 0),
          new Off("turned to the left by 3 degrees", 1, 1, 3, 0, 0),
          new Off("turned to the right by 3 degrees", 1, 1, -3, 0, 0),
          new Off("5 mm to the right", 1, 1, 0, 5, 0),
          new Off("5 mm to the left", 1, 1, 0, -5, 0),
          new Off("5 mm anterior", 1, 1, 0, 0, 5),
          new Off("5 mm posterior", 1, 1, 0, 0, -5),
          new Off("all of it", 1.02, 0.98, 3, 5, -5));

  @TestFactory
  Stream<DynamicTest> scalesTurnsAndZerosAreMeasuredWithinTheirStatedUncertainty() {
    return Stream.of(Kind.values())
        .flatMap(
            kind ->
                OFF.stream()
                    .map(
                        off ->
                            DynamicTest.dynamicTest(
                                kind + " " + off.name(), () -> measured(kind, off))));
  }

  private static void measured(Kind kind, Off off) throws BadInput {
    PlateProof proof = prove(SimulatedPlate.of(kind, off.map()), 1).proof();
    PlateProof.Shown shown = proof.plates().get(0);
    covers(shown.scaleRight(), off.right(), 1);
    covers(shown.scaleAnterior(), off.anterior(), 1);
    covers(shown.turnDeg(), off.turnDeg(), 0);
    covers(shown.zeroRightMm(), off.zeroR(), 0);
    covers(shown.zeroAnteriorMm(), off.zeroA(), 0);
    assertThat(shown.deviates()).isTrue();
  }

  /** The true number is in the interval, and that of a true description is not, if they differ. */
  private static void covers(MeasuredValue measure, double truth, double usual) {
    assertThat(Math.abs(measure.value() - truth)).isLessThanOrEqualTo(measure.halfWidth());
    assertThat(measure.excludes(usual)).isEqualTo(truth != usual);
  }

  /** An export in other units than described. */
  private record Unit(String name, Kind kind, double places, double forces, String said) {}

  private static final List<Unit> UNITS =
      List.of(
          new Unit("cm for mm", Kind.PLAIN, 0.1, 1, "shows places 0.1 times as far"),
          new Unit("m for mm", Kind.PLAIN, 0.001, 1, "shows places 0.001 times as far"),
          new Unit("inch for mm", Kind.PLAIN, 1 / 25.4, 1, "shows places 0.0394 times as far"),
          new Unit("mm for cm", Kind.TURNED, 10, 1, "shows places 10 times as far"),
          new Unit("inch for cm", Kind.TURNED, 1 / 2.54, 1, "shows places 0.394 times as far"),
          new Unit("N mm for N m", Kind.MOMENTS, 1000, 1, "more than 10 m from the export's zero"),
          new Unit("kN m for N m", Kind.MOMENTS, 0.001, 1, "shows places 0.001 times as far"),
          new Unit("kg for N", Kind.PLAIN, 1, 1 / 9.80665, "shows forces 0.102 times as large"),
          new Unit("N for kg", Kind.TURNED, 1, 9.80665, "shows forces 9.81 times as large"),
          new Unit("lbf for N", Kind.PLAIN, 1, 1 / 4.44822, "shows forces 0.225 times as large"));

  @TestFactory
  Stream<DynamicTest> otherUnitsAreFound() {
    return UNITS.stream()
        .map(
            unit ->
                DynamicTest.dynamicTest(
                    unit.name(),
                    () ->
                        assertThat(
                                faults(
                                    new SimulatedPlate(
                                        unit.kind(),
                                        new double[] {1, 0, 0, 1, 0, 0},
                                        unit.places(),
                                        unit.forces())))
                            .anyMatch(said -> said.contains(unit.said()))));
  }

  private static final double[] TRUE = {1, 0, 0, 1, 0, 0};

  /** Stated, it is refused; not stated, the load tells it, and moments give places reversed. */
  @TestFactory
  Stream<DynamicTest> aReversedVerticalIsFound() {
    return Stream.of(Kind.values())
        .map(kind -> DynamicTest.dynamicTest(kind.toString(), () -> reversedVertical(kind)));
  }

  private static void reversedVertical(Kind kind) throws BadInput {
    SimulatedPlate reversed = new SimulatedPlate(kind, TRUE, 1, -1);
    String sense = kind == Kind.MOMENTS ? "on the plate" : "on the person";
    NamedBytes stated =
        NamedBytes.of(
            "plate.yaml", (kind.description() + "force-is: " + sense + "\n").getBytes(UTF_8));
    SimulatedPlate right = SimulatedPlate.of(kind, TRUE);
    assertThat(prove(stated, right, 1).proof().plates()).hasSize(1);
    assertThat(faults(stated, reversed))
        .singleElement(STRING)
        .contains("plate 1: the plate description says that the exported force is the one " + sense)
        .endsWith("Correct force-is or axes.");
    if (kind == Kind.MOMENTS) {
      assertThat(faults(reversed)).anyMatch(said -> said.contains("reversed or swapped"));
    } else {
      assertThat(prove(reversed, 1).proof().plates()).isEqualTo(prove(right, 1).proof().plates());
    }
  }

  private record Broken(String name, String said, double... map) {}

  private static final String DEAD = "hardly tells the two directions apart";
  private static final String ELSEWHERE = "mm from where it stands";

  /** What no reversal, swap or unit explains must not pass as a wide uncertainty. */
  private static final List<Broken> BROKEN =
      List.of(
          new Broken("right dead", DEAD, 0, 0, 0, 1, 0, 0),
          new Broken("anterior dead", DEAD, 1, 0, 0, 0, 0, 0),
          new Broken("right stuck", DEAD, 0, 0, 0, 1, 80, 0),
          new Broken("one channel for both", DEAD, 1, 1, 0, 0, 0, 0),
          new Broken("turned by 40 degrees", ELSEWHERE, 0.766, 0.643, -0.643, 0.766, 0, 0),
          new Broken("zero at an edge", ELSEWHERE, 1, 0, 0, 1, 250, 0),
          new Broken("right times 1.3", ELSEWHERE, 1.3, 0, 0, 1, 0, 0));

  @TestFactory
  Stream<DynamicTest> aBrokenPlateIsNotProven() {
    return Stream.of(Kind.values())
        .flatMap(
            kind ->
                BROKEN.stream()
                    .map(
                        broken ->
                            DynamicTest.dynamicTest(
                                kind + " " + broken.name(),
                                () ->
                                    assertThat(faults(SimulatedPlate.of(kind, broken.map())))
                                        .anyMatch(said -> said.contains(broken.said()))
                                        .noneMatch(said -> said.contains("axes: {"))
                                        .noneMatch(said -> said.contains("Another unit")))));
  }

  @Test
  void aTrueDescriptionIsProven() throws BadInput {
    for (Kind kind : Kind.values()) {
      ProvePlate.Proven proven = prove(SimulatedPlate.of(kind, 1, 0, 0, 1, 0, 0), 1);
      assertThat(proven.proof().plates()).hasSize(1);
      assertThat(proven.proof().recordings()).hasSize(8);
    }
  }
}
