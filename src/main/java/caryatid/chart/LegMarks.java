package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.leg.Leg.Level;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import caryatid.loadline.Target;
import java.util.ArrayList;
import java.util.List;

/** The marks of a leg drawing that are true to scale. */
final class LegMarks {
  private final Leg leg;
  private final Scale scale;
  private final double topMm;

  /**
   * @param topMm how far up lines run, mm of the person
   */
  LegMarks(Leg leg, Scale scale, double topMm) {
    this.leg = leg;
    this.scale = scale;
    this.topMm = topMm;
  }

  Part body() {
    List<Mark> marks = new ArrayList<>();
    for (List<PersonPoint> shape : LegOutline.of(leg)) {
      List<PaperPoint> outline = shape.stream().map(scale::spot).toList();
      marks.add(new Fill(outline, Ink.MIST));
      marks.add(Shapes.closed(outline, Pen.BODY));
    }
    return Part.background(marks);
  }

  List<Mark> interval(LoadLine line) {
    Box band =
        Shapes.box(
            scale.spot(line.acrossMm() - line.halfMm(), 0),
            scale.spot(line.acrossMm() + line.halfMm(), topMm));
    List<Mark> marks = new ArrayList<>();
    marks.add(new Fill(Shapes.corners(band), Ink.PALE_BLUE));
    marks.add(Shapes.closed(Shapes.corners(band), Pen.INTERVAL_EDGE));
    return marks;
  }

  Mark vertical(LoadLine line) {
    return Stroke.of(
        Pen.LOAD_LINE, scale.spot(line.acrossMm(), 0), scale.spot(line.acrossMm(), topMm));
  }

  List<Mark> level(Level level) {
    List<Mark> marks = new ArrayList<>();
    level.finding().ifPresent(f -> marks.addAll(target(level, f.target())));
    marks.addAll(Symbols.landmark(spot(level), level.halfMm() / scale.oneTo()));
    leg.line()
        .filter(line -> level.offset().isPresent())
        .ifPresent(
            line ->
                marks.addAll(
                    Symbols.dimension(spot(level), scale.spot(line.acrossMm(), level.heightMm()))));
    return marks;
  }

  private List<Mark> target(Level level, Target target) {
    return Symbols.target(
        atOffset(level, target.lowestMm()),
        atOffset(level, target.highestMm()),
        atOffset(level, target.recommendedMm()));
  }

  private PaperPoint spot(Level level) {
    return scale.spot(level.acrossMm(), level.heightMm());
  }

  PaperPoint atOffset(Level level, double offsetMm) {
    return scale.spot(level.acrossMm() + leg.view().sign() * offsetMm, level.heightMm());
  }
}
