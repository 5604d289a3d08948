package caryatid.plate;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.PlateAccuracy;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What weights on marked places and a person who moved as asked show of a description: what is
 * wrong with it, or how well the plate's numbers are known under it.
 */
public final class PlateTrial {
  /** Fewer leave nothing over from a fit of six numbers to two directions each. */
  public static final int FEWEST_MARKS = 4;

  /** Marks nearer to each other say little of the plate (common practice, no source). */
  private static final double LEAST_EXTENT_MM = 100;

  /** Marks nearer to one line, as {@link AffineFit#spread}, do not tell turn from scale. */
  private static final double LEAST_SPREAD = 0.1;

  /** Below, as {@link AffineFit#independence}, a direction is dead (common practice, no source). */
  private static final double LEAST_INDEPENDENCE = 0.5;

  /** A plate that is further off than so is of no use for a load line (common practice). */
  private static final double MOST_OFF_MM = 20;

  /** A digital level is read to 0.1 deg: a rectangular distribution (JCGM 100:2008, F.2.2.1). */
  private static final double LEVEL_READING_RAD = Math.toRadians(0.1) / Math.sqrt(12);

  private final List<MarkedWeight> marks;
  private final PersonMoves person;
  private final ProofDoubts doubts;
  private final Axes described;
  private final Place place;

  /**
   * @param described the description's axes
   * @param place the file that says what was done, for problems
   */
  public PlateTrial(
      List<MarkedWeight> marks,
      PersonMoves person,
      ProofDoubts doubts,
      Axes described,
      Place place) {
    this.marks = List.copyOf(marks);
    this.person = person;
    this.doubts = doubts;
    this.described = described;
    this.place = place;
  }

  /**
   * What was found.
   *
   * @param faults what is wrong with the description or the proof; the rest means nothing then
   * @param plates what was measured of each plate
   * @param accuracy how well the plates' numbers are known; the plate that is worst counts for all
   * @param forceFraction the shown force over the true one, less 1, in the mean; empty without
   *     forces
   */
  public record ProofOutcome(
      List<Problem> faults,
      List<MeasuredPlate> plates,
      PlateAccuracy accuracy,
      OptionalDouble forceFraction) {
    public ProofOutcome {
      faults = List.copyOf(faults);
      plates = List.copyOf(plates);
    }
  }

  /** What they show. */
  public ProofOutcome outcome() {
    List<Problem> faults = new ArrayList<>();
    Map<String, List<MarkedWeight>> byPlate = byPlate(faults);
    Stream.of(person.standing(), person.forward(), person.oneFoot())
        .flatMap(load -> load.plates().stream())
        .forEach(plate -> byPlate.putIfAbsent(plate, List.of()));
    byPlate.forEach((plate, its) -> faults.addAll(faults(plate, its)));
    faults.addAll(PersonMovesCheck.faults(person, place));
    if (!faults.isEmpty() || byPlate.isEmpty()) {
      return new ProofOutcome(faults, List.of(), PlateAccuracy.ASSUMED, OptionalDouble.empty());
    }
    List<MeasuredPlate> plates = new ArrayList<>();
    byPlate.forEach((plate, its) -> plates.add(new WeightBudget(its, doubts).measured(plate)));
    List<Double> forces = WeightBudget.forceErrors(marks);
    return new ProofOutcome(
        faults,
        plates,
        accuracy(plates, forces),
        forces.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(forces.stream().mapToDouble(f -> f).average().orElseThrow()));
  }

  private Map<String, List<MarkedWeight>> byPlate(List<Problem> faults) {
    Map<String, List<MarkedWeight>> byPlate = new LinkedHashMap<>();
    for (MarkedWeight mark : marks) {
      List<String> bearing = mark.shown().plates();
      if (bearing.size() == 1) {
        byPlate.computeIfAbsent(bearing.get(0), name -> new ArrayList<>()).add(mark);
      } else {
        faults.add(
            Problem.at(
                place,
                PlateFault.TWO_PLATES,
                Argument.of(mark.rightMm(), Unit.MM),
                Argument.of(mark.anteriorMm(), Unit.MM)));
      }
    }
    return byPlate;
  }

