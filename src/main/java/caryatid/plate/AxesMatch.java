package caryatid.plate;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which directions a plate shows as right and anterior: of the eight ways two axes can be reversed
 * and swapped, the one by which the shown places follow the true ones best.
 *
 * @param swapped whether right is shown as fore and aft
 * @param right sign with which right is shown
 * @param anterior sign with which anterior is shown
 * @param factor how many times as far the plate shows places from each other
 */
record AxesMatch(boolean swapped, int right, int anterior, double factor) {

  static AxesMatch of(List<MarkedWeight> marks) {
    List<AxesMatch> all = new ArrayList<>();
    for (boolean swapped : List.of(false, true)) {
      for (int right : List.of(1, -1)) {
        for (int anterior : List.of(1, -1)) {
          all.add(matched(marks, swapped, right, anterior));
        }
      }
    }
    return all.stream().max(Comparator.comparingDouble(AxesMatch::factor)).orElseThrow();
  }

  /** The factor by least squares; the best match has the largest. */
  private static AxesMatch matched(
      List<MarkedWeight> marks, boolean swapped, int right, int anterior) {
    double meanRight = marks.stream().mapToDouble(MarkedWeight::rightMm).average().orElseThrow();
    double meanAnterior =
        marks.stream().mapToDouble(MarkedWeight::anteriorMm).average().orElseThrow();
    double together = 0;
    double squares = 0;
    for (MarkedWeight mark : marks) {
      double r = mark.rightMm() - meanRight;
      double a = mark.anteriorMm() - meanAnterior;
      double asRight = swapped ? mark.shown().anteriorMm() : mark.shown().rightMm();
      double asAnterior = swapped ? mark.shown().rightMm() : mark.shown().anteriorMm();
      together += right * r * asRight + anterior * a * asAnterior;
      squares += r * r + a * a;
    }
    return new AxesMatch(swapped, right, anterior, together / squares);
  }

  /** Whether the axes are as the description says. */
  boolean isTrue() {
    return !swapped && right > 0 && anterior > 0;
  }

  /** The axes by which the plate would show the marks where they are. */
  Axes corrected(Axes described) {
    Direction shownRight = swapped ? described.anterior() : described.right();
    Direction shownAnterior = swapped ? described.right() : described.anterior();
    return new Axes(signed(shownRight, right), signed(shownAnterior, anterior), described.up());
  }

  private static Direction signed(Direction direction, int sign) {
    for (Direction other : Direction.values()) {
      if (other.axis() == direction.axis() && other.sign() == sign * direction.sign()) {
        return other;
      }
    }
    throw new IllegalArgumentException("no direction " + sign + " of " + direction);
  }
}
