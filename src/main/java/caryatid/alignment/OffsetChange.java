package caryatid.alignment;

import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * How an offset changed from one state to another that was measured on the same plate in the same
 * shoe. What is wrong in the same way in both cancels: always the plate, its level and the
 * measuring lines; the mark, where it stayed on the component; the wearer's turn, where the feet
 * stood in their outlines. The moment at which a landmark was read is another one each time.
 *
 * @param at the landmark, and the plane it is seen in
 * @param of whose load line, drawn vertically
 * @param beforeMm the offset in the earlier state, mm
 * @param afterMm the offset in the later state, mm
 * @param stayed the change where marks stayed and the feet stood in their outlines, mm
 * @param anew the change where the landmarks were marked anew and the feet put down anew, mm
 * @param eachOfSo how many stands of both states count as one stand's share of the scatter: 1 over
 *     the sum of the reciprocals of their numbers of stands
 */
public record OffsetChange(
    LandmarkInPlane at,
    LoadLineOwner of,
    double beforeMm,
    double afterMm,
    Estimate stayed,
    Estimate anew,
    double eachOfSo) {
  /** Nobody is asked for more stands of a state. */
  private static final int MOST_STANDS = 9;

  private static final String EARLIER = "before ";

  /**
   * The changes of all vertical load lines that ran past the same landmark in both states, as far
   * as both results state the scatter between stands.
   *
   * @param before the earlier state
   * @param after the later state; its scatter between stands is the one that is known best, where
   *     it was found with the earlier state
   */
  public static List<OffsetChange> between(AlignmentState before, AlignmentState after) {
    List<OffsetChange> changes = new ArrayList<>();
    for (StateOffset later : after.offsets()) {
      Offset now = later.offset();
      if (now.kind() == LoadLineMethod.VERTICAL) {
        before.offsets().stream()
            .map(StateOffset::offset)
            .filter(then -> now.isSameAs(then) && hasScatter(then) && hasScatter(now))
            .findFirst()
            .ifPresent(
                then -> changes.add(of(then, now, before.stands().size(), after.stands().size())));
      }
    }
    return List.copyOf(changes);
  }

  /**
   * The changes of a state that was set back afterwards, against the mean of the states before and
   * after it: what drifts evenly from state to state cancels. {@link #beforeMm} is that mean.
   *
   * @param first the setting before
   * @param changed the state that is judged
   * @param again the first setting once more
   */
  public static List<OffsetChange> againstBoth(
      AlignmentState first, AlignmentState changed, AlignmentState again) {
    List<OffsetChange> changes = new ArrayList<>();
    for (OffsetChange there : between(first, changed)) {
      between(again, changed).stream()
          .filter(back -> back.at.equals(there.at) && back.of == there.of)
          .findFirst()
          .ifPresent(back -> changes.add(mean(there, back, changed.stands().size())));
    }
    return List.copyOf(changes);
  }

  /** The mean of the change there and the change back, which share the state between. */
  private static OffsetChange mean(OffsetChange there, OffsetChange back, int stands) {
    double others = 1 / there.eachOfSo + 1 / back.eachOfSo - 2.0 / stands;
    double eachOfSo = 1 / (1.0 / stands + others / 4);
    OffsetChange known = back.degrees() > there.degrees() ? back : there;
    double oneStand = known.scatter().amount() * Math.sqrt(known.eachOfSo);
    Contribution scatter =
        new Contribution(
            known.scatter().source(), oneStand / Math.sqrt(eachOfSo), 1, known.degrees());
    return new OffsetChange(
        there.at,
        there.of,
        (there.beforeMm + back.beforeMm) / 2,
        there.afterMm,
        half(there.stayed, back.stayed).with(scatter),
        half(there.anew, back.anew).with(scatter),
        eachOfSo);
  }

  /** Half of both without their scatter; the readings of the two outer states are others. */
  private static Estimate half(Estimate there, Estimate back) {
    List<Contribution> parts = new ArrayList<>();
    for (Contribution c : there.contributions()) {
      if (c.source().cause() != Cause.REPEATABILITY) {
        parts.add(c);
      }
    }
    for (Contribution c : back.contributions()) {
      if (c.source().cause() != Cause.REPEATABILITY) {
        String of = c.source().of();
        parts.add(
            of.startsWith(EARLIER)
                ? new Contribution(
                    new Source(c.source().cause(), "again " + of),
                    c.standardUncertainty(),
                    c.sensitivity(),
                    c.degreesOfFreedom())
                : c);
      }
    }
    Estimate outer = new Estimate(0, List.of());
    for (Contribution c : parts) {
      outer = outer.plus(0.5, new Estimate(0, List.of(c)));
    }
    return new Estimate((there.value() + back.value()) / 2, outer.contributions());
  }

  private Contribution scatter() {
    return stayed.contributions().stream()
        .filter(c -> c.source().cause() == Cause.REPEATABILITY)
        .findFirst()
        .orElseThrow();
  }

  private double degrees() {
    return scatter().degreesOfFreedom();
  }

  private static OffsetChange of(Offset then, Offset now, int standsThen, int standsNow) {
    double eachOfSo = 1 / (1.0 / standsThen + 1.0 / standsNow);
    Contribution scatter = scatter(then, standsThen, now, standsNow, eachOfSo);
    return new OffsetChange(
        now.at(),
        now.of(),
        then.mm().value(),
        now.mm().value(),
        change(then, now, EnumSet.of(Cause.LANDMARK_MOVEMENT)).with(scatter),
        change(then, now, EnumSet.of(Cause.LANDMARK_MOVEMENT, Cause.MARKING, Cause.YAW))
            .with(scatter),
        eachOfSo);
  }

  private static Estimate change(Offset then, Offset now, Set<Cause> counted) {
    List<Contribution> parts = new ArrayList<>();
    parts(now, counted, "after ").forEach(parts::add);
    parts(then, counted, EARLIER).forEach(parts::add);
    return new Estimate(now.mm().value() - then.mm().value(), parts);
  }

  private static List<Contribution> parts(Offset offset, Set<Cause> counted, String which) {
    return offset.mm().contributions().stream()
        .filter(c -> counted.contains(c.source().cause()))
        .map(
            c ->
                new Contribution(
                    new Source(c.source().cause(), which + c.source().of()),
                    c.standardUncertainty(),
                    c.sensitivity(),
                    c.degreesOfFreedom()))
        .toList();
  }

  /** One wearer's scatter in both, as the state knows it that knows it better. */
  private static Contribution scatter(
      Offset then, int standsThen, Offset now, int standsNow, double eachOfSo) {
    Contribution earlier = scatter(then);
    Contribution later = scatter(now);
    boolean laterKnows = later.degreesOfFreedom() >= earlier.degreesOfFreedom();
    Contribution known = laterKnows ? later : earlier;
    double oneStand = known.amount() * Math.sqrt(laterKnows ? standsNow : standsThen);
    return new Contribution(
        known.source(), Math.abs(oneStand) / Math.sqrt(eachOfSo), 1, known.degreesOfFreedom());
  }

  private static boolean hasScatter(Offset offset) {
    return offset.mm().contributions().stream()
        .anyMatch(c -> c.source().cause() == Cause.REPEATABILITY);
  }

  private static Contribution scatter(Offset offset) {
    return offset.mm().contributions().stream()
        .filter(c -> c.source().cause() == Cause.REPEATABILITY)
        .findFirst()
        .orElseThrow();
  }

  /** Whether a change is not put down to chance, at 95 %: one of the two of this. */
  public static boolean isReal(Estimate change) {
    return Math.abs(change.value()) > change.expanded(Estimate.COVERAGE);
  }

  /**
   * How many stands of each state would show a change of a size, marks and outlines staying.
   *
   * @param mm the size, mm, above 0
   * @return at most 9; empty where more would be needed
   */
  public OptionalInt standsToShow(double mm) {
    for (int stands = 1; stands <= MOST_STANDS; stands++) {
      if (withStands(stands).expanded(Estimate.COVERAGE) <= mm) {
        return OptionalInt.of(stands);
      }
    }
    return OptionalInt.empty();
  }

  private Estimate withStands(int stands) {
    double factor = Math.sqrt(eachOfSo / (stands / 2.0));
    List<Contribution> parts =
        stayed.contributions().stream()
            .map(
                c ->
                    c.source().cause() == Cause.REPEATABILITY
                        ? new Contribution(
                            c.source(),
                            factor * c.standardUncertainty(),
                            c.sensitivity(),
                            c.degreesOfFreedom())
                        : c)
            .toList();
    return new Estimate(stayed.value(), parts);
  }
}
