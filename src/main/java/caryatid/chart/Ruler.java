package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Style.Lettering;
import caryatid.wording.Wording;
import java.util.List;
import java.util.stream.DoubleStream;

/** Scales at the edges of a leg drawing. */
final class Ruler {
  private static final double[] STEPS = {
    1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000
  };
  private static final double LARGEST_BAR_MM = 6;

  private Ruler() {}

  /** The largest round length of the person that fits a symbol of the key, mm. */
  static double barMm(Scale scale) {
    return DoubleStream.of(STEPS)
        .filter(step -> step / scale.oneTo() <= LARGEST_BAR_MM)
        .max()
        .orElse(STEPS[0]);
  }

  /** What lies to the left and right of a drawing, by its own name. */
  static List<Mark> directions(String of, Wording wording, Box room, double heightMm) {
    double base = room.bottomMm() + heightMm - 1;
    double half = room.widthMm() / 2 - 0.5;
    String left = Fonts.fit("← " + wording.word(of + ".LEFT"), Lettering.PLAIN, half);
    String right = Fonts.fit(wording.word(of + ".RIGHT") + " →", Lettering.PLAIN, half);
    double width = Fonts.widthMm(right, Lettering.PLAIN);
    return List.of(
        new Text(new PaperPoint(room.leftMm(), base), left, Lettering.PLAIN),
        new Text(new PaperPoint(room.rightMm() - width, base), right, Lettering.PLAIN));
  }
}
