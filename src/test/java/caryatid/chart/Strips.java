package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.chart.mark.Drawing;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.wording.Wording;
import java.util.Optional;

/** Strips as a report plans them. */
public final class Strips {
  /** Width of A4 paper between a report's margins, mm. */
  public static final double WIDTH_MM = 186;

  private Strips() {}

  private static EarlierState inShort(AlignmentState state) {
    return EarlierState.of(state, "0".repeat(128));
  }

  /**
   * @param share of the way from the least height to the largest, 0 to 1
   */
  public static Drawing plan(
      AlignmentState state,
      Optional<AlignmentState> before,
      Plane plane,
      Side side,
      Wording wording,
      double share) {
    double least = StripDrawing.leastMm(state, plane, side, wording, WIDTH_MM);
    double most = StripDrawing.mostMm(state, plane, side, wording, WIDTH_MM);
    double height = least + share * (most - least);
    return StripDrawing.plan(
        state, before.map(Strips::inShort), plane, side, wording, WIDTH_MM, height);
  }
}
