package caryatid.chart.mark;

import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Style.Pen;
import java.util.ArrayList;
import java.util.List;

/** Simple figures on paper. */
public final class Shapes {
  private static final int ROUND = 24;

  private Shapes() {}

  public static Box box(PaperPoint one, PaperPoint other) {
    return new Box(
        Math.min(one.rightMm(), other.rightMm()),
        Math.min(one.downMm(), other.downMm()),
        Math.max(one.rightMm(), other.rightMm()),
        Math.max(one.downMm(), other.downMm()));
  }

  public static List<PaperPoint> corners(Box box) {
    return List.of(
        new PaperPoint(box.leftMm(), box.topMm()),
        new PaperPoint(box.rightMm(), box.topMm()),
        new PaperPoint(box.rightMm(), box.bottomMm()),
        new PaperPoint(box.leftMm(), box.bottomMm()));
  }

  public static Stroke closed(List<PaperPoint> outline, Pen pen) {
    List<PaperPoint> along = new ArrayList<>(outline);
    along.add(outline.get(0));
    return new Stroke(along, pen);
  }

  public static List<PaperPoint> circle(PaperPoint centre, double radiusMm) {
    List<PaperPoint> circle = new ArrayList<>();
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
                new PaperPoint(box.leftMm() + from, box.bottomMm() - (from - start)),
                new PaperPoint(box.leftMm() + until, box.bottomMm() - (until - start))));
      }
    }
    return strokes;
  }
}
