package caryatid.format;

import caryatid.standing.PercentileRank;
import caryatid.standing.Sway;
import java.io.IOException;

/** Measures of sway and their percentile ranks in JSON. */
final class SwayForm {
  private SwayForm() {}

  static void write(Sway sway, JsonObjectWriter out) throws IOException {
    out.word("of", FindingSpellings.LINE_OF, sway.of())
        .number("low-pass-hz", sway.lowPassHz())
        .number("sd-right-mm", sway.sdRightMm())
        .number("sd-anterior-mm", sway.sdAnteriorMm())
        .number("range-right-mm", sway.rangeRightMm())
        .number("range-anterior-mm", sway.rangeAnteriorMm())
        .number("path-mm", sway.pathMm())
        .number("mean-speed-mm-per-s", sway.meanSpeedMmPerS())
        .number("ellipse-mm2", sway.ellipseMm2())
        .number("covariance-mm2", sway.covarianceMm2())
        .number("mean-frequency-hz", sway.meanFrequencyHz())
        .number("effective-right", sway.effectiveRight())
        .number("effective-anterior", sway.effectiveAnterior());
  }

  static Sway read(JsonObjectReader in) {
    return new Sway(
        in.word("of", FindingSpellings.LINE_OF),
        in.numberIfThere("low-pass-hz"),
        in.number("sd-right-mm"),
        in.number("sd-anterior-mm"),
        in.number("range-right-mm"),
        in.number("range-anterior-mm"),
        in.number("path-mm"),
        in.number("mean-speed-mm-per-s"),
        in.number("ellipse-mm2"),
        in.number("covariance-mm2"),
        in.number("mean-frequency-hz"),
        in.number("effective-right"),
        in.number("effective-anterior"));
  }

  static void writePlacement(PercentileRank placement, JsonObjectWriter out) throws IOException {
    out.word("measure", FindingSpellings.MEASURE, placement.measure())
        .number("value", placement.value())
        .whole("from-percent", placement.fromPercent())
        .whole("to-percent", placement.toPercent());
  }

  static PercentileRank readPlacement(JsonObjectReader in) {
    return new PercentileRank(
        in.word("measure", FindingSpellings.MEASURE),
        in.number("value"),
        in.whole("from-percent"),
        in.whole("to-percent"));
  }
}
