package caryatid.sheet;

import caryatid.loadline.Bounds;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LimitedQuantity;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The clinician's own limits of what can hardly be and what cannot be. */
final class LimitsSection {
  private static final ValueParser<Double> LIMIT = ValueParsers.number(-5_000, 5_000);

  /** Every quantity. */
  static final Set<LimitedQuantity> ALL = EnumSet.allOf(LimitedQuantity.class);

  /** Without those of settings, which stand in an entry of a record. */
  static final Set<LimitedQuantity> OF_A_SHEET =
      EnumSet.complementOf(
          EnumSet.of(
              LimitedQuantity.PLANTARFLEXION,
              LimitedQuantity.BENCH_ANGLE,
              LimitedQuantity.BENCH_DISTANCE,
              LimitedQuantity.FASTENER_TORQUE));

  private LimitsSection() {}

  static Optional<GeometryLimits> limits(Section section, Set<LimitedQuantity> quantities) {
    Map<LimitedQuantity, Bounds> own = new EnumMap<>(LimitedQuantity.class);
    for (LimitedQuantity quantity : quantities) {
      section
          .optionalSection(quantity.key())
          .flatMap(s -> bounds(s, quantity.usual()))
          .ifPresent(bounds -> own.put(quantity, bounds));
    }
    return section.build(() -> new GeometryLimits(own));
  }

  /** Refuses a heel and a stance width that cannot be. */
  static void requirePossible(
      Section root, Optional<Footwear> footwear, OptionalDouble widthMm, GeometryLimits limits) {
    Bounds heel = limits.of(LimitedQuantity.HEEL_HEIGHT);
    footwear
        .map(Footwear::heelHeightMm)
        .filter(heel::isImpossible)
        .ifPresent(mm -> refuse(root, "footwear", SheetProblem.HEEL_IMPOSSIBLE, mm, heel));
    Bounds width = limits.of(LimitedQuantity.STANCE_WIDTH);
    widthMm.ifPresent(
        mm -> {
          if (width.isImpossible(mm)) {
            refuse(root, "stance-width-mm", SheetProblem.STANCE_WIDTH_IMPOSSIBLE, mm, width);
          }
        });
  }

  private static void refuse(
      Section root, String key, SheetProblem topic, double mm, Bounds bounds) {
    root.refuse(
        root.place(key),
        topic,
        Argument.of(mm, Unit.MM),
        Argument.of(bounds.refuseBelow(), Unit.MM),
        Argument.of(bounds.refuseAbove(), Unit.MM));
  }

  private static Optional<Bounds> bounds(Section section, Bounds usual) {
    double askBelow = section.optional("ask-below", LIMIT).orElse(usual.askBelow());
    double askAbove = section.optional("ask-above", LIMIT).orElse(usual.askAbove());
    double refuseBelow = section.optional("refuse-below", LIMIT).orElse(usual.refuseBelow());
    double refuseAbove = section.optional("refuse-above", LIMIT).orElse(usual.refuseAbove());
    if (!(refuseBelow <= askBelow && askBelow <= askAbove && askAbove <= refuseAbove)) {
      section.refuse(section.place(), SheetProblem.LIMITS_OUT_OF_ORDER);
    }
    return section.build(() -> new Bounds(askBelow, askAbove, refuseBelow, refuseAbove));
  }
}
