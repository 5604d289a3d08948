package caryatid.chart.leg;

import caryatid.chart.leg.Leg.Level;
import caryatid.loadline.Finding;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One landmark, or one target of it, on the horizontal line of its height: where its zero lies, the
 * load line's offset from it and what is recommended. Across is to the viewer's right, mm.
 *
 * @param level the landmark
 * @param zeroMm where the scale's zero lies, across, mm
 * @param sign +1 where positive offsets lie to the viewer's right, else -1
 * @param offset the load line's, with its uncertainty; empty where none is known
 * @param target what is recommended; empty where nothing was entered
 * @param finding the offset against the target
 * @param beforeMm the offset in the state before, mm
 */
public record Strip(
    Level level,
    double zeroMm,
    int sign,
    Optional<Offset> offset,
    Optional<Target> target,
    Optional<Finding> finding,
    OptionalDouble beforeMm) {

  /** The strips of a leg, from the top: one for each target, and for each landmark without one. */
  public static List<Strip> of(Leg leg) {
    List<Strip> strips = new ArrayList<>();
    for (Level level : leg.levels()) {
      level.findings().forEach(f -> strips.add(of(leg, level, Optional.of(f), f.target())));
      level.withheld().forEach(target -> strips.add(of(leg, level, Optional.empty(), target)));
      if (level.findings().isEmpty() && level.withheld().isEmpty()) {
        strips.add(strip(leg, level, level.offset(), Optional.empty(), Optional.empty()));
      }
    }
    return strips;
  }

  private static Strip of(Leg leg, Level level, Optional<Finding> finding, Target target) {
    return strip(leg, level, finding.map(Finding::offset), Optional.of(target), finding);
  }

  private static Strip strip(
      Leg leg,
      Level level,
      Optional<Offset> offset,
      Optional<Target> target,
      Optional<Finding> finding) {
    int sign = leg.view().sign();
    double zero =
        offset
            .filter(o -> leg.line().filter(line -> line.of() == o.of()).isPresent())
            .map(o -> leg.line().orElseThrow().acrossMm() - sign * o.mm().value())
            .orElse(level.acrossMm());
    boolean same = offset.map(Offset::of).equals(level.offset().map(Offset::of));
    OptionalDouble before = same ? level.beforeMm() : OptionalDouble.empty();
    return new Strip(level, zero, sign, offset, target, finding, before);
  }

  /** Where an offset lies across the view, mm. */
  double acrossMm(double offsetMm) {
    return zeroMm + sign * offsetMm;
  }

  /** Half-width of the offset's 95 % interval, mm; 0 where there is no offset. */
  double halfMm() {
    return offset.map(o -> o.mm().expanded(Estimate.COVERAGE)).orElse(0.0);
  }

  /** Where the load line runs across the view, mm. */
  public OptionalDouble lineMm() {
    return offset
        .map(o -> OptionalDouble.of(acrossMm(o.mm().value())))
        .orElse(OptionalDouble.empty());
  }

  /** Everything that should be seen, across, mm. */
  public List<Double> placesMm() {
    List<Double> places = new ArrayList<>(List.of(zeroMm));
    lineMm()
        .ifPresent(
            line -> {
              places.add(line - halfMm());
              places.add(line + halfMm());
            });
    target.ifPresent(
        t -> {
          places.add(acrossMm(t.lowestMm()));
          places.add(acrossMm(t.highestMm()));
        });
    beforeMm.ifPresent(mm -> places.add(acrossMm(mm)));
    return places;
  }
}
