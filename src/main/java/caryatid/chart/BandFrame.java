package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.paint.BandChart;
import caryatid.chart.paint.BandChart.BandPlan;
import caryatid.chart.paint.BandChart.ToleranceBand;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The frame of a chart of what was measured and expected over a tolerance: its title, the words
 * below it, what its symbols mean.
 */
final class BandFrame {
  /** Height on paper, mm. */
  static final double HEIGHT_MM = 52;

  private static final double LEFT_MM = 12;
  private static final double TOP_MM = 6;
  private static final double BELOW_MM = 13;

  private final LandmarkWords landmarks;
  private final Wording wording;
  private final double widthMm;

  BandFrame(LandmarkWords landmarks, Wording wording, double widthMm) {
    this.landmarks = landmarks;
    this.wording = wording;
    this.widthMm = widthMm;
  }

  Drawing drawing(String name, String title, String below, BandPlan plan) {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(List.of(text(title, Lettering.TITLE.ascentMm(), Lettering.TITLE))));
    parts.addAll(BandChart.draw(plan, wording));
    parts.add(Part.background(List.of(text(below, plan.box().bottomMm() + 7.6, Lettering.PLAIN))));
    StringBuilder says = new StringBuilder(title + ".");
    plan.points().forEach(point -> point.says().ifPresent(said -> says.append(' ').append(said)));
    return new Drawing(name, widthMm, HEIGHT_MM, says.toString(), parts);
  }

  private Mark text(String words, double downMm, Lettering lettering) {
    return new Text(new PaperPoint(0, downMm), Fonts.fit(words, lettering, widthMm), lettering);
  }

  Drawing withLegend(Drawing drawing) {
    List<Part> parts = new ArrayList<>(drawing.parts());
    OffsetLegend legend = new OffsetLegend(HEIGHT_MM - 1.2, drawing.widthMm(), wording);
    parts.add(Part.background(legend.ofExpected()));
    return new Drawing(drawing.name(), drawing.widthMm(), HEIGHT_MM, drawing.alternative(), parts);
  }

  /** Where the chart is drawn, its axes outside. */
  Box box() {
    return new Box(LEFT_MM, TOP_MM, widthMm - 1, HEIGHT_MM - BELOW_MM);
  }

  static ToleranceBand band(Target target) {
    return new ToleranceBand(target.lowestMm(), target.recommendedMm(), target.highestMm());
  }

  static String name(LandmarkInPlane at) {
    String landmark = at.landmark().replaceAll("[^A-Za-z0-9]+", "-");
    return (at.plane().lastPart() + "-" + at.side().lastPart() + "-" + landmark)
        .toLowerCase(Locale.ROOT);
  }

  String title(String key, LandmarkInPlane at) {
    return wording.fill(
        key,
        Argument.term(at.plane()),
        Argument.term(at.side()),
        Argument.text(PrintableText.of(landmarks.name(at.landmark(), at.side()))));
  }

  String directions(LandmarkInPlane at, String key) {
    OffsetWords words = new OffsetWords(wording);
    return wording.fill(
        key,
        Argument.text(words.direction(at.plane(), 1)),
        Argument.text(words.direction(at.plane(), -1)));
  }

  Argument mm(LandmarkInPlane at, double mm) {
    return Argument.text(new OffsetWords(wording).distance(at.plane(), mm));
  }
}
