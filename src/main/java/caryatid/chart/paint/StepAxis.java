package caryatid.chart.paint;

import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.ui.RectangleInsets;

/** An axis with a tick and its number at each multiple of a step. */
class StepAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;

  private static final double TICK_MM = 0.8;

  /** From a tick to its number, mm. */
  private static final double GAP_MM = 0.4;

  /** What a limit may lie beyond a multiple by rounding, in steps. */
  private static final double ROUNDING = 1e-9;

  /**
   * @param step from one tick to the next, above 0
   * @param words how a number is written
   */
  StepAxis(double lowest, double highest, double step, DoubleFunction<String> words) {
    setRange(lowest, highest);
    setTickUnit(new WordedStep(step, words));
    setAxisLineVisible(false);
    setTickMarkStroke(new PenStroke(Pen.TICK));
    setTickMarkPaint(MarkCanvas.color(Pen.TICK.ink()));
    setTickLabelFont(MarkCanvas.font(Lettering.PLAIN));
    setTickMarkOutsideLength((float) (TICK_MM * MarkCanvas.UNITS_PER_MM));
    double beyond = (TICK_MM + GAP_MM) * MarkCanvas.UNITS_PER_MM;
    setTickLabelInsets(new RectangleInsets(beyond, beyond, 0, 0));
  }

  @Override
  protected double calculateLowestVisibleTickValue() {
    double step = getTickUnit().getSize();
    return Math.ceil(getRange().getLowerBound() / step - ROUNDING) * step;
  }

  @Override
  protected double calculateHighestVisibleTickValue() {
    double step = getTickUnit().getSize();
    return Math.floor(getRange().getUpperBound() / step + ROUNDING) * step;
  }

  @Override
  protected int calculateVisibleTickCount() {
    double steps = calculateHighestVisibleTickValue() - calculateLowestVisibleTickValue();
    return (int) Math.round(steps / getTickUnit().getSize()) + 1;
  }

  /** A step, its numbers written in a language. */
  private static final class WordedStep extends NumberTickUnit {
    private static final long serialVersionUID = 1L;

    private final transient DoubleFunction<String> words;

    WordedStep(double size, DoubleFunction<String> words) {
      super(size);
      this.words = words;
    }

    /** Adding 0 takes the sign from a negative zero. */
    @Override
    public String valueToString(double value) {
      return words.apply(value + 0.0);
    }
  }
}
