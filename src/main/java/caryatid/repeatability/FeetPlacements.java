package caryatid.repeatability;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Unit;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.uncertainty.SampleVariance;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How wearers' heels stood to a line across the plate, placement by placement.
 *
 * @param at when
 * @param by initials of who placed the feet
 * @param betweenMm distance between the heels' middles, mm
 * @param placements each with the feet placed anew
 */
public record FeetPlacements(
    OffsetDateTime at, String by, double betweenMm, List<Placement> placements) {
  private static final String KIND = "feet-turn";

  /** Fewer say little (common practice, no source). */
  static final int FEWEST = 5;

  /** Feet that are turned further are a slip of the pen (common practice, no source). */
  private static final double MOST_DEG = 20;

  private static final ValueParser<Double> DISTANCE_MM = ValueParsers.number(-1_000, 1_000);

  /**
   * @throws IllegalArgumentException if the distance between the heels is not above 0
   */
  public FeetPlacements {
    placements = List.copyOf(placements);
    if (!(betweenMm > 0)) {
      throw new IllegalArgumentException("between the heels: " + betweenMm + " mm");
    }
  }

  /**
   * How far the heels are in front of the line.
   *
   * @param leftMm the left heel, mm; behind it negative
   * @param rightMm the right heel, mm
   */
  public record Placement(double leftMm, double rightMm) {}

  /**
   * Reads them (YAML).
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static FeetPlacements read(NamedBytes yaml) throws BadInput {
    return Section.read(yaml, KIND, FeetPlacements::placements);
  }

  private static Optional<FeetPlacements> placements(Section root) {
    Optional<OffsetDateTime> at = root.required("at", ValueParsers.TIME);
    Optional<String> by = root.required("by", ValueParsers.TEXT);
    Optional<Double> between = root.required("between-heels-mm", ValueParsers.number(20, 1_000));
    List<Optional<Placement>> read = root.requiredSections("placements", FeetPlacements::placement);
    List<Placement> placements = new ArrayList<>();
    read.forEach(one -> one.ifPresent(placements::add));
    if (placements.size() == read.size() && placements.size() < FEWEST) {
      root.refuse(
          root.place("placements"),
          RepeatProblem.FEW_PLACEMENTS,
          Argument.count(placements.size()),
          Argument.count(FEWEST));
    }
    Optional<FeetPlacements> feet =
        root.build(
            () ->
                new FeetPlacements(
                    at.orElseThrow(), by.orElseThrow(), between.orElseThrow(), placements));
    double deg = feet.map(all -> Math.toDegrees(Math.sqrt(all.variance().variance()))).orElse(0.0);
    if (deg > MOST_DEG) {
      root.refuse(
          root.place("placements"),
          RepeatProblem.TOO_LARGE,
          Argument.of(deg, Unit.DEG),
          Argument.of(MOST_DEG, Unit.DEG));
    }
    return feet;
  }

  private static Optional<Placement> placement(Section section) {
    Optional<Double> left = section.required("left-mm", DISTANCE_MM);
    Optional<Double> right = section.required("right-mm", DISTANCE_MM);
    return section.build(() -> new Placement(left.orElseThrow(), right.orElseThrow()));
  }

  /**
   * The mean square of the turn, rad^2. An analysis takes the wearer to face straight on, so the
   * mean square is about no turn, and has as many degrees of freedom as there are placements: what
   * is common to all of them counts, too (JCGM 100:2008, F.2.4.5). It is never taken to be less
   * than the readings of both heels leave (F.2.2.1).
   */
  public SampleVariance variance() {
    double squares =
        placements.stream().mapToDouble(p -> Math.pow(turnRad(p), 2)).average().orElseThrow();
    double readings = 2 * RepeatedMarks.READING_VARIANCE / (betweenMm * betweenMm);
    return new SampleVariance(Math.max(readings, squares), placements.size());
  }

  private double turnRad(Placement placement) {
    return Math.atan2(placement.rightMm() - placement.leftMm(), betweenMm);
  }
}
