package caryatid.chart.mark;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import java.util.List;

/** A mark on paper: a line, an area or text. */
public sealed interface Mark {

  /**
   * A line through points.
   *
   * @param along at least two points
   * @param pen how it is drawn
   */
  record Stroke(List<PaperPoint> along, Pen pen) implements Mark {
    /**
     * @throws IllegalArgumentException if there are fewer than two points
     */
    public Stroke {
      if (along.size() < 2) {
        throw new IllegalArgumentException("a line through " + along.size() + " points");
      }
      along = List.copyOf(along);
    }

    public static Stroke of(Pen pen, PaperPoint... along) {
      return new Stroke(List.of(along), pen);
    }
  }

  /**
   * A filled area.
   *
   * @param outline at least three corners
   * @param ink its colour
   */
  record Fill(List<PaperPoint> outline, Ink ink) implements Mark {
    /**
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public Fill {
      if (outline.size() < 3) {
        throw new IllegalArgumentException("an area of " + outline.size() + " corners");
      }
      outline = List.copyOf(outline);
    }
  }

  /**
   * One line of text.
   *
   * @param at left end of its base line
   * @param words the text
   * @param lettering how it is written
   */
  record Text(PaperPoint at, String words, Lettering lettering) implements Mark {

    /** The paper it takes. */
    public Box box() {
      return new Box(
          at.rightMm(),
          at.downMm() - lettering.ascentMm(),
          at.rightMm() + Fonts.widthMm(words, lettering),
          at.downMm() + lettering.descentMm());
    }
  }
}
