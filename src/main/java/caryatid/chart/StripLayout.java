package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.Strip;
import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.StripWindow;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.paint.StripChart;
import java.util.ArrayList;
import java.util.List;

/**
 * Where each strip of a leg goes: how the height of a drawing is shared among heads, zones, gaps.
 */
final class StripLayout {
  /** Height above the first strip, mm. */
  static final double TITLE_MM = 4.6;

  /** Where a strip's head begins, from the left, mm. */
  static final double HEAD_MM = 19;

  /** Width for the words at each end of an axis, mm. */
  static final double ENDS_MM = 13.5;

  private static final double ROUNDING_MM = 1e-6;
  private static final double LEAST_ZONE_MM = 3;
  private static final double MOST_ZONE_MM = 11;
  private static final double LEAST_GAP_MM = 0.6;
  private static final double MOST_GAP_MM = 7;

  /** The zone's share of what a strip may gain in height; the gap gets the rest. */
  private static final double ZONE_SHARE =
      (MOST_ZONE_MM - LEAST_ZONE_MM) / (MOST_ZONE_MM - LEAST_ZONE_MM + MOST_GAP_MM - LEAST_GAP_MM);

  private final List<Strip> strips;
  private final StripWindow window;

  /** The text above each strip in full, and in one line. */
  private final List<List<StripWords.HeadLine>> full;

  private final List<List<StripWords.HeadLine>> brief;

  StripLayout(Leg leg, StripWords words, double widthMm) {
    this.strips = Strip.of(leg);
    this.full = strips.stream().map(words::lines).toList();
    this.brief = strips.stream().map(words::brief).toList();
    double left = HEAD_MM + ENDS_MM;
    List<Double> places = strips.stream().flatMap(s -> s.placesMm().stream()).toList();
    double line = leg.line().map(LoadLine::acrossMm).orElse(places.isEmpty() ? 0 : places.get(0));
    this.window = StripWindow.of(places, line, left, widthMm - left - ENDS_MM);
  }

  List<Strip> strips() {
    return strips;
  }

  StripWindow window() {
    return window;
  }

  /** A strip in its place: the text above it, from where down, and what its chart shows. */
  record StripRow(List<StripWords.HeadLine> head, double topMm, StripPlan plan) {}

  /** The least height that holds all strips, mm. */
  double leastMm() {
    return heightMm(brief, LEAST_ZONE_MM, LEAST_GAP_MM);
  }

  /** The height that gives each strip the most it can use, mm. */
  double mostMm() {
    return heightMm(full, MOST_ZONE_MM, MOST_GAP_MM);
  }

  private double heightMm(List<List<StripWords.HeadLine>> heads, double zoneMm, double gapMm) {
    double words = heads.stream().mapToDouble(StripLayout::headMm).sum();
    return TITLE_MM + words + strips.size() * (zoneMm + gapMm + StripChart.AXIS_MM);
  }

  private static double headMm(List<StripWords.HeadLine> lines) {
    return lines.size() * Lettering.PLAIN.lineMm() + 0.4;
  }

  /** The strips from top to bottom, for a drawing of a height. */
  Stack stack(double heightMm) {
    List<List<StripWords.HeadLine>> heads =
        heightMm + ROUNDING_MM >= heightMm(full, LEAST_ZONE_MM, LEAST_GAP_MM) ? full : brief;
    double least = heightMm(heads, LEAST_ZONE_MM, LEAST_GAP_MM);
    double more = Math.max(0, (heightMm - least) / Math.max(1, strips.size()));
    double zone = Math.min(MOST_ZONE_MM, LEAST_ZONE_MM + ZONE_SHARE * more);
    double gap = Math.min(MOST_GAP_MM, LEAST_GAP_MM + (1 - ZONE_SHARE) * more);
    List<StripRow> rows = new ArrayList<>();
    double down = TITLE_MM;
    for (int i = 0; i < strips.size(); i++) {
      double top = down + gap / 2 + headMm(heads.get(i));
      Box room = new Box(window.leftMm(), top, window.rightMm(), top + zone);
      rows.add(
          new StripRow(heads.get(i), down + gap / 2, StripPlan.of(strips.get(i), window, room)));
      down = top + zone + StripChart.AXIS_MM + gap / 2;
    }
    return new Stack(rows, down);
  }

  /** Strips in their places, and where they end, down, mm. */
  record Stack(List<StripRow> rows, double bottomMm) {}
}
