package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Standing;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Offsets of load lines from landmarks. A leg's landmark is compared with its own foot's line in
 * both planes, and with the whole body's in the sagittal plane only: sideways the whole body's line
 * runs between the legs and says nothing about one of them. A plane in which the plate measured
 * nothing has no offset.
 */
final class Offsets {
  private final Standing standing;
  private final AssumedUncertainties doubts;

  private Offsets(Standing standing, AssumedUncertainties doubts) {
    this.standing = standing;
    this.doubts = doubts;
  }

  static List<Offset> of(Standing standing, List<Landmark> landmarks, AssumedUncertainties doubts) {
    Offsets offsets = new Offsets(standing, doubts);
    List<Offset> all = new ArrayList<>();
    for (Landmark landmark : landmarks) {
      for (Plane plane : Plane.values()) {
        offsets.add(all, landmark, plane, LoadLineOwner.foot(landmark.side()));
      }
      offsets.add(all, landmark, Plane.SAGITTAL, LoadLineOwner.WHOLE_BODY);
    }
    return List.copyOf(all);
  }

  private void add(List<Offset> all, Landmark landmark, Plane plane, LoadLineOwner of) {
    Optional<MeanLoad> load = standing.load(of);
    Optional<Coordinate> mark = landmark.in(plane);
    Optional<Estimate> cop = load.flatMap(known -> known.copMm(plane));
    if (cop.isEmpty() || mark.isEmpty()) {
      return;
    }
    Estimate vertical = vertical(load.get(), cop.get(), landmark, plane, mark.get());
    all.add(offset(landmark, plane, of, LoadLineMethod.VERTICAL, vertical));
    load.get()
        .lean()
        .map(lean -> plane == Plane.SAGITTAL ? lean.anteriorPerUp() : lean.rightPerUp())
        .map(lean -> vertical.plus(sign(landmark, plane) * landmark.heightMm(), lean))
        .ifPresent(mm -> all.add(offset(landmark, plane, of, LoadLineMethod.MEASURED_FORCE, mm)));
  }

  private static Offset offset(
      Landmark landmark, Plane plane, LoadLineOwner of, LoadLineMethod kind, Estimate mm) {
    return new Offset(landmark.at(plane), of, kind, mm);
  }

  private Estimate vertical(
      MeanLoad load, Estimate cop, Landmark landmark, Plane plane, Coordinate mark) {
    double sign = sign(landmark, plane);
    Estimate point = new Estimate(mark.mm(), mark.doubts());
    Source moment = ReadMoments.source(landmark, plane);
    Estimate still =
        cop.plus(-1, point)
            .with(level(plane, landmark.heightMm()))
            .with(yaw(yawLever(load, landmark, plane)));
    Estimate read =
        ReadMoments.isKnown(mark, moment)
            ? still
            : still.with(movement(moment, load, landmark, plane));
    return read.times(sign);
  }

  /**
   * How far the offset changes for each radian the wearer is turned to the left on the plate, mm.
   */
  private double yawLever(MeanLoad load, Landmark landmark, Plane plane) {
    Plane other = plane == Plane.SAGITTAL ? Plane.FRONTAL : Plane.SAGITTAL;
    double assumed =
        load.of() == LoadLineOwner.WHOLE_BODY ? doubts.bodyLeverMm() : doubts.footLeverMm();
    double across =
        load.copMm(other)
            .flatMap(cop -> landmark.in(other).map(mark -> cop.value() - mark.mm()))
            .orElse(assumed);
    return plane == Plane.SAGITTAL ? -across : across;
  }

  /**
   * The landmark was read at some moment while the body swung like a pendulum upside down; the
   * source is that moment, in standard deviations of the swing.
   */
  private Contribution movement(Source moment, MeanLoad load, Landmark landmark, Plane plane) {
    BodySway swing = BodySway.of(standing, load.of(), plane);
    double mm = swing.sdMm() * landmark.heightMm() / doubts.pendulumMm();
    return new Contribution(moment, 1, mm, swing.degreesOfFreedom());
  }

  private Contribution level(Plane plane, double heightMm) {
    Source source = new Source(Cause.LEVEL, plane.lastPart());
    return new Contribution(source, doubts.levelRad(), heightMm, doubts.degrees().level());
  }

  private Contribution yaw(double leverMm) {
    Source source = new Source(Cause.YAW, "");
    return new Contribution(source, doubts.yawRad(), leverMm, doubts.degrees().yaw());
  }

  private static double sign(Landmark landmark, Plane plane) {
    return plane == Plane.SAGITTAL ? 1 : landmark.side().lateral();
  }
}
