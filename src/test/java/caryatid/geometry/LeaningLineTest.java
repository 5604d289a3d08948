package caryatid.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeaningLineTest {
  private static final double BOTTOM = 0;
  private static final double ANKLE = 80;
  private static final double KNEE = 500;
  private static final double TOP = 650;

  /**
   * ISO 10328, structural test geometry (from memory): a load line through the bottom and the top
   * plane runs through the stated offsets at ankle and knee. f is forward, o outward, mm; stated in
   * whole millimetres, hence 0.5 mm. Outward is right on the right leg and left on the left one.
   */
  @ParameterizedTest
  @CsvSource({
    "-48, -32, 52, 82, 45, 30, -50, -79",
    "-52, -35, 56, 89, 39, 25, -48, -74",
    "-58, -41, 49, 81, 41, 26, -50, -77",
    "129, 120, 72, 55, -19, -22, -35, -40",
    "124, 115, 68, 51, -21, -24, -39, -44",
    "138, 127, 68, 47, -16, -19, -36, -42"
  })
  void validation_loadLinesOfIso10328(
      double fB, double fA, double fK, double fT, double oB, double oA, double oK, double oT) {
    for (Side side : Side.values()) {
      int out = side.lateral();
      LeaningLine line =
          LeaningLine.through(new Point(out * oB, fB, BOTTOM), new Point(out * oT, fT, TOP));
      assertThat(line.at(ANKLE).yMm()).isCloseTo(fA, within(0.5));
      assertThat(line.at(KNEE).yMm()).isCloseTo(fK, within(0.5));
      assertThat(out * line.at(ANKLE).xMm()).isCloseTo(oA, within(0.5));
      assertThat(out * line.at(KNEE).xMm()).isCloseTo(oK, within(0.5));
    }
  }

  /** Condition I, P5: tilt 11.310 deg forward and -10.800 deg outward, computed independently. */
  @Test
  void validation_theTiltOfALoadLineOfIso10328() {
    LeaningLine line = LeaningLine.through(new Point(45, -48, BOTTOM), new Point(-79, 82, TOP));
    assertThat(Math.toDegrees(Math.atan(line.anteriorPerUp()))).isCloseTo(11.310, within(5e-4));
    assertThat(Math.toDegrees(Math.atan(line.rightPerUp()))).isCloseTo(-10.800, within(5e-4));
  }

  @Test
  void aVerticalRunsOverItsFoot() {
    assertThat(LeaningLine.vertical(new Point(3, 4, 5)).at(900)).isEqualTo(new Point(3, 4, 900));
  }

  @Test
  void aLineMustRise() {
    assertThatThrownBy(() -> LeaningLine.through(new Point(0, 0, 7), new Point(1, 1, 7)))
        .hasMessage("both points lie at height 7.0 mm");
    assertThatThrownBy(() -> new LeaningLine(new Point(0, 0, 0), Double.NaN, 0))
        .hasMessage("leans must be finite: NaN, 0.0");
  }
}
