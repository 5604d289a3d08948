package caryatid.chart;

import caryatid.chart.StripLayout.Stack;
import caryatid.chart.StripLayout.StripRow;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.StripWindow;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.paint.MarkCanvas;
import caryatid.chart.paint.StripChart;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The marks of the main picture of one leg, but for what its parts say. */
final class StripMarks {
  private static final double SKETCH_MM = 15;

  private final Leg leg;
  private final StripWords words;
  private final StripWindow window;
  private final Wording wording;
  private final double widthMm;

  /**
   * @param widthMm width of the picture on paper, mm
   */
  StripMarks(Leg leg, StripWords words, StripWindow window, Wording wording, double widthMm) {
    this.leg = leg;
    this.words = words;
    this.window = window;
    this.wording = wording;
    this.widthMm = widthMm;
  }

  List<Mark> sketch(Stack stack) {
    Box room = new Box(0.5, StripLayout.TITLE_MM, SKETCH_MM, stack.bottomMm() - 2);
    List<Double> middles =
        stack.rows().stream().map(row -> row.topMm() + 0.55 * Lettering.STRONG.lineMm()).toList();
    return new LegSketch(leg, room).marks(middles, StripLayout.HEAD_MM - 1);
  }

  /** What stands around a strip's chart: another load line, the head, the words at the ends. */
  List<Mark> around(StripRow row) {
    return Stream.of(other(row.plan()), head(row.head(), row.topMm()), ends(row.plan()))
        .flatMap(List::stream)
        .toList();
  }

  List<Mark> chart(StripPlan plan) {
    MarkCanvas canvas = new MarkCanvas();
    StripChart.draw(plan, wording, canvas);
    return canvas.marks();
  }

  List<Mark> vertical(LoadLine line, List<StripPlan> plans) {
    Box first = plans.get(0).room();
    Box last = plans.get(plans.size() - 1).room();
    MarkCanvas canvas = new MarkCanvas();
    Box room = new Box(window.leftMm(), first.topMm(), window.rightMm(), last.bottomMm() + 1.6);
    StripChart.drawLine(window.shownMm(line.acrossMm()), window, room, canvas);
    return canvas.marks();
  }

  /** Another load line than the leg's, which a target may be meant for. */
  private List<Mark> other(StripPlan plan) {
    if (!words.isOther(plan.strip())) {
      return List.of();
    }
    double x = window.xMm(plan.strip().lineMm().orElseThrow());
    return List.of(
        Stroke.of(
            Pen.OTHER_LINE,
            new PaperPoint(x, plan.room().topMm()),
            new PaperPoint(x, plan.room().bottomMm() + 1.6)));
  }

  List<Mark> title() {
    PaperPoint base = new PaperPoint(0, Lettering.TITLE.ascentMm());
    String title = Fonts.fit(wording.word(leg.view().key("TITLE")), Lettering.TITLE, widthMm);
    return List.of(new Text(base, title, Lettering.TITLE));
  }

  private List<Mark> head(List<StripWords.HeadLine> lines, double topMm) {
    List<Mark> marks = new ArrayList<>();
    double base = topMm + Lettering.PLAIN.ascentMm();
    for (StripWords.HeadLine line : lines) {
      double left = StripLayout.HEAD_MM;
      if (!line.name().isEmpty()) {
        marks.add(new Text(new PaperPoint(left, base), line.name(), Lettering.STRONG));
        left += Fonts.widthMm(line.name(), Lettering.STRONG);
      }
      if (!line.after().isEmpty()) {
        marks.add(new Text(new PaperPoint(left, base), line.after(), Lettering.PLAIN));
      }
      if (!line.result().isEmpty()) {
        double width = Fonts.widthMm(line.result(), line.lettering());
        marks.add(new Text(new PaperPoint(widthMm - width, base), line.result(), line.lettering()));
      }
      base += Lettering.PLAIN.lineMm();
    }
    return marks;
  }

  /** What lies to the left and right, at the axis's ends. */
  private List<Mark> ends(StripPlan plan) {
    double base = plan.room().bottomMm() + 0.4;
    double room = StripLayout.ENDS_MM - 1.5;
    String left = Fonts.fit(words.end(false), Lettering.PLAIN, room);
    String right = Fonts.fit(words.end(true), Lettering.PLAIN, room);
    double width = Fonts.widthMm(left, Lettering.PLAIN);
    return List.of(
        new Text(new PaperPoint(plan.room().leftMm() - 1.2 - width, base), left, Lettering.PLAIN),
        new Text(new PaperPoint(plan.room().rightMm() + 1.2, base), right, Lettering.PLAIN));
  }

  /** Words that the load line would cross get a white ground. */
  List<Mark> onWhite(List<Mark> marks) {
    if (leg.line().isEmpty()) {
      return marks;
    }
    double x = window.xMm(leg.line().get().acrossMm());
    List<Mark> on = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Text text) {
        Box box = text.box();
        if (x > box.leftMm() - 0.5 && x < box.rightMm() + 0.5) {
          Box ground =
              new Box(box.leftMm(), box.topMm() - 0.1, box.rightMm(), box.bottomMm() + 0.1);
          on.add(new Fill(Shapes.corners(ground), Ink.WHITE));
        }
      }
      on.add(mark);
    }
    return on;
  }
}
