package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.standing.Leaning;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Landmarks that were read at stated moments: the swing of those moments is known, and taken off.
 */
public final class ReadMoments {
  /**
   * Relative standard uncertainty of taking a leg for a pendulum upside down (common practice, no
   * source).
   */
  private static final double PENDULUM = 0.2;

  /** How well such a figure without a source is known, as degrees of freedom. */
  private static final double DEGREES = 8;

  private ReadMoments() {}

  /**
   * A landmark where it is while the body stands as it does on average. Sideways it stays as it was
   * read where one foot alone was recorded, which does not show that swing.
   *
   * @param leaning how the body leaned when it was read
   */
  public static Landmark swungBack(Landmark read, Leaning leaning, AssumedUncertainties doubts) {
    boolean whole = leaning.of() == LoadLineOwner.WHOLE_BODY;
    double height = read.heightMm() / doubts.pendulumMm();
    double shown = whole ? 1 : UseLimits.SHOWS;
    double relative = whole ? PENDULUM : Math.hypot(PENDULUM, UseLimits.FOLLOWS);
    Optional<Coordinate> anterior =
        read.anteriorMm()
            .map(
                at ->
                    back(
                        at,
                        source(read, Plane.SAGITTAL),
                        height * leaning.anteriorMm() / shown,
                        relative,
                        height * leaning.anteriorSdMm() / shown));
    Optional<Coordinate> right =
        read.rightMm()
            .map(
                at ->
                    whole
                        ? back(
                            at,
                            source(read, Plane.FRONTAL),
                            height * leaning.rightMm(),
                            relative,
                            height * leaning.rightSdMm())
                        : at);
    return new Landmark(
        read.name(), read.kind(), read.side(), right, anterior, read.heightMm(), read.definition());
  }

  private static Coordinate back(
      Coordinate at, Source source, double swungMm, double relative, double aboutMm) {
    List<Contribution> doubts = new ArrayList<>(at.doubts());
    double mm = Math.hypot(relative * swungMm, aboutMm);
    doubts.add(new Contribution(source, mm, 1, DEGREES));
    return new Coordinate(at.mm() - swungMm, doubts);
  }

  /** The moment when a landmark was read for a plane. */
  static Source source(Landmark landmark, Plane plane) {
    return new Source(
        Cause.LANDMARK_MOVEMENT,
        landmark.side().lastPart() + " " + landmark.name() + " " + plane.lastPart());
  }

  /** Whether a coordinate is freed from the swing of the moment when it was read. */
  static boolean isKnown(Coordinate at, Source moment) {
    return at.doubts().stream().anyMatch(doubt -> doubt.source().equals(moment));
  }
}
