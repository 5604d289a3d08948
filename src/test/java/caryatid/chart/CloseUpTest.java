package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CloseUpTest {
  /** Where the curve's zero lies in its room. */
  private static final double BASE_MM = 4.8;

  /**
   * Validation: the filled area is the probability of the finding, which the demo takes from
   * Student's distribution function; the curve ends 3.2 standard uncertainties out, which leaves
   * 0.15 % of the area, and is drawn in 60 steps.
   */
  @Test
  void theFilledShareOfTheCurveIsTheProbability() {
    Demo demo =
        Demo.empty(Side.RIGHT)
            .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 40, 85, 490, 4)
            .target(Plane.SAGITTAL, "knee centre", 15, 10, 10)
            .line(80, 62);
    View view = new View(Plane.SAGITTAL, Side.RIGHT);
    Leg.Level level = Leg.of(demo.state(0), Optional.empty(), view).levels().get(0);
    List<Mark> marks = CloseUp.marks(level, view, 1, new Box(0, 0, 60, 8));
    double filled = area(((Mark.Fill) marks.get(0)).outline());
    List<Spot> curve = new ArrayList<>(((Mark.Stroke) marks.get(1)).along());
    curve.add(new Spot(curve.get(curve.size() - 1).rightMm(), BASE_MM));
    curve.add(new Spot(curve.get(0).rightMm(), BASE_MM));
    double all = area(curve);
    assertThat(filled / all)
        .isCloseTo(level.finding().orElseThrow().probabilityWithin(), within(0.003));
  }

  private static double area(List<Spot> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      Spot a = outline.get(i);
      Spot b = outline.get((i + 1) % outline.size());
      twice += a.rightMm() * b.downMm() - b.rightMm() * a.downMm();
    }
    return Math.abs(twice) / 2;
  }
}
