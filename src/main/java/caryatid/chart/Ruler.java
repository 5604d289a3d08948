package caryatid.chart;

import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Scales at the edges of a leg drawing. */
final class Ruler {
  private static final double[] STEPS = {
    1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000
  };
  private static final double LEAST_GAP_MM = 7;
  private static final double LARGEST_BAR_MM = 6;

  private Ruler() {}

  /** Heights in round steps at the left edge. */
  static List<Mark> heights(Scale scale, Box room, double topMm) {
    List<Mark> marks = new ArrayList<>();
    double step = stepMm(scale);
    for (double height = 0; height <= topMm; height += step) {
      Spot at = new Spot(room.leftMm(), scale.spot(0, height).downMm());
      marks.add(Stroke.of(Pen.TICK, at.moved(-1, 0), at));
      String words = Long.toString(Math.round(height));
      double width = Letters.widthMm(words, Lettering.PLAIN);
      marks.add(new Text(at.moved(-1.4 - width, 1), words, Lettering.PLAIN));
    }
    return marks;
  }

  /** The smallest round length of the person that leaves room for figures, mm. */
  private static double stepMm(Scale scale) {
    return DoubleStream.of(STEPS)
        .filter(step -> step / scale.oneTo() >= LEAST_GAP_MM)
        .findFirst()
        .orElse(STEPS[STEPS.length - 1]);
  }

  /** The largest round length of the person that fits a symbol of the key, mm. */
  static double barMm(Scale scale) {
    return DoubleStream.of(STEPS)
        .filter(step -> step / scale.oneTo() <= LARGEST_BAR_MM)
        .max()
        .orElse(STEPS[0]);
  }

  /** What lies to the left and right of a view, below the floor. */
  static List<Mark> directions(View view, Wording wording, Box room, double heightMm) {
    return directions(view.key("LEFT"), view.key("RIGHT"), wording, room, heightMm);
  }

  /** What lies to the left and right of a drawing, by its own name. */
  static List<Mark> directions(String of, Wording wording, Box room, double heightMm) {
    return directions(of + ".LEFT", of + ".RIGHT", wording, room, heightMm);
  }

  private static List<Mark> directions(
      String leftKey, String rightKey, Wording wording, Box room, double heightMm) {
    double base = room.bottomMm() + heightMm - 1;
    double half = room.widthMm() / 2 - 0.5;
    String left = Letters.fit("← " + wording.word(leftKey), Lettering.PLAIN, half);
    String right = Letters.fit(wording.word(rightKey) + " →", Lettering.PLAIN, half);
    double width = Letters.widthMm(right, Lettering.PLAIN);
    return List.of(
        new Text(new Spot(room.leftMm(), base), left, Lettering.PLAIN),
        new Text(new Spot(room.rightMm() - width, base), right, Lettering.PLAIN));
  }
}
