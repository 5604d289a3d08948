package caryatid.chart.paint;

import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.StripPlan.Ends;
import caryatid.chart.leg.StripWindow;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import caryatid.remark.Unit;
import caryatid.wording.Wording;
import java.awt.Color;
import java.util.List;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;

/**
 * Draws strips with the chart library: an axis of offsets for each, the interval and another load
 * line as its markers, the rest as annotations; and the load line as the one marker of a chart that
 * spans them all.
 */
public final class StripChart {
  /** Room below the axis for its ticks and numbers, mm. */
  public static final double AXIS_MM = 4.6;

  private static final double HATCH_MM = 1.1;
  private static final double BAND_SHARE = 0.6;
  private static final double RING_MM = 0.9;

  /** From the axis to the number below a zero beyond a break, mm. */
  private static final double ZERO_MM = 1.45;

  private final StripPlan plan;
  private final XYPlot plot;

  private StripChart(StripPlan plan, Wording wording) {
    this.plan = plan;
    this.plot = plot(axis(plan, wording), plan.room().heightMm());
  }

  /** Draws a strip. */
  public static void draw(StripPlan plan, Wording wording, MarkCanvas canvas) {
    StripChart chart = new StripChart(plan, wording);
    chart.mark();
    Plots.draw(chart.plot, plan.room(), canvas);
  }

  /** Draws the load line through all strips. */
  public static void drawLine(double acrossMm, StripWindow window, Box room, MarkCanvas canvas) {
    NumberAxis across = new NumberAxis();
    across.setRange(window.fromMm(), window.toMm());
    across.setVisible(false);
    XYPlot plot = plot(across, room.heightMm());
    plot.addDomainMarker(new ValueMarker(acrossMm, color(Pen.MAIN_LINE), pen(Pen.MAIN_LINE)));
    Plots.draw(plot, room, canvas);
  }

  private static XYPlot plot(ValueAxis across, double heightMm) {
    NumberAxis up = new NumberAxis();
    up.setRange(0, heightMm);
    up.setVisible(false);
    return Plots.bare(across, up, new XYLineAndShapeRenderer());
  }

  private static NumberAxis axis(StripPlan plan, Wording wording) {
    StripWindow window = plan.window();
    double left = plan.offsetMm(window.fromMm());
    double right = plan.offsetMm(window.toMm());
    double first =
        plan.offsetMm(window.fromMm() + (plan.isBrokenBefore() ? StripWindow.BREAK_MM : 0));
    double last = plan.offsetMm(window.toMm() - (plan.isBrokenAfter() ? StripWindow.BREAK_MM : 0));
    NumberAxis axis =
        new OffsetAxis(
            Math.min(first, last), Math.max(first, last), mm -> wording.signed(mm, Unit.COUNT));
    axis.setRange(Math.min(left, right), Math.max(left, right));
    axis.setInverted(plan.strip().sign() < 0);
    return axis;
  }

  private void mark() {
    plan.interval()
        .ifPresent(
            ends -> {
              double from = plan.offsetMm(ends.fromMm());
              double to = plan.offsetMm(ends.toMm());
              Marker marker =
                  new IntervalMarker(
                      Math.min(from, to), Math.max(from, to), MarkCanvas.color(Ink.PALE_BLUE));
              marker.setAlpha(1);
              marker.setOutlinePaint(null);
              plot.addDomainMarker(marker, Layer.BACKGROUND);
            });
    plan.band().ifPresent(this::band);
    plan.recommendedMm()
        .ifPresent(mm -> line(Pen.TARGET, mm, 0, mm, 0.85 * plan.room().heightMm()));
    breaks();
    plan.beforeMm().ifPresent(this::diamond);
    ring();
  }

