package caryatid.chart.leg;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.UnjudgedTarget;
import caryatid.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a drawing of one leg in one plane shows, with positions across the view.
 *
 * @param view from where
 * @param levels the landmarks marked in the plane, from the top
 * @param line the load line; empty when none is known for the leg
 * @param beforeMm where the load line ran in the state before, measured from the lowest landmark
 *     that both states share, across, mm
 */
public record Leg(
    LegView view, List<Level> levels, Optional<LoadLine> line, OptionalDouble beforeMm) {

  /**
   * A landmark and what was found there.
   *
   * @param acrossMm where it lies across the view, mm
   * @param halfMm half-width of its own 95 % interval, mm
   * @param beforeMm the same load line's offset in the state before, mm
   * @param findings one for each target that could be compared, the first one first
   * @param withheld targets without a finding
   */
  public record Level(
      Landmark landmark,
      double acrossMm,
      double halfMm,
      Optional<Offset> offset,
      OptionalDouble beforeMm,
      List<Finding> findings,
      List<Target> withheld) {
    public Level {
      findings = List.copyOf(findings);
      withheld = List.copyOf(withheld);
    }

    /** The first of the findings. */
    public Optional<Finding> finding() {
      return findings.stream().findFirst();
    }

    public double heightMm() {
      return landmark.heightMm();
    }
  }

  public Leg {
    levels = List.copyOf(levels);
  }

  /**
   * @param before the state before, to be compared
   */
  public static Leg of(AlignmentState state, Optional<EarlierState> before, LegView view) {
    Stand stand = state.stands().get(0);
    List<Level> levels =
        stand.landmarks().stream()
            .filter(l -> l.side() == view.side() && l.in(view.plane()).isPresent())
            .map(l -> level(l, state, before, view))
            .sorted(Comparator.comparingDouble(Level::heightMm).reversed())
            .toList();
    return new Leg(view, levels, LoadLine.of(state, view), beforeMm(levels, view));
  }

  private static OptionalDouble beforeMm(List<Level> levels, LegView view) {
    return levels.stream()
        .filter(level -> level.beforeMm().isPresent())
        .reduce((higher, lower) -> lower)
        .map(l -> l.acrossMm() + view.sign() * l.beforeMm().orElseThrow())
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private static Level level(
      Landmark landmark, AlignmentState state, Optional<EarlierState> before, LegView view) {
    Coordinate at = landmark.in(view.plane()).orElseThrow();
    LandmarkInPlane seen = landmark.at(view.plane());
    List<Finding> findings =
        state.findings().stream().filter(f -> f.offset().at().equals(seen)).toList();
    List<Target> withheld =
        state.withheld().stream()
            .map(UnjudgedTarget::target)
            .filter(t -> t.at().equals(seen))
            .toList();
    Optional<Offset> offset =
        findings.stream().map(Finding::offset).findFirst().or(() -> offset(seen, state));
    return new Level(
        landmark,
        view.across(at.mm()),
        new Estimate(at.mm(), at.doubts()).expanded(Estimate.COVERAGE),
        offset,
        offset.isPresent() && before.isPresent()
            ? before.get().meanMm(seen, offset.get().of())
            : OptionalDouble.empty(),
        findings,
        withheld);
  }

  private static Optional<Offset> offset(LandmarkInPlane at, AlignmentState state) {
    return state.offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> o.kind() == LoadLineMethod.VERTICAL && o.at().equals(at))
        .findFirst();
  }

  public Optional<Level> at(LandmarkKind kind) {
    return levels.stream().filter(l -> l.landmark().kind() == kind).findFirst();
  }
}
