package caryatid.views;

import caryatid.advice.Adjustment;
import caryatid.advice.ChangeKind;
import caryatid.advice.Extension;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.StandSummary;
import caryatid.geometry.Side;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The items of the bench alignment as kinds of change. */
final class ChangesOfItems {
  private ChangesOfItems() {}

  /** The kind of change that an item is; empty for heel height, fasteners and free names. */
  static Optional<ChangeKind> kind(BenchAlignment.Item row) {
    return row.item()
        .code()
        .filter(code -> row.unit() == code.unit())
        .flatMap(ChangesOfItems::kind);
  }

  private static Optional<ChangeKind> kind(BenchItem item) {
    return switch (item) {
      case SOCKET_FLEXION -> Optional.of(ChangeKind.SOCKET_FLEXION);
      case SOCKET_ADDUCTION -> Optional.of(ChangeKind.SOCKET_ADDUCTION);
      case SOCKET_FORWARD -> Optional.of(ChangeKind.SOCKET_FORWARD);
      case SOCKET_LATERAL -> Optional.of(ChangeKind.SOCKET_LATERAL);
      case HIP_JOINT_FORWARD -> Optional.of(ChangeKind.HIP_JOINT_FORWARD);
      case KNEE_FORWARD -> Optional.of(ChangeKind.KNEE_FORWARD);
      case KNEE_HEIGHT -> Optional.of(ChangeKind.KNEE_HEIGHT);
      case KNEE_ROTATION -> Optional.of(ChangeKind.KNEE_ROTATION);
      case FOOT_ROTATION -> Optional.of(ChangeKind.FOOT_ROTATION);
      case FOOT_FORWARD -> Optional.of(ChangeKind.FOOT_FORWARD);
      case FOOT_LATERAL -> Optional.of(ChangeKind.FOOT_LATERAL);
      case FOOT_INVERSION -> Optional.of(ChangeKind.INVERSION);
      case ANKLE -> Optional.of(ChangeKind.PLANTARFLEXION);
      case HEIGHT -> Optional.of(ChangeKind.HEIGHT);
      case HEEL_HEIGHT, FASTENERS -> Optional.empty();
    };
  }

  private static boolean isOf(BenchAlignment.Item row, Side leg) {
    return row.side().filter(side -> side != leg).isEmpty();
  }

  /**
   * What was set at a leg, with the heel of the stand that the ankle was not set for.
   *
   * @param before the valid entries up to the stand
   */
  static Map<ChangeKind, Double> settings(
      List<Entry> before, Side leg, Optional<StandSummary> stood) {
    Collection<CurrentSetting> now = CurrentSetting.bySlot(before).values();
    Map<ChangeKind, Double> settings = new EnumMap<>(ChangeKind.class);
    for (CurrentSetting setting : now) {
      if (isOf(setting.row(), leg)) {
        kind(setting.row())
            .ifPresent(kind -> settings.put(kind, setting.row().set().doubleValue()));
      }
    }
    Optional<BigDecimal> heelMm = stood.flatMap(StandSummary::heelHeightMm);
    HeelSetting.last(now)
        .filter(set -> heelMm.isPresent())
        .ifPresent(
            set ->
                settings.put(
                    ChangeKind.HEEL, heelMm.get().subtract(set.row().set()).doubleValue()));
    return settings;
  }

  /** What may be changed at a leg: items of which travel and step are noted. */
  static List<Adjustment> adjustments(List<Entry> valid, Side leg) {
    List<Adjustment> adjustments = new ArrayList<>();
    for (CurrentSetting setting : CurrentSetting.of(valid)) {
      BenchAlignment.Item row = setting.row();
      BenchAlignment.Travel travel = row.travel();
      boolean noted =
          travel.lowest().isPresent() && travel.highest().isPresent() && travel.step().isPresent();
      if (noted && isOf(row, leg)) {
        kind(row)
            .ifPresent(
                kind ->
                    adjustments.add(
                        new Adjustment(
                            kind,
                            row.set().doubleValue(),
                            number(travel.lowest()).orElseThrow(),
                            number(travel.highest()).orElseThrow(),
                            number(travel.step()).orElseThrow(),
                            number(travel.degPerTurn()))));
      }
    }
    return adjustments;
  }

  /** The contracture as the newest assessment notes it, and how the socket is set to it. */
  static Extension extension(List<Entry> valid, Side leg) {
    OptionalDouble contracture =
        Entry.contents(valid, Assessment.class)
            .flatMap(assessment -> assessment.contractureDeg().stream())
            .mapToDouble(BigDecimal::doubleValue)
            .reduce((earlier, later) -> later);
    OptionalDouble flexion =
        CurrentSetting.of(valid).stream()
            .map(CurrentSetting::row)
            .filter(row -> row.item().is(BenchItem.SOCKET_FLEXION) && isOf(row, leg))
            .filter(row -> kind(row).isPresent())
            .mapToDouble(row -> row.set().doubleValue())
            .reduce((earlier, later) -> later);
    return new Extension(contracture, flexion);
  }

  private static OptionalDouble number(Optional<BigDecimal> value) {
    return value.stream().mapToDouble(BigDecimal::doubleValue).findFirst();
  }
}
