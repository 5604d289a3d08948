package caryatid.chart.paint;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Curve;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.ShownRange;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Ticks;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.remark.Unit;
import caryatid.standing.UnusedPart;
import caryatid.wording.Wording;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Draws values over time with the chart library: its axes, a line for each curve, a hatched marker
 * for each part of the recording that was left out.
 */
public final class TimeChart {
  private static final double COLUMN_MM = 0.15;
  private static final double HATCH_MM = 1.2;

  /** Room for each number on the axes, mm. */
  private static final double LINE_MM = 3.6;

  private static final double NUMBER_MM = 14;

  private TimeChart() {}

  /**
   * One panel.
   *
   * @param timeS the samples' times, s
   * @param usable which of them are shown
   * @param leftOut which parts are hatched
   * @param curves each with as many values as there are times
   * @param span from which value to which
   * @param box where it is drawn, its axes outside, mm
   * @param besideMm room to the right of the box, mm
   * @param numbered whether the axis of time has numbers
   */
  public record CurvePanel(
      Samples timeS,
      UsableMask usable,
      List<UnusedPart> leftOut,
      List<Curve> curves,
      ShownRange span,
      Box box,
      double besideMm,
      boolean numbered) {
    public CurvePanel {
      leftOut = List.copyOf(leftOut);
      curves = List.copyOf(curves);
    }

    private double durationS() {
      return Math.max(timeS.at(timeS.size() - 1), 1e-3);
    }
  }

  /** The panel's marks. */
  public static List<Mark> draw(CurvePanel panel, Wording wording) {
    XYPlot plot = Plots.bare(time(panel, wording), values(panel, wording), lines(panel.curves()));
    plot.setDataset(data(panel));
    plot.setOutlineVisible(true);
    plot.setOutlineStroke(new PenStroke(Pen.TICK));
    plot.setOutlinePaint(MarkCanvas.color(Pen.TICK.ink()));
    for (UnusedPart left : panel.leftOut()) {
      IntervalMarker marker =
          new IntervalMarker(left.fromS(), left.toS(), new Hatch(Pen.LEFT_OUT, HATCH_MM));
      marker.setOutlinePaint(null);
      plot.addDomainMarker(marker, Layer.BACKGROUND);
    }
    MarkCanvas canvas = new MarkCanvas();
    Plots.draw(plot, panel.box(), canvas);
    return canvas.marks();
  }

  private static NumberAxis time(CurvePanel panel, Wording wording) {
    double step = Ticks.step(panel.durationS(), panel.box().widthMm() / NUMBER_MM);
    NumberAxis axis =
        new TimeAxis(
            panel.durationS(),
            step,
            panel.besideMm(),
            s -> Ticks.text(s, step, wording) + (s == 0 ? " " + Unit.S.symbol() : ""));
    axis.setTickLabelsVisible(panel.numbered());
    return axis;
  }

  private static NumberAxis values(CurvePanel panel, Wording wording) {
    ShownRange span = panel.span();
    double steps = Math.max(1.01, panel.box().heightMm() / LINE_MM);
    double step = Ticks.step(span.highest() - span.lowest(), steps);
    return new StepAxis(
        span.lowest(), span.highest(), step, value -> Ticks.text(value, step, wording));
  }

  private static XYLineAndShapeRenderer lines(List<Curve> curves) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < curves.size(); i++) {
      Pen pen = curves.get(i).pen();
      renderer.setSeriesStroke(i, new PenStroke(pen));
      renderer.setSeriesPaint(i, MarkCanvas.color(pen.ink()));
    }
    return renderer;
  }

  private static DefaultXYDataset data(CurvePanel panel) {
    double columnS = COLUMN_MM / panel.box().widthMm() * panel.durationS();
    DefaultXYDataset data = new DefaultXYDataset();
    for (int i = 0; i < panel.curves().size(); i++) {
      Curve curve = panel.curves().get(i);
      data.addSeries(
          i, ThinnedCurve.of(curve, panel.timeS(), panel.usable(), panel.span(), columnS));
    }
    return data;
  }

  /** An axis of time from 0, whose last number stays on the paper. */
  private static final class TimeAxis extends StepAxis {
    private static final long serialVersionUID = 1L;

    private final double besideMm;

    /**
     * @param besideMm room to the right of the axis, mm
     */
    TimeAxis(double durationS, double stepS, double besideMm, DoubleFunction<String> words) {
      super(0, durationS, stepS, words);
      this.besideMm = besideMm;
    }

    @Override
    @SuppressWarnings("unchecked") // the library's list is one of ticks, by its documentation
    public List<NumberTick> refreshTicks(
        Graphics2D canvas, AxisState state, Rectangle2D area, RectangleEdge edge) {
      List<NumberTick> ticks = new ArrayList<>();
      for (NumberTick tick : (List<NumberTick>) super.refreshTicks(canvas, state, area, edge)) {
        ticks.add(onPaper(tick, area, edge));
      }
      return ticks;
    }

    private NumberTick onPaper(NumberTick tick, Rectangle2D area, RectangleEdge edge) {
      double half = Fonts.widthMm(tick.getText(), Lettering.PLAIN) / 2;
      double right = area.getMaxX() - valueToJava2D(tick.getValue(), area, edge);
      return right / MarkCanvas.UNITS_PER_MM + besideMm >= half
          ? tick
          : new NumberTick(
              tick.getTickType(),
              tick.getValue(),
              tick.getText(),
              TextAnchor.TOP_RIGHT,
              TextAnchor.TOP_RIGHT,
              0);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof TimeAxis axis && super.equals(other) && axis.besideMm == besideMm;
    }

    @Override
    public int hashCode() {
      return super.hashCode();
    }
  }
}
