package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.chart.StripDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.format.ResultSpellings;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.report.picture.Png;
import caryatid.report.picture.Svg;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The drawings of the legs as files of their own, for pasting. */
public final class Pictures {
  private static final double WIDTH_MM = 186;
  private static final double DOTS_PER_INCH = 200;

  private Pictures() {}

  /** Each drawing as SVG (UTF-8), by its name, for example {@code left-sagittal}. */
  public static Map<String, byte[]> svg(Result result, Wording wording) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings(result, wording)
        .forEach((name, d) -> files.put(name, Svg.file(d).getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  /** Each drawing as PNG, 200 dots an inch, by its name. */
  public static Map<String, byte[]> png(Result result, Wording wording) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings(result, wording).forEach((name, d) -> files.put(name, Png.of(d, DOTS_PER_INCH)));
    return files;
  }

  private static Map<String, Drawing> drawings(Result result, Wording wording) {
    AlignmentState state = result.state();
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    for (Side side : state.stands().get(0).trial().side().sides()) {
      for (Plane plane : Plane.values()) {
        if (StripDrawing.isDrawn(state, plane, side)) {
          double height = StripDrawing.mostMm(state, plane, side, wording, WIDTH_MM);
          drawings.put(
              ResultSpellings.side(side) + "-" + ResultSpellings.plane(plane),
              StripDrawing.plan(state, Optional.empty(), plane, side, wording, WIDTH_MM, height));
        }
      }
    }
    return drawings;
  }
}
