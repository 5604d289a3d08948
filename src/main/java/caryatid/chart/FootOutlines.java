package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.geometry.Side;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Outlines of the feet from above, where the sheet says enough to place them: an ankle axis marked
 * in both planes, the toe-out, and for the other foot the stance width. Here "height" is anterior.
 */
final class FootOutlines {
  /** Length and breadth of a usual foot: our own choice, for looks. */
  private static final double LENGTH_MM = 265;

  private static final double BREADTH_MM = 95;
  private static final double HEEL_TO_ANKLE = 0.26;

  /**
   * From heel to toe and back, right foot: across and forward as fractions of breadth and length.
   */
  private static final double[][] SHAPE = {
    {0, 0},
    {0.24, 0.02},
    {0.33, 0.13},
    {0.30, 0.40},
    {0.47, 0.68},
    {0.42, 0.84},
    {0.10, 0.98},
    {-0.20, 1.0},
    {-0.42, 0.90},
    {-0.48, 0.72},
    {-0.30, 0.40},
    {-0.33, 0.13},
    {-0.24, 0.02}
  };

  private FootOutlines() {}

  /** The outlines that can be placed. */
  static List<List<PersonPoint>> of(Stand stand) {
    List<List<PersonPoint>> outlines = new ArrayList<>();
    double toeOut = stand.trial().toeOutRad().orElse(0);
    for (Side side : stand.trial().side().sides()) {
      Optional<PersonPoint> ankle = ankle(stand, side);
      ankle.ifPresent(at -> outlines.add(outline(at, side, toeOut)));
      if (ankle.isPresent() && ankle(stand, side.other()).isEmpty()) {
        stand
            .trial()
            .stanceWidthMm()
            .ifPresent(
                width ->
                    outlines.add(outline(beside(ankle.get(), side, width), side.other(), toeOut)));
      }
    }
    return outlines;
  }

  private static Optional<PersonPoint> ankle(Stand stand, Side side) {
    return stand.landmarks().stream()
        .filter(l -> l.kind() == LandmarkKind.ANKLE_AXIS && l.side() == side)
        .filter(l -> l.rightMm().isPresent() && l.anteriorMm().isPresent())
        .map(FootOutlines::place)
        .findFirst();
  }

  private static PersonPoint place(Landmark ankle) {
    return new PersonPoint(
        ankle.rightMm().orElseThrow().mm(), ankle.anteriorMm().orElseThrow().mm());
  }

  private static PersonPoint beside(PersonPoint ankle, Side side, double widthMm) {
    return new PersonPoint(ankle.acrossMm() - side.lateral() * widthMm, ankle.heightMm());
  }

  private static List<PersonPoint> outline(PersonPoint ankle, Side side, double toeOutRad) {
    double turn = toeOutRad * side.lateral();
    List<PersonPoint> outline = new ArrayList<>();
    for (double[] fraction : SHAPE) {
      double across = side.lateral() * fraction[0] * BREADTH_MM;
      double forward = (fraction[1] - HEEL_TO_ANKLE) * LENGTH_MM;
      outline.add(
          new PersonPoint(
              ankle.acrossMm() + across * StrictMath.cos(turn) + forward * StrictMath.sin(turn),
              ankle.heightMm() + forward * StrictMath.cos(turn) - across * StrictMath.sin(turn)));
    }
    return LimbOutline.rounded(outline);
  }
}
