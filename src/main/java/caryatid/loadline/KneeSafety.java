package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Warns where the load line runs behind a prosthetic knee's axis, or may: the ground reaction then
 * bends the knee, whatever a target says. It runs behind where it was measured there, which makes
 * it more probable than not; it may where the probability that it does is above 2.5 %, which is
 * where the 95 % interval reaches behind. Warns as well where that cannot be seen: a knee that was
 * not marked, or a stand that shows the whole body's line alone.
 */
public final class KneeSafety {
  private static final Set<Topic> MAY_BEND =
      Set.of(
          LoadLineRemark.LINE_BEHIND_KNEE,
          LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE,
          LoadLineRemark.MEASURED_LINE_BEHIND_KNEE);

  private final List<Offset> offsets;
  private final Side side;
  private final List<Remark> warnings = new ArrayList<>();

  private KneeSafety(List<Offset> offsets, Side side) {
    this.offsets = offsets;
    this.side = side;
  }

  /**
   * The warnings, by the foot's own line where it is known, else by the whole body's.
   *
   * @param offsets of one alignment state or stand
   * @param landmarks the landmarks they are measured from
   * @param sides sides that have a prosthetic knee
   */
  public static List<Remark> of(List<Offset> offsets, List<Landmark> landmarks, List<Side> sides) {
    List<Remark> warnings = new ArrayList<>();
    for (Side side : sides) {
      List<Offset> knee = offsets.stream().filter(o -> isKnee(o, side, landmarks)).toList();
      warnings.addAll(new KneeSafety(knee, side).warnings());
    }
    return List.copyOf(warnings);
  }

  /**
   * Whether remarks say that a prosthetic knee may bend. Then the wearer is made safe and the
   * alignment corrected first; no sentence asks to repeat the stand first.
   */
  public static boolean mayBend(List<Remark> remarks) {
    return remarks.stream().anyMatch(remark -> MAY_BEND.contains(remark.topic()));
  }

  private static boolean isKnee(Offset offset, Side side, List<Landmark> landmarks) {
    return offset.plane() == Plane.SAGITTAL
        && offset.side() == side
        && landmarks.stream()
            .filter(l -> l.at(offset.plane()).equals(offset.at()))
            .anyMatch(l -> l.kind() == LandmarkKind.KNEE_CENTRE);
  }

  private List<Remark> warnings() {
    Optional<Offset> own = vertical(LoadLineOwner.foot(side));
    Optional<Offset> whole = vertical(LoadLineOwner.WHOLE_BODY);
    own.or(() -> whole).ifPresent(this::warn);
    if (own.isPresent()) {
      measured().filter(o -> own.get().mm().value() >= 0).ifPresent(this::warnOfMeasured);
    } else {
      LoadLineRemark unknown =
          whole.isPresent()
              ? LoadLineRemark.OWN_LINE_OF_KNEE_UNKNOWN
              : LoadLineRemark.KNEE_NOT_MARKED;
      warnings.add(Remark.of(unknown, Argument.term(side)));
    }
    return warnings;
  }

  private Optional<Offset> vertical(LoadLineOwner of) {
    return offsets.stream()
        .filter(o -> o.kind() == LoadLineMethod.VERTICAL && o.of() == of)
        .findFirst();
  }

  private Optional<Offset> measured() {
    return offsets.stream()
        .filter(
            o -> o.kind() == LoadLineMethod.MEASURED_FORCE && o.of() == LoadLineOwner.foot(side))
        .filter(o -> o.mm().value() < 0)
        .findFirst();
  }

  private void warn(Offset offset) {
    double widthMm = offset.mm().expanded(Estimate.COVERAGE);
    past(side, offset.mm().value(), widthMm, Argument.term(offset.of())).ifPresent(warnings::add);
  }

  /**
   * The warning of a vertical line past a prosthetic knee's axis; empty where it runs in front.
   *
   * @param side the knee's
   * @param mm how far in front of the axis, mm
   * @param halfWidthMm half-width of the 95 % interval, mm
   * @param more what the remark holds besides, such as whose line it is
   */
  public static Optional<Remark> past(Side side, double mm, double halfWidthMm, Argument... more) {
    List<Argument> arguments = new ArrayList<>(List.of(Argument.term(side)));
    if (mm < 0) {
      arguments.add(Argument.of(-mm, Unit.MM));
      arguments.addAll(List.of(more));
      return Optional.of(new Remark(LoadLineRemark.LINE_BEHIND_KNEE, arguments));
    }
    if (mm - halfWidthMm < 0) {
      arguments.add(Argument.of(mm, Unit.MM));
      arguments.add(Argument.of(halfWidthMm, Unit.MM));
      arguments.addAll(List.of(more));
      return Optional.of(new Remark(LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE, arguments));
    }
    return Optional.empty();
  }

  private void warnOfMeasured(Offset offset) {
    warnings.add(
        Remark.of(
            LoadLineRemark.MEASURED_LINE_BEHIND_KNEE,
            Argument.term(side),
            Argument.of(-offset.mm().value(), Unit.MM),
            Argument.of(offset.mm().expanded(Estimate.COVERAGE), Unit.MM)));
  }
}
