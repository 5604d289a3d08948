package caryatid.chart.mark;

import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Style.Pen;
import java.util.ArrayList;
import java.util.List;

/** Simple figures on paper. */
public final class Shapes {
  private static final int ROUND = 24;

  private Shapes() {}

  public static Box box(Spot one, Spot other) {
    return new Box(
        Math.min(one.rightMm(), other.rightMm()),
        Math.min(one.downMm(), other.downMm()),
        Math.max(one.rightMm(), other.rightMm()),
        Math.max(one.downMm(), other.downMm()));
  }

  public static List<Spot> corners(Box box) {
    return List.of(
        new Spot(box.leftMm(), box.topMm()),
        new Spot(box.rightMm(), box.topMm()),
        new Spot(box.rightMm(), box.bottomMm()),
        new Spot(box.leftMm(), box.bottomMm()));
  }

  public static Stroke closed(List<Spot> outline, Pen pen) {
    List<Spot> along = new ArrayList<>(outline);
    along.add(outline.get(0));
    return new Stroke(along, pen);
  }

  public static List<Spot> circle(Spot centre, double radiusMm) {
    List<Spot> circle = new ArrayList<>();
    for (int i = 0; i < ROUND; i++) {
      double angle = 2 * Math.PI * i / ROUND;
      circle.add(centre.moved(radiusMm * StrictMath.cos(angle), radiusMm * StrictMath.sin(angle)));
    }
    return circle;
  }

  /** Strokes at 45 degrees that fill a box. */
  public static List<Mark> hatch(Box box, double gapMm, Pen pen) {
    List<Mark> strokes = new ArrayList<>();
    double height = box.heightMm();
    for (double start = gapMm / 2 - height; start < box.widthMm(); start += gapMm) {
      double from = Math.max(0, start);
      double until = Math.min(box.widthMm(), start + height);
      if (until > from) {
        strokes.add(
            Stroke.of(
                pen,
                new Spot(box.leftMm() + from, box.bottomMm() - (from - start)),
                new Spot(box.leftMm() + until, box.bottomMm() - (until - start))));
      }
    }
    return strokes;
  }
}
