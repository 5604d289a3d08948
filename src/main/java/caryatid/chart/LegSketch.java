package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.leg.Leg.Level;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.util.ArrayList;
import java.util.List;

/** A small leg for orientation: which side, which plane, and how high each strip lies. */
final class LegSketch {
  private static final double LEAD_MM = 1.5;

  private final Leg leg;
  private final Box room;
  private final Scale scale;
  private final double floorMm;

  LegSketch(Leg leg, Box room) {
    this.leg = leg;
    this.room = room;
    Scale onFloor = Scale.fitting(places(leg), room);
    double top = places(leg).stream().mapToDouble(PersonPoint::heightMm).max().orElse(0);
    double free = room.heightMm() - top / onFloor.oneTo();
    this.floorMm = room.bottomMm() - free / 2;
    this.scale = new Scale(onFloor.oneTo(), onFloor.origin().moved(0, -free / 2));
  }

  private static List<PersonPoint> places(Leg leg) {
    List<PersonPoint> places = new ArrayList<>();
    LegOutline.of(leg).forEach(places::addAll);
    leg.levels().forEach(l -> places.add(new PersonPoint(l.acrossMm(), Math.max(1, l.heightMm()))));
    return places;
  }

  /**
   * The leg, the floor and a line from each height to its strip.
   *
   * @param downMm where each strip's words are, mm
   * @param rightMm where the lines end, mm
   */
  List<Mark> marks(List<Double> downMm, double rightMm) {
    List<Mark> marks = new ArrayList<>(new LegMarks(leg, scale, 0).body().marks());
    marks.add(
        Stroke.of(
            Pen.TICK,
            new PaperPoint(room.leftMm(), floorMm),
            new PaperPoint(room.rightMm(), floorMm)));
    int strip = 0;
    for (Level level : leg.levels()) {
      PaperPoint at = scale.spot(level.acrossMm(), level.heightMm());
      int count = Math.max(1, level.findings().size() + level.withheld().size());
      for (int i = 0; i < count; i++) {
        marks.add(
            Stroke.of(
                Pen.LEADER,
                at,
                new PaperPoint(rightMm - LEAD_MM, downMm.get(strip)),
                new PaperPoint(rightMm, downMm.get(strip))));
        strip++;
      }
      marks.add(new Fill(Shapes.circle(at, 0.6), Ink.BLACK));
    }
    return marks;
  }
}
