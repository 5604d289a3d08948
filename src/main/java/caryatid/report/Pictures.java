package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.chart.AdviceDrawing;
import caryatid.chart.ScaleBar;
import caryatid.chart.StripDrawing;
import caryatid.chart.TimeDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.format.ResultSpellings;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.report.picture.Png;
import caryatid.report.picture.Svg;
import caryatid.views.RecordAdvice;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The drawings of the legs as files of their own, for pasting. */
public final class Pictures {
  private static final double WIDTH_MM = 186;
  private static final double SCREEN_MM = 112;
  private static final double TIME_WIDTH_MM = 90;
  private static final double TIME_HEIGHT_MM = 62;
  private static final double DOTS_PER_INCH = 200;

  /** Where the axis of time begins and ends, as parts of the drawing's width. */
  public static final double TIME_FROM_PART = TimeDrawing.LEFT_MM / TIME_WIDTH_MM;

  public static final double TIME_TO_PART = 1 - TimeDrawing.RIGHT_MM / TIME_WIDTH_MM;

  private Pictures() {}

  /** Each drawing as SVG (UTF-8), by its name, for example {@code left-sagittal}. */
  public static Map<String, byte[]> svg(Result result, Wording wording) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings(result, wording, WIDTH_MM)
        .forEach((name, d) -> files.put(name, Svg.file(d).getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  /** Each drawing as PNG, 200 dots an inch, by its name. */
  public static Map<String, byte[]> png(Result result, Wording wording) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings(result, wording, WIDTH_MM)
        .forEach((name, d) -> files.put(name, Png.of(d, DOTS_PER_INCH)));
    return files;
  }

  /**
   * The strips of each leg and plane as elements of a page, with what they say; below them a bar to
   * compare them with, because a screen's scale is not known.
   */
  public static List<String> strips(Result result, Wording wording) {
    List<Drawing> all = new ArrayList<>(drawings(result, wording, SCREEN_MM).values());
    if (!all.isEmpty()) {
      all.add(ScaleBar.alone(wording, SCREEN_MM));
    }
    return all.stream().map(Svg::inside).toList();
  }

  /**
   * One stand over time as elements of a page, one for each prosthetic side.
   *
   * @param recordings the stands' own, in their order
   * @param number which stand, from 0
   */
  public static List<String> overTime(
      Result result, List<Recording> recordings, int number, Wording wording) {
    List<Stand> stands = result.state().stands();
    return stands.get(0).trial().side().sides().stream()
        .map(
            side ->
                TimeDrawing.plan(
                    stands, recordings, number, side, wording, TIME_WIDTH_MM, TIME_HEIGHT_MM))
        .map(Svg::inside)
        .toList();
  }

  /** Each offset now and after the change that is advised, as an element of a page. */
  public static Optional<String> nextChange(RecordAdvice of, Wording wording) {
    return AdviceDrawing.next(of, wording, WIDTH_MM).map(Svg::inside);
  }

  private static Map<String, Drawing> drawings(Result result, Wording wording, double widthMm) {
    AlignmentState state = result.state();
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    for (Side side : state.trial().side().sides()) {
      for (Plane plane : Plane.values()) {
        if (StripDrawing.isDrawn(state, plane, side)) {
          double height = StripDrawing.mostMm(state, plane, side, wording, widthMm);
          drawings.put(
              ResultSpellings.side(side) + "-" + ResultSpellings.plane(plane),
              StripDrawing.plan(state, result.before(), plane, side, wording, widthMm, height));
        }
      }
    }
    return drawings;
  }
}
