package caryatid.recording.c3d;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.geometry.Side;
import caryatid.recording.model.BodyPoint;
import java.util.List;
import java.util.Optional;

/**
 * Where up, anterior and right are, by plates and markers: up is where the legs are above the
 * plates, anterior is where toes lie before heels, and the right side must then be to the right.
 */
final class Facing {
  /**
   * The toes of a person who faces along an axis point off it by less (common practice, no source).
   */
  static final double MOST_OFF_DEG = 25;

  /** Plates that lean more lie along no axis, degrees. */
  private static final double MOST_LEAN_DEG = 3;

  private final List<PlateSpec> plates;
  private final List<LabMarker> markers;

  Facing(List<PlateSpec> plates, List<LabMarker> markers) {
    this.plates = List.copyOf(plates);
    this.markers = List.copyOf(markers);
  }

  /**
   * The axes.
   *
   * @param axes which directions
   * @param offDeg how far heel to toe points off anterior, degrees
   */
  record FoundAxes(Axes axes, double offDeg) {}

  /** The axes; empty where plates and markers do not tell them. */
  Optional<FoundAxes> find() {
    Optional<Direction> up = up();
    Optional<LabVector> toes = toes();
    if (up.isEmpty() || toes.isEmpty()) {
      return Optional.empty();
    }
    LabVector vertical = LabVector.of(up.get());
    LabVector level = toes.get().minus(vertical.times(toes.get().dot(vertical)));
    if (level.length() == 0) {
      return Optional.empty();
    }
    Direction anterior = level.nearest();
    double offDeg = Math.toDegrees(Math.acos(Math.min(1, level.unit().along(anterior))));
    Direction right = LabVector.of(anterior).cross(vertical).nearest();
    Axes axes = new Axes(right, anterior, up.get());
    return offDeg <= MOST_OFF_DEG && sidesAgree(axes)
        ? Optional.of(new FoundAxes(axes, offDeg))
        : Optional.empty();
  }

  /**
   * Whether markers contradict axes: the legs are below, the heels in front, or the sides swapped.
   */
  boolean contradicts(Axes axes) {
    boolean below = up().filter(up -> up != axes.up()).isPresent();
    boolean backward =
        toes().filter(toes -> toes.along(axes.anterior()) < toes.length() / 2).isPresent();
    return below || backward || !sidesAgree(axes);
  }

  private boolean sidesAgree(Axes axes) {
    for (BodyPoint point : BodyPoint.values()) {
      Optional<LabVector> left = mean(Side.LEFT, point);
      Optional<LabVector> right = mean(Side.RIGHT, point);
      if (left.isPresent()
          && right.isPresent()
          && right.get().minus(left.get()).along(axes.right()) < 0) {
        return false;
      }
    }
    return true;
  }

  /** From heels to toes, of both feet where both have markers; each foot counts alike. */
  private Optional<LabVector> toes() {
    Optional<LabVector> all = Optional.empty();
    for (Side side : Side.values()) {
      Optional<LabVector> heel = mean(side, BodyPoint.HEEL);
      Optional<LabVector> toe = mean(side, BodyPoint.TOE);
      if (heel.isPresent() && toe.isPresent()) {
        LabVector along = toe.get().minus(heel.get());
        all = Optional.of(all.map(along::plus).orElse(along));
      }
    }
    return all;
  }

  /** The mean place of a side's markers of a point. */
  Optional<LabVector> mean(Side side, BodyPoint point) {
    List<LabVector> places =
        markers.stream()
            .filter(m -> m.name().side() == side && m.name().point() == point)
            .map(LabMarker::median)
            .toList();
    return places.stream().reduce(LabVector::plus).map(sum -> sum.times(1.0 / places.size()));
  }

  /** The axis that all plates are level to, on the side on which the markers are. */
  private Optional<Direction> up() {
    if (markers.isEmpty() || plates.isEmpty()) {
      return Optional.empty();
    }
    LabVector normal = plates.get(0).frame().z();
    Direction along = normal.nearest();
    boolean level = plates.stream().allMatch(plate -> level(plate, along));
    LabVector sum =
        markers.stream()
            .map(m -> m.median().minus(plates.get(0).frame().centre()))
            .reduce(LabVector::plus)
            .orElseThrow();
    boolean above = sum.along(along) > 0;
    return level ? Optional.of(above ? along : opposite(along)) : Optional.empty();
  }

  /** Whether a plate's normal is an axis. */
  static boolean level(PlateSpec plate, Direction along) {
    return Math.abs(plate.frame().z().along(along)) >= Math.cos(Math.toRadians(MOST_LEAN_DEG));
  }

  private static Direction opposite(Direction direction) {
    return LabVector.of(direction).times(-1).nearest();
  }
}
