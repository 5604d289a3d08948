package caryatid.chart.mark;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StyleTest {

  /**
   * How colours look to people who lack one kind of cone (Machado, Oliveira and Fernandes 2009,
   * IEEE Trans Vis Comput Graph 15:1291-1298, severity 1, on linear RGB; from memory), and in grey
   * print.
   */
  enum Sight {
    NORMAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(
        0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
        1.051998),
    DEUTERANOPIA(
        0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(
        1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367,
        0.303900),
    GREY(0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722);

    private final double[] matrix;

    Sight(double... matrix) {
      this.matrix = matrix;
    }

    /** Relative luminance of an ink as seen so (WCAG 2.1; IEC 61966-2-1 for sRGB). */
    double luminance(Ink ink) {
      double[] seen = new double[3];
      for (int row = 0; row < 3; row++) {
        for (int i = 0; i < 3; i++) {
          seen[row] += matrix[3 * row + i] * linear(ink.rgb() >> (16 - 8 * i) & 0xff);
        }
        seen[row] = Math.max(0, Math.min(1, seen[row]));
      }
      return 0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2];
    }

    private static double linear(int value) {
      double v = value / 255.0;
      return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    double contrast(Ink one, Ink other) {
      double a = luminance(one);
      double b = luminance(other);
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }
  }

  /** What lies on what; 3 to 1 is what WCAG 2.1, 1.4.11, asks of graphics. */
  @ParameterizedTest
  @EnumSource(Sight.class)
  void linesStandOutFromWhatTheyLieOn(Sight sight) {
    for (Ink ground : List.of(Ink.WHITE, Ink.MIST)) {
      for (Ink line : List.of(Ink.BLACK, Ink.BLUE, Ink.BROWN, Ink.GREY)) {
        assertThat(sight.contrast(line, ground)).as(line + " on " + ground).isGreaterThan(3);
      }
    }
    assertThat(sight.contrast(Ink.BLUE, Ink.PALE_BLUE)).isGreaterThan(3);
    assertThat(sight.contrast(Ink.BROWN, Ink.PALE_BLUE)).isGreaterThan(3);
  }

  /** Text needs 4.5 to 1 (WCAG 2.1, 1.4.3). */
  @ParameterizedTest
  @EnumSource(Sight.class)
  void labelsCanBeRead(Sight sight) {
    assertThat(sight.contrast(Ink.GREY, Ink.WHITE)).isGreaterThan(4.5);
    assertThat(sight.contrast(Ink.BLACK, Ink.WHITE)).isGreaterThan(4.5);
  }

  @Test
  void linesThatMeanDifferentThingsDifferInMoreThanColour() {
    List<Pen> lines = List.of(Pen.LOAD_LINE, Pen.OTHER_LINE, Pen.MEASURED_FORCE, Pen.TICK);
    for (Pen one : lines) {
      for (Pen other : lines) {
        if (one != other) {
          boolean widths = Math.abs(one.widthMm() - other.widthMm()) > 0.2;
          assertThat(widths || !one.dashesMm().equals(other.dashesMm()))
              .as(one + " and " + other)
              .isTrue();
        }
      }
    }
  }

  @Test
  void noTypeIsSmallerThanEightPoints() {
    assertThat(Stream.of(Lettering.values()).mapToDouble(Lettering::points).min()).hasValue(8);
  }
}
