package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.Stand;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Sway;
import java.util.List;
import org.junit.jupiter.api.Test;

class EllipseTest {

  /**
   * Validation: a polygon of 48 corners on an ellipse holds 0.9971 of its area (sin(a)/a, a =
   * pi/24).
   */
  @Test
  void holdsTheAreaThatWasStated() {
    Stand stand = Demo.transtibial(Side.RIGHT).state(0).stands().get(0);
    Sway sway = stand.standing().sway().get(0);
    List<PersonPoint> outline =
        Ellipse.of(stand.standing(), LoadLineOwner.RIGHT_FOOT).orElseThrow();
    double angle = Math.PI / 24;
    assertThat(area(outline))
        .isCloseTo(sway.both().orElseThrow().ellipseMm2() * Math.sin(angle) / angle, within(1e-9));
  }

  private static double area(List<PersonPoint> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      PersonPoint a = outline.get(i);
      PersonPoint b = outline.get((i + 1) % outline.size());
      twice += a.acrossMm() * b.heightMm() - b.acrossMm() * a.heightMm();
    }
    return Math.abs(twice) / 2;
  }
}
