package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Plane;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LineKind;
import caryatid.loadline.Offset;
import caryatid.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a drawing of one leg in one plane shows, across the view.
 *
 * @param view from where
 * @param levels the landmarks marked in the plane, from the top
 * @param line the load line; empty when none is known for the leg
 * @param beforeMm where the load line ran in the state before, measured from the lowest landmark
 *     that both states share, across, mm
 */
record Leg(View view, List<Level> levels, Optional<LoadLine> line, OptionalDouble beforeMm) {

  /** Coverage of every interval drawn. */
  static final double COVERAGE = 0.95;

  /**
   * A landmark and what was found there.
   *
   * @param acrossMm where it lies across the view, mm
   * @param halfMm half-width of its own 95 % interval, mm
   * @param before its offset in the state before
   */
  record Level(
      Landmark landmark,
      double acrossMm,
      double halfMm,
      Optional<Offset> offset,
      Optional<Offset> before,
      Optional<Finding> finding) {

    double heightMm() {
      return landmark.heightMm();
    }
  }

  Leg {
    levels = List.copyOf(levels);
  }

  /**
   * @param before the state before, to be compared
   */
  static Leg of(AlignmentState state, Optional<AlignmentState> before, View view) {
    Stand stand = state.stands().get(0);
    List<Level> levels =
        stand.landmarks().stream()
            .filter(l -> l.side() == view.side() && l.in(view.plane()).isPresent())
            .map(l -> level(l, state, before, view))
            .sorted(Comparator.comparingDouble(Level::heightMm).reversed())
            .toList();
    return new Leg(view, levels, LoadLine.of(state, view), beforeMm(levels, view));
  }

  private static OptionalDouble beforeMm(List<Level> levels, View view) {
    return levels.stream()
        .filter(level -> level.before().isPresent())
        .reduce((higher, lower) -> lower)
        .map(l -> l.acrossMm() + view.sign() * l.before().orElseThrow().mm().value())
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private static Level level(
      Landmark landmark, AlignmentState state, Optional<AlignmentState> before, View view) {
    Coordinate at = landmark.in(view.plane()).orElseThrow();
    Optional<Finding> finding =
        state.findings().stream().filter(f -> isAt(f.offset(), landmark, view.plane())).findFirst();
    return new Level(
        landmark,
        view.across(at.mm()),
        new Estimate(at.mm(), at.doubts()).expanded(COVERAGE),
        finding.map(Finding::offset).or(() -> offset(landmark, state, view.plane())),
        before.flatMap(earlier -> offset(landmark, earlier, view.plane())),
        finding);
  }

  private static Optional<Offset> offset(Landmark landmark, AlignmentState state, Plane plane) {
    return state.offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> o.kind() == LineKind.VERTICAL && isAt(o, landmark, plane))
        .findFirst();
  }

  private static boolean isAt(Offset offset, Landmark landmark, Plane plane) {
    return offset.plane() == plane
        && offset.side() == landmark.side()
        && offset.landmark().equals(landmark.name());
  }

  Optional<Level> at(LandmarkKind kind) {
    return levels.stream().filter(l -> l.landmark().kind() == kind).findFirst();
  }
}
