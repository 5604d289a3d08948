package caryatid.loadline;

import caryatid.uncertainty.Contribution;
import java.util.List;

/**
 * One coordinate of a landmark in the person's frame.
 *
 * @param mm how far along the axis, mm
 * @param doubts marking of this landmark, registration of the line it was measured from, and those
 *     of the landmark it is relative to
 */
public record Coordinate(double mm, List<Contribution> doubts) {
  /**
   * @throws IllegalArgumentException if it is not finite
   */
  public Coordinate {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("coordinate: " + mm);
    }
    doubts = List.copyOf(doubts);
  }
}
