package caryatid.chart.paint;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Ticks;
import caryatid.remark.Unit;
import caryatid.views.OffsetSeries.Measured;
import caryatid.wording.Wording;
import java.awt.Color;
import java.util.List;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/**
 * Draws one offset from stand to stand with the chart library: its axes, a renderer of intervals, a
 * marker for what was changed between two stands.
 */
public final class OffsetsChart {
  /** Of the symbols of results, mm. */
  public static final double RADIUS_MM = 1;

  /** From one line of a tolerance's hatching to the next, mm. */
  public static final double HATCH_MM = 1.1;

  private static final double TICK_GAP_MM = 6;
  private static final double BETWEEN_NAMES_MM = 1.5;
  private static final double ABOVE_MM = 1;

  /** Where a line begins that joins two stands, as a part of the way. */
  private static final double BESIDE = 0.1;

  private static final Color NONE = new Color(0, 0, 0, 0);

  private final OffsetsPlan plan;
  private final Wording wording;
  private final double lowMm;
  private final double highMm;
  private final double stepMm;

  private OffsetsChart(OffsetsPlan plan, Wording wording) {
    this.plan = plan;
    this.wording = wording;
    double low = plan.stands().stream().mapToDouble(OffsetsChart::lowest).min().orElse(0);
    double high = plan.stands().stream().mapToDouble(OffsetsChart::highest).max().orElse(0);
    this.stepMm = Ticks.step(Math.max(high - low, 1), plan.box().heightMm() / TICK_GAP_MM);
    this.lowMm = Math.floor(low / stepMm) * stepMm;
    this.highMm = Math.ceil(high / stepMm) * stepMm;
  }

  /**
   * What is drawn.
   *
   * @param stands at least one, in order of time
   * @param names what stands below each of them
   * @param says what each of them means
   * @param changes before which of them something was changed
   * @param joins which of them differ by more than chance
   * @param box where it is drawn, its axes outside, mm
   */
  public record OffsetsPlan(
      List<Measured> stands,
      List<String> names,
      List<String> says,
      List<ChangeMark> changes,
      List<Join> joins,
      Box box) {
    public OffsetsPlan {
      stands = List.copyOf(stands);
      names = List.copyOf(names);
      says = List.copyOf(says);
      changes = List.copyOf(changes);
      joins = List.copyOf(joins);
    }
  }

  /**
   * A change.
   *
   * @param name short
   * @param before number of the stand after it, from 1 on
   */
  public record ChangeMark(String name, int before) {}

  /**
   * A line from one stand to the next.
   *
   * @param to number of the later stand, from 1 on
   * @param dashed whether the two differ only on a condition
   */
  public record Join(int to, boolean dashed) {}

  /** The chart's parts: a background, one for each stand, and what lies above. */
  public static List<Part> draw(OffsetsPlan plan, Wording wording) {
    return new OffsetsChart(plan, wording).parts();
  }

  private static double lowest(Measured m) {
    return Math.min(m.lowestMm(), m.offsetMm() - m.expandedMm());
  }

  private static double highest(Measured m) {
    return Math.max(m.highestMm(), m.offsetMm() + m.expandedMm());
  }

  private List<Part> parts() {
    Unit digits = stepMm >= 1 ? Unit.COUNT : Unit.MM;
    StepAxis up = new StepAxis(lowMm, highMm, stepMm, mm -> wording.signed(mm, digits));
    double eachMm = plan.box().widthMm() / plan.names().size();
    XYPlot plot =
        Plots.bare(
            new StandsAxis(plan.names()),
            up,
            new StandRenderer(plan.stands(), plan.says(), eachMm));
    plot.setDataset(data());
    plot.setOutlineVisible(true);
    plot.setOutlineStroke(new PenStroke(Pen.TICK));
    plot.setOutlinePaint(MarkCanvas.color(Pen.TICK.ink()));
    plot.setRangeZeroBaselineVisible(lowMm < 0 && highMm > 0);
    plot.setRangeZeroBaselineStroke(new PenStroke(Pen.TICK));
    plot.setRangeZeroBaselinePaint(MarkCanvas.color(Pen.TICK.ink()));
    mark(plot, eachMm);
    plan.joins().forEach(join -> join(plot, join));
    MarkCanvas canvas = new MarkCanvas();
    Plots.draw(plot, plan.box(), canvas);
    return canvas.parts();
  }

  private YIntervalSeriesCollection data() {
    YIntervalSeries series = new YIntervalSeries("");
    for (int i = 0; i < plan.stands().size(); i++) {
      Measured m = plan.stands().get(i);
      series.add(i, m.offsetMm(), m.offsetMm() - m.expandedMm(), m.offsetMm() + m.expandedMm());
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    return data;
  }

  /** From beside one result to beside the next. */
  private void join(XYPlot plot, Join join) {
    double from = plan.stands().get(join.to() - 1).offsetMm();
    double rise = BESIDE * (plan.stands().get(join.to()).offsetMm() - from);
    Pen pen = join.dashed() ? Pen.ELLIPSE : Pen.DIMENSION;
    plot.getRenderer()
        .addAnnotation(
            new XYLineAnnotation(
                join.to() - 1 + BESIDE,
                from + rise,
                join.to() - BESIDE,
                plan.stands().get(join.to()).offsetMm() - rise,
                new PenStroke(pen),
                MarkCanvas.color(pen.ink())),
            Layer.BACKGROUND);
  }

  /** A line for each change, named where there is room for its name. */
  private void mark(XYPlot plot, double eachMm) {
    double free = plan.box().leftMm() - 1;
    for (ChangeMark change : plan.changes()) {
      ValueMarker marker =
          new ValueMarker(
              change.before() - 0.5, MarkCanvas.color(Pen.LEADER.ink()), new PenStroke(Pen.LEADER));
      double at = plan.box().leftMm() + change.before() * eachMm;
      double width = Fonts.widthMm(change.name(), Lettering.STRONG);
      boolean centred = at + width / 2 <= plan.box().rightMm();
      double left = at - (centred ? width / 2 : width);
      if (left >= free) {
        name(marker, change.name(), centred ? TextAnchor.BOTTOM_CENTER : TextAnchor.BOTTOM_RIGHT);
        free = left + width + BETWEEN_NAMES_MM;
      }
      plot.addDomainMarker(marker);
    }
  }

  private static void name(ValueMarker marker, String name, TextAnchor anchor) {
    marker.setLabel(name);
    marker.setLabelFont(MarkCanvas.font(Lettering.STRONG));
    marker.setLabelBackgroundColor(NONE);
    marker.setLabelAnchor(RectangleAnchor.TOP);
    marker.setLabelTextAnchor(anchor);
    double above = -ABOVE_MM * MarkCanvas.UNITS_PER_MM;
    marker.setLabelOffset(new RectangleInsets(above, 0, above, 0));
  }
}
