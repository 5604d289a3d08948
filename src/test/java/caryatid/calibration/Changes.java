package caryatid.calibration;

import static caryatid.calibration.Table.number;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.OffsetChange;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Plane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.samples.Noise;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Changes between states of which none is a real one, fore and aft: how often one is called real
 * though, and how large a change would have to be.
 *
 * @param clinic the clinic; three states
 * @param pairs the change from the first state to the second, marks staying
 * @param thirds the second against the mean of the first and the third
 * @param before the smallest difference of the first state by the method before, mm
 */
record Changes(Clinic clinic, List<Estimate> pairs, List<Estimate> thirds, List<Double> before) {
  private static final Set<Cause> CANCELLED =
      EnumSet.of(Cause.PLATE_ACCURACY, Cause.LEVEL, Cause.REGISTRATION, Cause.REPEATABILITY);

  /** Runs them; the same seed gives the same counts. */
  static Changes of(Family family, Clinic clinic, int runs, long seed) {
    List<Estimate> pairs = new ArrayList<>();
    List<Estimate> thirds = new ArrayList<>();
    List<Double> before = new ArrayList<>();
    IntStream.range(0, runs)
        .parallel()
        .mapToObj(i -> Fitting.states(family, clinic, new Noise(seed + i)))
        .filter(states -> states.size() == 3)
        .toList()
        .forEach(
            s -> {
              pairs.add(sagittal(OffsetChange.between(s.get(0), s.get(1))));
              thirds.add(sagittal(OffsetChange.againstBoth(s.get(0), s.get(1), s.get(2))));
              before.add(methodBefore(s.get(0)));
            });
    return new Changes(clinic, pairs, thirds, before);
  }

  private static Estimate sagittal(List<OffsetChange> changes) {
    return changes.stream()
        .filter(c -> c.at().plane() == Plane.SAGITTAL && c.of() == LoadLineOwner.RIGHT_FOOT)
        .findFirst()
        .orElseThrow()
        .stayed();
  }

  /** The stands' own spread alone, weighed by shares, the marks made anew. */
  private static double methodBefore(AlignmentState state) {
    Offset offset =
        state.offsets().stream()
            .map(StateOffset::offset)
            .filter(Changes::isMeant)
            .findFirst()
            .orElseThrow();
    double[] each =
        state.stands().stream()
            .flatMap(stand -> stand.offsets().stream())
            .filter(offset::isSameAs)
            .mapToDouble(o -> o.mm().value())
            .toArray();
    double spread = Math.sqrt(SampleStatistics.covariance(each, each));
    List<Contribution> parts =
        new ArrayList<>(
            offset.mm().contributions().stream()
                .filter(c -> !CANCELLED.contains(c.source().cause()))
                .toList());
    parts.add(
        new Contribution(
            new Source(Cause.REPEATABILITY, ""),
            spread / Math.sqrt(each.length),
            1,
            each.length - 1));
    return Math.sqrt(2) * new Estimate(0, parts).expandedByShares(Estimate.COVERAGE);
  }

  private static boolean isMeant(Offset offset) {
    return offset.plane() == Plane.SAGITTAL
        && offset.of() == LoadLineOwner.RIGHT_FOOT
        && offset.kind() == LoadLineMethod.VERTICAL;
  }

  /**
   * A row.
   *
   * @param driftMm by how much each state lies further forward than the one before
   */
  String[] cells(double driftMm) {
    return new String[] {
      clinic.title(),
      number(driftMm, 0) + " mm",
      number(pairs.size(), 0),
      number(before.stream().mapToDouble(mm -> mm).average().orElse(0), 1),
      number(halfWidth(pairs), 1),
      number(realPercent(pairs, driftMm), 1),
      number(halfWidth(thirds), 1),
      number(realPercent(thirds, 0), 1)
    };
  }

  private static double halfWidth(List<Estimate> changes) {
    return changes.stream().mapToDouble(c -> c.expanded(0.95)).average().orElse(0);
  }

  private static double realPercent(List<Estimate> changes, double plusMm) {
    return 100.0
        * changes.stream()
            .filter(c -> Math.abs(c.value() + plusMm) > c.expanded(Estimate.COVERAGE))
            .count()
        / changes.size();
  }
}
