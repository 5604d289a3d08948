package caryatid.chart;

import caryatid.advice.Advice;
import caryatid.advice.Learnt;
import caryatid.advice.Proposal.PredictedOffset;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.SideBySide;
import caryatid.chart.paint.BandChart.BandPlan;
import caryatid.chart.paint.BandChart.BandPoint;
import caryatid.chart.paint.BandChart.PointKind;
import caryatid.loadline.LandmarkInPlane;
import caryatid.views.RecordAdvice;
import caryatid.wording.FollowedText;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Plans the drawings of an advice: what is expected of the next change, and what was expected of
 * earlier ones beside what was measured.
 */
public final class AdviceDrawing {
  /** Height on paper, mm. */
  public static final double HEIGHT_MM = BandFrame.HEIGHT_MM;

  private static final double GAP_MM = 4;

  /** How far a column's two points lie from its middle, in columns. */
  private static final double ASIDE = 0.16;

  private final RecordAdvice of;
  private final LandmarkWords landmarks;
  private final Wording wording;
  private final BandFrame frame;

  private AdviceDrawing(RecordAdvice of, Wording wording, double widthMm) {
    this.of = of;
    this.landmarks = new LandmarkWords(wording, of.prostheticKnee());
    this.wording = wording;
    this.frame = new BandFrame(landmarks, wording, widthMm);
  }

  /**
   * Each offset now and after the change that is advised, side by side; empty where nothing is
   * known of any.
   */
  public static Optional<Drawing> next(RecordAdvice of, Wording wording, double widthMm) {
    List<PredictedOffset> now = of.advice().present();
    if (now.isEmpty()) {
      return Optional.empty();
    }
    double eachMm = (widthMm - GAP_MM * (now.size() - 1)) / now.size();
    AdviceDrawing plan = new AdviceDrawing(of, wording, eachMm);
    List<Drawing> each = now.stream().map(plan::next).toList();
    String name = "next-" + of.leg().lastPart().toLowerCase(Locale.ROOT);
    return Optional.of(plan.frame.withLegend(SideBySide.of(name, each, GAP_MM, widthMm)));
  }

  /** What was expected of each stand beside what was measured, one drawing an offset. */
  public static List<Drawing> outcomes(RecordAdvice of, Wording wording, double widthMm) {
    AdviceDrawing plan = new AdviceDrawing(of, wording, widthMm);
    return of.advice().present().stream()
        .filter(now -> !predicted(of, now.target().at()).isEmpty())
        .map(plan::outcome)
        .map(plan.frame::withLegend)
        .toList();
  }

  private Drawing next(PredictedOffset now) {
    List<BandPoint> points = new ArrayList<>();
    List<String> columns = new ArrayList<>(List.of(wording.word("AdviceDrawing.NOW")));
    points.add(point(0, now, PointKind.MEASURED, "AdviceDrawing.SAYS_NOW"));
    after(now.target().at())
        .ifPresent(
            then -> {
              columns.add(wording.word("AdviceDrawing.AFTER"));
              points.add(point(1, then, PointKind.EXPECTED, "AdviceDrawing.SAYS_AFTER"));
            });
    return frame.drawing(
        "next-" + BandFrame.name(now.target().at()),
        frame.title("AdviceDrawing.NEXT", now.target().at()),
        frame.directions(now.target().at(), "AdviceDrawing.SIGNS"),
        new BandPlan(points, List.of(), BandFrame.band(now.target()), columns, frame.box()));
  }

  private Optional<PredictedOffset> after(LandmarkInPlane at) {
    Advice advice = of.advice();
    return advice.proposals().stream()
        .limit(1)
        .flatMap(first -> first.afterFirst().stream())
        .filter(then -> then.target().at().equals(at))
        .findFirst();
  }

  private Drawing outcome(PredictedOffset now) {
    LandmarkInPlane at = now.target().at();
    List<BandPoint> points = new ArrayList<>();
    List<String> columns = new ArrayList<>();
    for (Learnt.Predicted one : predicted(of, at)) {
      int column = columns.size();
      columns.add(Integer.toString(one.state()));
      String says = new FollowedText(of, wording).predicted(one) + ".";
      points.add(
          new BandPoint(
              column - ASIDE,
              one.mm(),
              one.lowMm(),
              one.highMm(),
              PointKind.EXPECTED,
              Optional.of(says)));
      points.add(
          new BandPoint(
              column + ASIDE,
              one.measuredMm(),
              one.measuredMm(),
              one.measuredMm(),
              PointKind.MEASURED,
              Optional.empty()));
    }
    return frame.drawing(
        "outcome-" + BandFrame.name(at),
        frame.title("AdviceDrawing.OUTCOME", at),
        frame.directions(at, "OffsetsDrawing.AXES"),
        new BandPlan(points, List.of(), BandFrame.band(now.target()), columns, frame.box()));
  }

  private static List<Learnt.Predicted> predicted(RecordAdvice of, LandmarkInPlane at) {
    return of.advice().learnt().predictions().stream().filter(p -> p.at().equals(at)).toList();
  }

  private BandPoint point(int column, PredictedOffset offset, PointKind kind, String key) {
    LandmarkInPlane at = offset.target().at();
    String says =
        wording.fill(
            key,
            frame.mm(at, offset.mm()),
            frame.mm(at, offset.lowMm()),
            frame.mm(at, offset.highMm()));
    return new BandPoint(
        column, offset.mm(), offset.lowMm(), offset.highMm(), kind, Optional.of(says));
  }
}