  private List<Problem> faults(String plate, List<MarkedWeight> its) {
    Argument name = Argument.text(plate);
    if (its.size() < FEWEST_MARKS) {
      return List.of(
          Problem.at(
              place,
              PlateFault.FEW_MARKS,
              name,
              Argument.count(its.size()),
              Argument.count(FEWEST_MARKS)));
    }
    if (AffineFit.extentMm(its) < LEAST_EXTENT_MM || AffineFit.spread(its) < LEAST_SPREAD) {
      return List.of(Problem.at(place, PlateFault.MARKS_TOO_CLOSE, name));
    }
    if (new AffineFit(its).independence() < LEAST_INDEPENDENCE) {
      return List.of(Problem.at(place, PlateFault.ONE_DIRECTION, name));
    }
    List<Problem> faults = shownElsewhere(name, its);
    faults.addAll(forceFaults(name, WeightBudget.forceErrors(its)));
    double offMm = WeightBudget.deviationMm(its);
    if (faults.isEmpty() && !(offMm <= MOST_OFF_MM)) {
      faults.add(
          Problem.at(
              place,
              PlateFault.PLACES_OFF,
              name,
              Argument.of(offMm, Unit.MM),
              Argument.of(MOST_OFF_MM, Unit.MM)));
    }
    return faults;
  }

  private List<Problem> shownElsewhere(Argument name, List<MarkedWeight> its) {
    List<Problem> faults = new ArrayList<>();
    AxesMatch axes = AxesMatch.of(its);
    if (!axes.isTrue()) {
      String right = words(axes.corrected(described));
      faults.add(Problem.at(place, PlateFault.AXES, name, Argument.text(right)));
    }
    if (UnitMatch.isOther(axes.factor())) {
      boolean unit = UnitMatch.ofPlaces(axes.factor()).isPresent();
      PlateFault fault = unit ? PlateFault.PLACE_UNIT : PlateFault.PLACE_FACTOR;
      faults.add(Problem.at(place, fault, name, factor(axes.factor())));
    }
    return faults;
  }

  private List<Problem> forceFaults(Argument plate, List<Double> errors) {
    double factor = 1 + errors.stream().mapToDouble(e -> e).average().orElse(0);
    if (!UnitMatch.isOther(factor)) {
      return List.of();
    }
    boolean unit = UnitMatch.ofForces(factor).isPresent();
    PlateFault fault = unit ? PlateFault.FORCE_UNIT : PlateFault.FORCE_FACTOR;
    return List.of(Problem.at(place, fault, plate, factor(factor)));
  }

  private static Argument factor(double factor) {
    return Argument.text(
        new java.math.BigDecimal(factor)
            .round(new java.math.MathContext(3))
            .stripTrailingZeros()
            .toPlainString());
  }

  /** As a description writes axes. */
  private static String words(Axes axes) {
    return "axes: {right: "
        + word(axes.right())
        + ", anterior: "
        + word(axes.anterior())
        + ", up: "
        + word(axes.up())
        + "}";
  }

  private static String word(Direction direction) {
    Axis axis = direction.axis();
    return (direction.sign() > 0 ? "+" : "-") + axis.letter();
  }

  private PlateAccuracy accuracy(List<MeasuredPlate> plates, List<Double> weights) {
    Estimate cop =
        plates.stream()
            .map(MeasuredPlate::copMm)
            .max(Comparator.comparingDouble(Estimate::standardUncertainty))
            .orElseThrow();
    PlateAccuracy measured =
        PlateAccuracy.ASSUMED.withCop(cop.standardUncertainty(), cop.degreesOfFreedom());
    if (!doubts.levelRad().isEmpty()) {
      measured =
          measured.withLevel(
              Math.max(LEVEL_READING_RAD, WeightBudget.rootMeanSquare(doubts.levelRad())),
              doubts.levelRad().size());
    }
    if (!weights.isEmpty()) {
      Estimate force = force(weights);
      measured = measured.withForce(force.standardUncertainty(), force.degreesOfFreedom());
    }
    List<Double> leans = leans();
    if (leans.isEmpty()) {
      return measured;
    }
    Estimate lean = new WeightBudget(marks, doubts).lean(leans);
    return measured.withLean(lean.standardUncertainty(), lean.degreesOfFreedom());
  }

  private Estimate force(List<Double> weights) {
    List<Double> errors = new ArrayList<>(weights);
    boolean body = person.kg().isPresent() && person.standing().upN().isPresent();
    if (body) {
      double trueN = person.kg().getAsDouble() * ForceUnit.STANDARD_GRAVITY;
      errors.add(person.standing().upN().getAsDouble() / trueN - 1);
    }
    return new WeightBudget(marks, doubts).force(errors, body);
  }

  /** How the weights' forces lean in both directions; empty if one has no horizontal force. */
  private List<Double> leans() {
    List<Double> leans = new ArrayList<>();
    for (MarkedWeight mark : marks) {
      if (mark.shown().lean().isEmpty()) {
        return List.of();
      }
      ShownLoad.Lean lean = mark.shown().lean().get();
      leans.add(lean.rightRad());
      leans.add(lean.anteriorRad());
    }
    return leans;
  }
}
