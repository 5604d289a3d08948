package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import java.util.List;

/** What every drawing has to keep: texts apart and on the paper, ink on the paper. */
public final class Sound {
  /** A pen's width may stick out at the edge of the paper. */
  private static final double PEN_MM = 1;

  private Sound() {}

  /** Fails with the drawing's name if it does not. */
  public static void assertSound(Drawing drawing, String which) {
    List<Mark.Text> texts = drawing.texts();
    List<Box> boxes = texts.stream().map(Mark.Text::box).toList();
    for (int a = 0; a < texts.size(); a++) {
      Box box = boxes.get(a);
      if (!drawing.paper().holds(box)) {
        throw new AssertionError(which + ": leaves the paper: " + texts.get(a));
      }
      for (int b = a + 1; b < texts.size(); b++) {
        if (overlap(box, boxes.get(b))) {
          throw new AssertionError(which + ": overlap: " + texts.get(a) + texts.get(b));
        }
      }
    }
    Box ink = new Box(-PEN_MM, -PEN_MM, drawing.widthMm() + PEN_MM, drawing.heightMm() + PEN_MM);
    drawing.parts().stream()
        .flatMap(part -> part.marks().stream())
        .flatMap(mark -> spots(mark).stream())
        .filter(s -> !ink.holds(at(s)))
        .forEach(
            s -> {
              throw new AssertionError(which + ": ink at " + s);
            });
  }

  /** Whether two boxes share more than an edge. */
  private static boolean overlap(Box one, Box other) {
    return one.leftMm() < other.rightMm()
        && other.leftMm() < one.rightMm()
        && one.topMm() < other.bottomMm()
        && other.topMm() < one.bottomMm();
  }

  private static Box at(PaperPoint s) {
    return new Box(s.rightMm(), s.downMm(), s.rightMm(), s.downMm());
  }

  private static List<PaperPoint> spots(Mark mark) {
    if (mark instanceof Mark.Stroke stroke) {
      return stroke.along();
    }
    return mark instanceof Mark.Fill fill ? fill.outline() : List.of();
  }
}
