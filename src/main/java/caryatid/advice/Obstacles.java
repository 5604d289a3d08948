package caryatid.advice;

import caryatid.advice.Situation.Circumstance;
import caryatid.geometry.Plane;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What stands against an advice, what limits it, and what is said with every one. */
final class Obstacles {
  static final List<Remark> ALWAYS =
      List.of(Remark.of(AdviceRemark.ONE_AT_A_TIME), Remark.of(AdviceRemark.WALKING_DECIDES));

  private Obstacles() {}

  /** Why nothing can be advised; empty where something can. */
  static List<Remark> of(Situation situation) {
    List<Remark> against = new ArrayList<>();
    add(against, situation.is(Circumstance.REFUSED), AdviceRemark.REFUSED);
    add(against, situation.is(Circumstance.LOCKED), AdviceRemark.LOCKED);
    add(against, situation.is(Circumstance.HAND_HELD), AdviceRemark.HAND_HELD);
    add(against, situation.is(Circumstance.CHANGED_SINCE), AdviceRemark.CHANGED_SINCE);
    add(against, situation.is(Circumstance.AXIS_NOT_NAMED), AdviceRemark.AXIS_NOT_NAMED);
    add(against, situation.states().isEmpty(), AdviceRemark.NO_STAND);
    add(
        against,
        situation.adjustments().stream().noneMatch(a -> a.kind().isProposed()),
        AdviceRemark.NO_ADJUSTMENT);
    if (against.isEmpty()) {
      ofMeasurement(situation, against);
    }
    return against;
  }

  private static void ofMeasurement(Situation situation, List<Remark> against) {
    MeasuredState now = situation.states().get(situation.states().size() - 1);
    List<Target> targets = targets(situation, now);
    List<LandmarkInPlane> offsets = targets.stream().map(Target::at).toList();
    boolean kneeSeen =
        now.offsets().stream().anyMatch(o -> situation.leg().isKneeFromTheSide(o.at()));
    add(against, targets.isEmpty(), AdviceRemark.NO_TARGET);
    add(against, situation.leg().prostheticKnee() && !kneeSeen, AdviceRemark.KNEE_NOT_MARKED);
    add(
        against,
        !targets.isEmpty() && usable(situation, offsets, geometry(situation, now)).isEmpty(),
        AdviceRemark.GEOMETRY_UNKNOWN);
  }

  private static void add(List<Remark> all, boolean holds, AdviceRemark topic) {
    if (holds) {
      all.add(Remark.of(topic));
    }
  }

  /** That a prosthetic knee may bend comes before everything else. */
  static List<Remark> warning(Situation situation) {
    return situation.is(Circumstance.KNEE_WARNING)
        ? List.of(Remark.of(AdviceRemark.KNEE_WARNING))
        : List.of();
  }

  /** What is never proposed, and what is not known. */
  static List<Remark> limits(Situation situation, boolean kneeSeen) {
    List<Remark> limits = new ArrayList<>();
    boolean own = !situation.leg().prostheticKnee();
    add(limits, own && kneeSeen, AdviceRemark.OWN_KNEE_KEPT);
    add(limits, own && !kneeSeen, AdviceRemark.OWN_KNEE_NOT_MARKED);
    add(limits, !own && !situation.is(Circumstance.KNEE_WARNING), AdviceRemark.KNEE_KEPT);
    add(limits, situation.is(Circumstance.AXIS_ASKED), AdviceRemark.AXIS_ASKED);
    boolean noted = situation.extension().contractureDeg().isPresent();
    limits.add(Remark.of(noted ? AdviceRemark.EXTENSION_KEPT : AdviceRemark.CONTRACTURE_NOT_NOTED));
    return limits;
  }

  /** The targets whose offsets the newest state has; one for each offset. */
  static List<Target> targets(Situation situation, MeasuredState now) {
    Map<LandmarkInPlane, Target> targets = new LinkedHashMap<>();
    situation.targets().stream()
        .filter(target -> target.side() == situation.leg().side())
        .filter(target -> target.line() == Target.MeantFor.FOOT)
        .filter(target -> now.offset(target.at()).isPresent())
        .forEach(target -> targets.putIfAbsent(target.at(), target));
    return List.copyOf(targets.values());
  }

  /** The adjustments that may be proposed, and of which geometry or this wearer tells something. */
  static List<Adjustment> usable(
      Situation situation, List<LandmarkInPlane> offsets, Kinematics geometry) {
    return situation.adjustments().stream()
        .filter(each -> each.kind().isProposed())
        .filter(
            each ->
                Learning.isChanged(each.kind(), situation.states())
                    || offsets.stream().allMatch(at -> geometry.slope(each.kind(), at).isPresent()))
        .toList();
  }

  /** The leg, with the load line where the newest state found it. */
  static Kinematics geometry(Situation situation, MeasuredState now) {
    OptionalDouble lateral = line(situation.leg(), now, Plane.FRONTAL, 0);
    OptionalDouble anterior = line(situation.leg(), now, Plane.SAGITTAL, 1);
    return new Kinematics(
        situation.leg(),
        lateral.isPresent() && anterior.isPresent()
            ? Optional.of(new double[] {lateral.getAsDouble(), anterior.getAsDouble()})
            : Optional.empty());
  }

  private static OptionalDouble line(LegChain leg, MeasuredState now, Plane plane, int axis) {
    for (Offset offset : now.offsets()) {
      Optional<Landmark> landmark = leg.landmark(offset.at().landmark());
      if (offset.at().plane() == plane && landmark.isPresent()) {
        return OptionalDouble.of(leg.place(landmark.get())[axis] + offset.mm().value());
      }
    }
    return OptionalDouble.empty();
  }
}
