package caryatid.chart;

import caryatid.advice.HeelAnswer;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.paint.BandChart.BandPlan;
import caryatid.chart.paint.BandChart.BandPoint;
import caryatid.chart.paint.BandChart.PointKind;
import caryatid.chart.paint.BandChart.ToleranceBand;
import caryatid.entry.OwnSetting;
import caryatid.loadline.LandmarkInPlane;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.views.RecordAdvice;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Plans the drawings of footwear: an offset over heel heights, and the wearer's attempts. */
public final class HeelDrawing {
  private final RecordAdvice of;
  private final Wording wording;
  private final BandFrame frame;

  private HeelDrawing(RecordAdvice of, Wording wording, double widthMm) {
    this.of = of;
    this.wording = wording;
    LandmarkWords landmarks = new LandmarkWords(wording, of.prostheticKnee());
    this.frame = new BandFrame(landmarks, wording, widthMm);
  }

  /** Each offset over heels that the ankle is not set for. */
  public static List<Drawing> heels(RecordAdvice of, Wording wording, double widthMm) {
    HeelDrawing plan = new HeelDrawing(of, wording, widthMm);
    return of.heels().stream().map(plan::heel).map(plan.frame::withLegend).toList();
  }

  /** The wearer's attempts at each setting. */
  public static List<Drawing> attempts(RecordAdvice of, Wording wording, double widthMm) {
    HeelDrawing plan = new HeelDrawing(of, wording, widthMm);
    List<Drawing> drawings = new ArrayList<>();
    for (RecordAdvice.Attempts attempts : of.attempts()) {
      drawings.add(plan.frame.withLegend(plan.attempts(attempts, drawings.size() + 1)));
    }
    return drawings;
  }

  private Drawing heel(HeelAnswer heel) {
    LandmarkInPlane at = heel.target().at();
    List<BandPoint> line =
        heel.line().stream().map(p -> point(p, PointKind.EXPECTED, Optional.empty())).toList();
    List<BandPoint> measured =
        heel.measured().stream()
            .map(p -> point(p, PointKind.MEASURED, Optional.of(said(at, p))))
            .toList();
    return frame.drawing(
        "heel-" + BandFrame.name(at),
        frame.title("AdviceDrawing.HEEL", at),
        frame.directions(at, "AdviceDrawing.HEEL_AXIS"),
        new BandPlan(measured, line, BandFrame.band(heel.target()), List.of(), frame.box()));
  }

  private static BandPoint point(HeelAnswer.AtHeel at, PointKind kind, Optional<String> says) {
    return new BandPoint(at.heelMm(), at.mm(), at.lowMm(), at.highMm(), kind, says);
  }

  private String said(LandmarkInPlane at, HeelAnswer.AtHeel point) {
    return wording.fill(
        "AdviceDrawing.SAYS_HEEL",
        Argument.text(wording.signed(point.heelMm(), Unit.MM)),
        frame.mm(at, point.mm()),
        frame.mm(at, point.lowMm()),
        frame.mm(at, point.highMm()));
  }

  private Drawing attempts(RecordAdvice.Attempts attempts, int number) {
    List<BandPoint> points = new ArrayList<>();
    List<String> columns = new ArrayList<>();
    for (double error : attempts.errorsMm()) {
      columns.add(Integer.toString(columns.size() + 1));
      String says =
          wording.fill(
              "AdviceDrawing.SAYS_ATTEMPT",
              Argument.count(columns.size()),
              Argument.text(wording.signed(error, Unit.MM)));
      points.add(
          new BandPoint(
              columns.size() - 1, error, error, error, PointKind.MEASURED, Optional.of(says)));
    }
    double mean = attempts.show().meanMm();
    double reach = attempts.show().reachMm();
    columns.add(wording.word("AdviceDrawing.NEXT_ATTEMPTS"));
    points.add(
        new BandPoint(
            columns.size() - 1,
            mean,
            mean - reach,
            mean + reach,
            PointKind.EXPECTED,
            Optional.empty()));
    double same = OwnSetting.SAME_MM.doubleValue();
    return frame.drawing(
        "attempts-" + of.leg().lastPart().toLowerCase(Locale.ROOT) + "-" + number,
        wording.fill("AdviceDrawing.ATTEMPTS", Argument.text(PrintableText.of(attempts.what()))),
        wording.word("AdviceDrawing.ATTEMPTS_AXIS"),
        new BandPlan(points, List.of(), new ToleranceBand(-same, 0, same), columns, frame.box()));
  }
}
