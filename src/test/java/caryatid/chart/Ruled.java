package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Pen;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** Reads a drawing back as a person with a ruler does, by its own ticks and marks. */
final class Ruled {
  private Ruled() {}

  /** The strokes of a pen, part after part. */
  static List<Stroke> strokes(Stream<Part> parts, Pen pen) {
    return parts
        .flatMap(part -> part.marks().stream())
        .filter(Stroke.class::isInstance)
        .map(Stroke.class::cast)
        .filter(stroke -> stroke.pen() == pen)
        .toList();
  }

  static List<Stroke> strokes(Drawing drawing, Pen pen) {
    return strokes(drawing.parts().stream(), pen);
  }

  static boolean isLevel(Stroke stroke) {
    return stroke.along().stream().allMatch(s -> s.downMm() == stroke.along().get(0).downMm());
  }

  static boolean isUpright(Stroke stroke) {
    return stroke.along().stream().allMatch(s -> s.rightMm() == stroke.along().get(0).rightMm());
  }

  static PaperPoint first(Stroke stroke) {
    return stroke.along().get(0);
  }

  static PaperPoint last(Stroke stroke) {
    return stroke.along().get(stroke.along().size() - 1);
  }

  /** The middle of what a stroke takes. */
  static PaperPoint middle(Stroke stroke) {
    Box box = box(stroke);
    return new PaperPoint((box.leftMm() + box.rightMm()) / 2, (box.topMm() + box.bottomMm()) / 2);
  }

  static Box box(Stroke stroke) {
    var right = stroke.along().stream().mapToDouble(PaperPoint::rightMm).summaryStatistics();
    var down = stroke.along().stream().mapToDouble(PaperPoint::downMm).summaryStatistics();
    return new Box(right.getMin(), down.getMin(), right.getMax(), down.getMax());
  }

  /** The straight line through two known places. */
  static DoubleUnaryOperator through(double oneAt, double one, double otherAt, double other) {
    return at -> one + (at - oneAt) / (otherAt - oneAt) * (other - one);
  }

  /** A number as a drawing writes it. */
  static double number(Text text) {
    return Double.parseDouble(text.words().replace('−', '-').replaceAll("[^-+.0-9]", ""));
  }
}