  private void band(Ends ends) {
    double up = BAND_SHARE * plan.room().heightMm();
    Box box = new Box(ends.fromMm(), -up, ends.toMm(), 0);
    for (Mark mark : Shapes.hatch(box, HATCH_MM, Pen.HATCH)) {
      List<PaperPoint> along = ((Mark.Stroke) mark).along();
      PaperPoint from = along.get(0);
      PaperPoint to = along.get(1);
      line(Pen.HATCH, from.rightMm(), -from.downMm(), to.rightMm(), -to.downMm());
    }
    line(Pen.TARGET, ends.fromMm(), up, ends.toMm(), up);
    if (!ends.open()) {
      line(Pen.TARGET, ends.fromMm(), 0, ends.fromMm(), up);
    }
    if (!ends.goesOn()) {
      line(Pen.TARGET, ends.toMm(), 0, ends.toMm(), up);
    }
  }

  private void breaks() {
    if (plan.isBrokenBefore()) {
      breakAt(plan.window().fromMm() + StripWindow.BREAK_MM);
    }
    if (plan.isBrokenAfter()) {
      breakAt(plan.window().toMm() - StripWindow.BREAK_MM);
    }
  }

  /** Two slanted strokes across the axis, white between them. */
  private void breakAt(double acrossMm) {
    double half = 0.7;
    double gap = 0.9;
    polygon(
        Ink.WHITE,
        new double[][] {
          {acrossMm - gap, -half}, {acrossMm, half}, {acrossMm + gap, half}, {acrossMm, -half}
        });
    line(Pen.AXIS, acrossMm - gap, -1.2, acrossMm, 1.2);
    line(Pen.AXIS, acrossMm, -1.2, acrossMm + gap, 1.2);
  }

  private void ring() {
    polygon(Ink.WHITE, circle(RING_MM));
    outline(Pen.LANDMARK, circle(RING_MM));
    polygon(Ink.BLACK, circle(RING_MM / 3));
    if (plan.zeroMm() != plan.strip().zeroMm()) {
      XYTextAnnotation zero = new XYTextAnnotation("0", plan.offsetMm(plan.zeroMm()), -ZERO_MM);
      zero.setFont(MarkCanvas.font(Lettering.PLAIN));
      zero.setTextAnchor(TextAnchor.TOP_CENTER);
      plot.addAnnotation(zero);
    }
  }

  private double[][] circle(double radiusMm) {
    return Shapes.circle(new PaperPoint(plan.zeroMm(), 0), radiusMm).stream()
        .map(spot -> new double[] {spot.rightMm(), spot.downMm()})
        .toArray(double[][]::new);
  }

  private void diamond(double acrossMm) {
    double d = Symbols.DIAMOND_MM;
    double up = 0.3 * plan.room().heightMm();
    double[][] corners = {
      {acrossMm - d, up}, {acrossMm, up + d}, {acrossMm + d, up}, {acrossMm, up - d}
    };
    polygon(Ink.WHITE, corners);
    outline(Pen.EARLIER, corners);
  }

  private void line(Pen pen, double fromMm, double fromUpMm, double toMm, double toUpMm) {
    plot.addAnnotation(
        new XYLineAnnotation(
            plan.offsetMm(fromMm), fromUpMm, plan.offsetMm(toMm), toUpMm, pen(pen), color(pen)));
  }

  private void outline(Pen pen, double[][] corners) {
    plot.addAnnotation(new XYPolygonAnnotation(coordinates(corners), pen(pen), color(pen), null));
  }

  private void polygon(Ink ink, double[][] corners) {
    plot.addAnnotation(
        new XYPolygonAnnotation(coordinates(corners), null, null, MarkCanvas.color(ink)));
  }

  private double[] coordinates(double[][] corners) {
    double[] coordinates = new double[2 * corners.length];
    for (int i = 0; i < corners.length; i++) {
      coordinates[2 * i] = plan.offsetMm(corners[i][0]);
      coordinates[2 * i + 1] = corners[i][1];
    }
    return coordinates;
  }

  private static PenStroke pen(Pen pen) {
    return new PenStroke(pen);
  }

  private static Color color(Pen pen) {
    return MarkCanvas.color(pen.ink());
  }
}
