package caryatid.chart.paint;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Ticks;
import caryatid.remark.Unit;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/**
 * Draws what was measured and what is expected over one tolerance with the chart library: its axes,
 * a marker for the tolerance, a renderer of intervals, and one of a line with its band.
 */
public final class BandChart {
  private static final double TICK_GAP_MM = 6;
  private static final double NUMBER_GAP_MM = 14;

  /** Room beside a line, as a part of its length, so that no numbers meet in the corner. */
  private static final double BESIDE = 0.09;

  private final BandPlan plan;
  private final Wording wording;
  private final double lowest;
  private final double highest;
  private final double step;

  private BandChart(BandPlan plan, Wording wording) {
    this.plan = plan;
    this.wording = wording;
    double low = plan.heights().min().orElseThrow();
    double high = plan.heights().max().orElseThrow();
    this.step = Ticks.step(Math.max(high - low, 1), plan.box().heightMm() / TICK_GAP_MM);
    this.lowest = Math.floor(low / step) * step;
    this.highest = Math.ceil(high / step) * step;
  }

  /** What a point is: which symbol it has. */
  public enum PointKind {
    /** A full ring. */
    MEASURED,
    /** An empty ring. */
    EXPECTED
  }

  /**
   * A point with its interval.
   *
   * @param across its place on the level axis: its column, counted from 0, or a number
   * @param low lower end of the interval; the point itself where it has none
   * @param says what it means; empty for mere background
   */
  public record BandPoint(
      double across, double at, double low, double high, PointKind kind, Optional<String> says) {}

  /**
   * A tolerance across the chart.
   *
   * @param middle what is recommended
   */
  public record ToleranceBand(double low, double middle, double high) {}

  /**
   * What is drawn.
   *
   * @param points measured and expected
   * @param line a line with its band, in order across; empty for none
   * @param band the tolerance
   * @param columns names below the chart, one a column; empty where the level axis has numbers
   * @param box where it is drawn, its axes outside, mm
   */
  public record BandPlan(
      List<BandPoint> points,
      List<BandPoint> line,
      ToleranceBand band,
      List<String> columns,
      Box box) {
    public BandPlan {
      points = List.copyOf(points);
      line = List.copyOf(line);
      columns = List.copyOf(columns);
    }

    private DoubleStream heights() {
      List<BandPoint> all = new ArrayList<>(points);
      all.addAll(line);
      return DoubleStream.concat(
          DoubleStream.of(band.low(), band.high()),
          all.stream().flatMapToDouble(p -> DoubleStream.of(p.low(), p.high())));
    }
  }

  /** The chart's parts: a background, then one for each point. */
  public static List<Part> draw(BandPlan plan, Wording wording) {
    return new BandChart(plan, wording).parts();
  }

  private List<Part> parts() {
    Unit digits = step >= 1 ? Unit.COUNT : Unit.MM;
    StepAxis up = new StepAxis(lowest, highest, step, mm -> wording.signed(mm, digits));
    XYPlot plot = Plots.bare(across(), up, new BandPointRenderer(plan.points()));
    plot.setDataset(data(plan.points()));
    if (!plan.line().isEmpty()) {
      plot.setDataset(1, data(plan.line()));
      plot.setRenderer(1, line());
    }
    plot.setOutlineVisible(true);
    plot.setOutlineStroke(new PenStroke(Pen.TICK));
    plot.setOutlinePaint(MarkCanvas.color(Pen.TICK.ink()));
    tolerance(plot);
    MarkCanvas canvas = new MarkCanvas();
    Plots.draw(plot, plan.box(), canvas);
    return canvas.parts();
  }

  private ValueAxis across() {
    if (!plan.columns().isEmpty()) {
      return new StandsAxis(plan.columns());
    }
    double from = plan.line().get(0).across();
    double to = plan.line().get(plan.line().size() - 1).across();
    double each = Ticks.step(to - from, plan.box().widthMm() / NUMBER_GAP_MM);
    double beside = BESIDE * (to - from);
    return new StepAxis(
        from - beside,
        to + beside,
        each,
        mm -> mm < from || mm > to ? "" : wording.signed(mm, Unit.COUNT));
  }

  private void tolerance(XYPlot plot) {
    ToleranceBand band = plan.band();
    IntervalMarker hatched =
        new IntervalMarker(band.low(), band.high(), new Hatch(Pen.HATCH, OffsetsChart.HATCH_MM));
    hatched.setOutlinePaint(null);
    plot.addRangeMarker(hatched, Layer.BACKGROUND);
    for (double at : new double[] {band.low(), band.middle(), band.high()}) {
      plot.addRangeMarker(
          new ValueMarker(at, MarkCanvas.color(Ink.BROWN), new PenStroke(Pen.TARGET)),
          Layer.BACKGROUND);
    }
  }

  private static DeviationRenderer line() {
    DeviationRenderer line = new DeviationRenderer(true, false);
    line.setAlpha(1);
    line.setSeriesPaint(0, MarkCanvas.color(Ink.BLUE));
    line.setSeriesStroke(0, new PenStroke(Pen.LOAD_LINE));
    line.setSeriesFillPaint(0, MarkCanvas.color(Ink.PALE_BLUE));
    return line;
  }

  private static YIntervalSeriesCollection data(List<BandPoint> points) {
    YIntervalSeries series = new YIntervalSeries("", false, true);
    points.forEach(p -> series.add(p.across(), p.at(), p.low(), p.high()));
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    return data;
  }
}
