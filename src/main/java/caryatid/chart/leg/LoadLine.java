package caryatid.chart.leg;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Plane;
import caryatid.loadline.LoadLineMethod;
import caryatid.standing.ForceInclination;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Estimate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A load line across a view.
 *
 * @param of whose it is
 * @param acrossMm where it meets the plate, mean of the state's stands, mm
 * @param halfMm half-width of its 95 % interval, mm
 * @param leanPerUp how far the measured force runs across for each unit of height; empty without
 *     horizontal force
 */
public record LoadLine(LoadLineOwner of, double acrossMm, double halfMm, OptionalDouble leanPerUp) {
  /** What makes a landmark doubtful, not the line. */
  private static final Set<Cause> OF_LANDMARKS = EnumSet.of(Cause.MARKING, Cause.LANDMARK_MOVEMENT);

  public static Optional<LoadLine> of(AlignmentState state, LegView view) {
    List<MeanLoad> loads =
        state.stands().stream()
            .flatMap(stand -> load(stand, view).stream())
            .filter(load -> load.copMm(view.plane()).isPresent())
            .toList();
    if (loads.isEmpty()) {
      return Optional.empty();
    }
    List<Double> across = loads.stream().map(load -> view.across(cop(load, view).value())).toList();
    return Optional.of(
        new LoadLine(
            loads.get(0).of(), mean(across), halfMm(state, loads, view), lean(loads, view)));
  }

  /** The leg's own line, or the whole body's where only that is known. */
  private static Optional<MeanLoad> load(Stand stand, LegView view) {
    return stand
        .standing()
        .load(LoadLineOwner.foot(view.side()))
        .or(() -> stand.standing().load(LoadLineOwner.WHOLE_BODY));
  }

  private static Estimate cop(MeanLoad load, LegView view) {
    return load.copMm(view.plane()).orElseThrow();
  }

  /** Of one stand its own; of several what the state says without the landmark's part. */
  private static double halfMm(AlignmentState state, List<MeanLoad> loads, LegView view) {
    return state.offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> loads.size() > 1 && o.plane() == view.plane() && o.side() == view.side())
        .filter(o -> o.kind() == LoadLineMethod.VERTICAL)
        .findFirst()
        .map(offset -> withoutLandmark(offset.mm()))
        .orElse(cop(loads.get(0), view))
        .expanded(Estimate.COVERAGE);
  }

  private static Estimate withoutLandmark(Estimate offset) {
    return new Estimate(
        offset.value(),
        offset.contributions().stream()
            .filter(c -> !OF_LANDMARKS.contains(c.source().cause()))
            .toList());
  }

  private static OptionalDouble lean(List<MeanLoad> loads, LegView view) {
    List<Double> leans =
        loads.stream().flatMap(load -> load.lean().stream()).map(l -> across(l, view)).toList();
    return leans.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(mean(leans));
  }

  private static double across(ForceInclination lean, LegView view) {
    Estimate perUp = view.plane() == Plane.SAGITTAL ? lean.anteriorPerUp() : lean.rightPerUp();
    return view.across(perUp.value());
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
