package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.FootTracks.Track;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Curve;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.ShownRange;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.paint.TimeChart;
import caryatid.recording.model.Recording;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * One panel of values over time.
 *
 * @param label what is shown, with its unit
 * @param curves the curves, distinguished by line style and name
 */
record TimePanel(String label, List<Named> curves) {
  /** From a curve's name to the next one's sample of its line. */
  private static final double BETWEEN_NAMES_MM = 3;

  private static final double SAMPLE_MM = 5;

  /** Room to the right of a panel, mm. */
  static final double BESIDE_MM = 1;

  /** A curve and its name; the only one of a panel needs none. */
  record Named(String name, Curve curve) {}

  /**
   * The panel's marks.
   *
   * @param box the panel
   * @param topMm where its label is
   * @param numbered whether the times are written below
   */
  Part part(
      Stand stand,
      Recording recording,
      Track track,
      Box box,
      double topMm,
      boolean numbered,
      Wording wording) {
    List<Curve> shown = curves.stream().map(Named::curve).toList();
    TimeChart.CurvePanel panel =
        new TimeChart.CurvePanel(
            recording.timeS(),
            track.plate().usable(),
            stand.standing().stretch().leftOut(),
            shown,
            ShownRange.of(shown, track.plate().usable(), stand.standing().stretch()),
            box,
            BESIDE_MM,
            numbered);
    List<Mark> marks = new ArrayList<>(TimeChart.draw(panel, wording));
    marks.addAll(names(box, topMm));
    return Part.saying(label, marks);
  }

  /** The panel's label, and each curve's name behind a sample of its line. */
  private List<Mark> names(Box box, double topMm) {
    List<Mark> marks = new ArrayList<>();
    marks.add(text(box.leftMm(), box, topMm, label));
    double left = box.leftMm() + Fonts.widthMm(label, Lettering.PLAIN) + BETWEEN_NAMES_MM;
    for (Named named : curves) {
      if (!named.name().isEmpty()) {
        PaperPoint start = new PaperPoint(left, topMm + Lettering.PLAIN.lineMm() / 2);
        marks.add(Stroke.of(named.curve().pen(), start, start.moved(SAMPLE_MM, 0)));
        left += SAMPLE_MM + 1;
        marks.add(text(left, box, topMm, named.name()));
        left += Fonts.widthMm(named.name(), Lettering.PLAIN) + BETWEEN_NAMES_MM;
      }
    }
    return marks;
  }

  private static Text text(double left, Box box, double topMm, String words) {
    String fitted = Fonts.fit(words, Lettering.PLAIN, box.rightMm() + BESIDE_MM - left);
    return new Text(
        new PaperPoint(left, topMm + Lettering.PLAIN.ascentMm()), fitted, Lettering.PLAIN);
  }
}
