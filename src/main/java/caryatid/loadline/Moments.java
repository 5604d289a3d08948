package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.recording.model.ForceUnit;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * External moments of a foot's ground reaction about the knee and ankle of its leg: vertical force
 * times the offset of the line the force is taken to follow. Static; the weight of the segments
 * below the joint is neglected. Sagittal moments are given by both lines; frontal ones by the
 * measured force's line alone, and only where both feet's horizontal forces cancel as they must in
 * standing.
 */
final class Moments {
  private static final double MM_PER_M = 1000;

  private final Standing standing;
  private final List<Landmark> landmarks;
  private final StanceConditions how;

  Moments(Standing standing, List<Landmark> landmarks, StanceConditions how) {
    this.standing = standing;
    this.landmarks = List.copyOf(landmarks);
    this.how = how;
  }

  List<Moment> of(List<Offset> offsets) {
    return offsets.stream().filter(this::wanted).flatMap(o -> moment(o).stream()).toList();
  }

  /** Says so where frontal moments are left out although they were asked for by a mark. */
  List<Remark> remarks() {
    boolean asked = landmarks.stream().anyMatch(l -> isJoint(l) && l.rightMm().isPresent());
    return asked && !horizontalTrusted()
        ? List.of(Remark.of(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED))
        : List.of();
  }

  private boolean wanted(Offset offset) {
    boolean ownLine = offset.of() == LoadLineOwner.foot(offset.side());
    boolean trusted = offset.kind() == LoadLineMethod.MEASURED_FORCE && horizontalTrusted();
    return ownLine && isJoint(landmark(offset)) && (offset.plane() == Plane.SAGITTAL || trusted);
  }

  private Optional<Moment> moment(Offset offset) {
    return standing
        .load(offset.of())
        .flatMap(MeanLoad::upN)
        .map(upN -> upN.multiply(offset.mm()).times(1 / MM_PER_M))
        .map(
            newtonMetres ->
                new Moment(
                    offset.at(),
                    offset.kind(),
                    newtonMetres,
                    perKg(newtonMetres),
                    effect(offset, newtonMetres)));
  }

  /**
   * By the stated body mass, taken as exact; where none is stated, by the weight of both feet on
   * their plates.
   */
  private Optional<Estimate> perKg(Estimate newtonMetres) {
    if (how.bodyMassKg().isPresent()) {
      return Optional.of(newtonMetres.times(1 / how.bodyMassKg().getAsDouble()));
    }
    return standing
        .load(LoadLineOwner.WHOLE_BODY)
        .flatMap(MeanLoad::upN)
        .map(weight -> newtonMetres.times(ForceUnit.STANDARD_GRAVITY / weight.value()));
  }

  private MomentEffect effect(Offset offset, Estimate newtonMetres) {
    if (Math.abs(newtonMetres.value()) < newtonMetres.expanded(Estimate.COVERAGE)) {
      return MomentEffect.TOO_SMALL_TO_TELL;
    }
    boolean positive = newtonMetres.value() > 0;
    boolean knee = landmark(offset).kind() == LandmarkKind.KNEE_CENTRE;
    if (offset.plane() == Plane.FRONTAL) {
      return frontal(knee, positive);
    }
    return knee ? atKnee(offset, positive) : atAnkle(positive);
  }

  private MomentEffect atKnee(Offset offset, boolean positive) {
    if (!positive) {
      return MomentEffect.BENDS_THE_KNEE;
    }
    return how.prostheticKnee() && how.prosthetic().contains(offset.side())
        ? MomentEffect.HOLDS_KNEE_AGAINST_EXTENSION_STOP
        : MomentEffect.STRAIGHTENS_THE_KNEE;
  }

  private static MomentEffect atAnkle(boolean positive) {
    return positive ? MomentEffect.DORSIFLEXES_THE_ANKLE : MomentEffect.PLANTARFLEXES_THE_ANKLE;
  }

  private static MomentEffect frontal(boolean knee, boolean positive) {
    if (knee) {
      return positive ? MomentEffect.VALGUS : MomentEffect.VARUS;
    }
    return positive ? MomentEffect.EVERTS_THE_FOOT : MomentEffect.INVERTS_THE_FOOT;
  }

  private boolean horizontalTrusted() {
    return standing.loads().size() > 1
        && standing
            .load(LoadLineOwner.WHOLE_BODY)
            .flatMap(MeanLoad::lean)
            .filter(lean -> small(lean.rightPerUp()) && small(lean.anteriorPerUp()))
            .isPresent();
  }

  private boolean small(Estimate lean) {
    return Math.abs(lean.value()) <= how.limits().trustedLean();
  }

  private static boolean isJoint(Landmark landmark) {
    return landmark.kind() == LandmarkKind.KNEE_CENTRE
        || landmark.kind() == LandmarkKind.ANKLE_AXIS;
  }

  private Landmark landmark(Offset offset) {
    return landmarks.stream()
        .filter(l -> l.at(offset.plane()).equals(offset.at()))
        .findFirst()
        .orElseThrow();
  }
}
