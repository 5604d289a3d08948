package caryatid.chart.mark;

import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.util.ArrayList;
import java.util.List;

/** The symbols all drawings share. */
public final class Symbols {
  private static final double RING_MM = 0.9;
  public static final double DIAMOND_MM = 1.2;
  private static final double WHISKER_MM = 0.9;
  private static final double BAND_HALF_MM = 1.3;
  private static final double DIMENSION_BELOW_MM = 2.4;
  private static final double TICK_MM = 0.6;

  private Symbols() {}

  /** A ringed point with a bar for its interval. */
  public static List<Mark> landmark(PaperPoint at, double halfMm) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Stroke.of(Pen.LANDMARK, at.moved(-halfMm, 0), at.moved(halfMm, 0)));
    marks.add(upright(Pen.LANDMARK, at.moved(-halfMm, 0), WHISKER_MM));
    marks.add(upright(Pen.LANDMARK, at.moved(halfMm, 0), WHISKER_MM));
    marks.addAll(ring(at));
    return marks;
  }

  /** A ring with a dot in it. */
  public static List<Mark> ring(PaperPoint at) {
    return List.of(
        new Fill(Shapes.circle(at, RING_MM), Ink.WHITE),
        Shapes.closed(Shapes.circle(at, RING_MM), Pen.LANDMARK),
        new Fill(Shapes.circle(at, RING_MM / 3), Ink.BLACK));
  }

  /** The corners of a diamond. */
  public static List<PaperPoint> diamond(PaperPoint at) {
    return List.of(
        at.moved(-DIAMOND_MM, 0),
        at.moved(0, -DIAMOND_MM),
        at.moved(DIAMOND_MM, 0),
        at.moved(0, DIAMOND_MM));
  }

  /** A hatched band between brackets, with a bar at what is recommended. */
  public static List<Mark> target(PaperPoint lowest, PaperPoint highest, PaperPoint recommended) {
    Box band = Shapes.box(lowest.moved(0, -BAND_HALF_MM), highest.moved(0, BAND_HALF_MM));
    List<Mark> marks = new ArrayList<>(Shapes.hatch(band, 0.9, Pen.HATCH));
    marks.add(bracket(band.leftMm(), band, 1));
    marks.add(bracket(band.rightMm(), band, -1));
    marks.add(upright(Pen.TARGET, recommended, BAND_HALF_MM + 0.7));
    return marks;
  }

  private static Mark bracket(double at, Box band, int inward) {
    double lip = inward * Math.min(0.7, band.widthMm() / 2);
    return Stroke.of(
        Pen.TARGET,
        new PaperPoint(at + lip, band.topMm()),
        new PaperPoint(at, band.topMm()),
        new PaperPoint(at, band.bottomMm()),
        new PaperPoint(at + lip, band.bottomMm()));
  }

  /** A cross for a mean. */
  public static List<Mark> mean(PaperPoint at) {
    return List.of(
        upright(Pen.TARGET, at, 1.4), Stroke.of(Pen.TARGET, at.moved(-1.4, 0), at.moved(1.4, 0)));
  }

  /** A dimension line below a level, with slanted ends. */
  public static List<Mark> dimension(PaperPoint from, PaperPoint to) {
    PaperPoint start = from.moved(0, DIMENSION_BELOW_MM);
    PaperPoint end = new PaperPoint(to.rightMm(), start.downMm());
    return List.of(
        Stroke.of(Pen.DIMENSION, from, start.moved(0, TICK_MM)),
        Stroke.of(Pen.DIMENSION, start, end),
        slant(start),
        slant(end));
  }

  private static Mark slant(PaperPoint at) {
    return Stroke.of(Pen.LANDMARK, at.moved(-TICK_MM, TICK_MM), at.moved(TICK_MM, -TICK_MM));
  }

  public static Mark upright(Pen pen, PaperPoint at, double halfMm) {
    return Stroke.of(pen, at.moved(0, -halfMm), at.moved(0, halfMm));
  }
}
