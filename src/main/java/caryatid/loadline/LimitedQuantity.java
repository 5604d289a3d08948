package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.remark.Unit;
import java.util.Optional;

/**
 * Quantities that can hardly be beyond some limits, with the usual limits: common practice, no
 * source. Offsets are those of the prosthetic foot's own line.
 */
public enum LimitedQuantity {
  SAGITTAL_ANKLE("sagittal-ankle-mm", Unit.MM, new Bounds(0, 110, -80, 210)),
  SAGITTAL_OWN_KNEE("sagittal-own-knee-mm", Unit.MM, new Bounds(-10, 50, -80, 120)),
  SAGITTAL_PROSTHETIC_KNEE("sagittal-prosthetic-knee-mm", Unit.MM, new Bounds(0, 60, -80, 120)),
  SAGITTAL_TROCHANTER("sagittal-trochanter-mm", Unit.MM, Bounds.within(60, 150)),
  SAGITTAL_OTHER("sagittal-other-mm", Unit.MM, Bounds.within(150, 300)),
  FRONTAL_KNEE("frontal-knee-mm", Unit.MM, Bounds.within(45, 100)),
  FRONTAL_FOOT("frontal-foot-mm", Unit.MM, Bounds.within(25, 60)),
  /** The border lies beside the knee's centre, so the line runs medial of it. */
  FRONTAL_PATELLAR_BORDER("frontal-patellar-border-mm", Unit.MM, new Bounds(-95, -5, -150, 20)),
  FRONTAL_OTHER("frontal-other-mm", Unit.MM, Bounds.within(100, 300)),
  /** Of marks above the plate's top, of a grown person: a child's are asked about. */
  ANKLE_HEIGHT("ankle-height-mm", Unit.MM, new Bounds(30, 180, 10, 400)),
  KNEE_HEIGHT("knee-height-mm", Unit.MM, new Bounds(300, 700, 100, 1000)),
  TROCHANTER_HEIGHT("trochanter-height-mm", Unit.MM, new Bounds(550, 1150, 200, 1500)),
  /** Between the heels' midlines. */
  STANCE_WIDTH("stance-width-mm", Unit.MM, new Bounds(60, 300, 30, 500)),
  /** Heel less forefoot sole; barefoot, 0, is never asked about. */
  HEEL_HEIGHT("heel-height-mm", Unit.MM, new Bounds(3, 50, -50, 120)),
  PLANTARFLEXION("plantarflexion-deg", Unit.DEG, Bounds.within(10, 25)),
  /** Of socket, knee and foot on the bench. */
  BENCH_ANGLE("bench-angle-deg", Unit.DEG, Bounds.within(25, 60)),
  /** Of socket, joints and foot from the reference line on the bench. */
  BENCH_DISTANCE("bench-distance-mm", Unit.MM, Bounds.within(40, 150)),
  /** Of one set screw or bolt. */
  FASTENER_TORQUE("fastener-torque-nm", Unit.NM, new Bounds(3, 30, 0.5, 100)),
  /** Of one prosthesis. */
  LOAD_SHARE("load-share-percent", Unit.PERCENT, new Bounds(35, 60, 20, 100));

  private final String key;
  private final Unit unit;
  private final Bounds usual;

  LimitedQuantity(String key, Unit unit, Bounds usual) {
    this.key = key;
    this.unit = unit;
    this.usual = usual;
  }

  /** How files spell it, with the unit of its limits at the end; never changes. */
  public String key() {
    return key;
  }

  /** The unit of its limits. */
  public Unit unit() {
    return unit;
  }

  /** Its usual limits. */
  public Bounds usual() {
    return usual;
  }

  /**
   * The quantity that an offset is.
   *
   * @param prostheticKnee whether a knee on the prosthetic side is a prosthetic one
   */
  public static LimitedQuantity of(Plane plane, LandmarkKind kind, boolean prostheticKnee) {
    return plane == Plane.SAGITTAL ? sagittal(kind, prostheticKnee) : frontal(kind);
  }

  /** The quantity that a mark's height is; empty for marks that may lie anywhere. */
  static Optional<LimitedQuantity> height(LandmarkKind kind) {
    return switch (kind) {
      case ANKLE_AXIS -> Optional.of(ANKLE_HEIGHT);
      case KNEE_CENTRE -> Optional.of(KNEE_HEIGHT);
      case HIP -> Optional.of(TROCHANTER_HEIGHT);
      default -> Optional.empty();
    };
  }

  private static LimitedQuantity sagittal(LandmarkKind kind, boolean prostheticKnee) {
    return switch (kind) {
      case ANKLE_AXIS -> SAGITTAL_ANKLE;
      case KNEE_CENTRE -> prostheticKnee ? SAGITTAL_PROSTHETIC_KNEE : SAGITTAL_OWN_KNEE;
      case HIP -> SAGITTAL_TROCHANTER;
      default -> SAGITTAL_OTHER;
    };
  }

  private static LimitedQuantity frontal(LandmarkKind kind) {
    return switch (kind) {
      case ANKLE_AXIS, FOOT_REFERENCE_POINT -> FRONTAL_FOOT;
      case KNEE_CENTRE -> FRONTAL_KNEE;
      case OUTER_PATELLAR_BORDER -> FRONTAL_PATELLAR_BORDER;
      default -> FRONTAL_OTHER;
    };
  }
}
