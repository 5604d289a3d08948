package caryatid.entry.form;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.Footwear;
import caryatid.entry.Length;
import caryatid.entry.Stood;
import caryatid.entry.Walking;
import java.util.Optional;

/** Rows of what an entry says as answers. */
final class UntypedRows {
  private UntypedRows() {}

  static Filling item(BenchAlignment.Item c) {
    return new Filling()
        .name("item", Optional.of(c.item()))
        .number("recommended", c.recommended())
        .number("set", Optional.of(c.set()))
        .choice("unit", Choices.UNIT, Optional.of(c.unit()))
        .words("source", c.source())
        .words("note", c.note());
  }

  static Filling component(Components.Component c) {
    return new Filling()
        .words("what", Optional.of(c.what()))
        .words("name", Optional.of(c.name()))
        .words("serial", c.serial())
        .number("body-mass-highest-kg", c.bodyMassHighestKg())
        .whole("mobility-grade-lowest", c.mobilityGradeLowest())
        .whole("mobility-grade-highest", c.mobilityGradeHighest())
        .number("heel-height-lowest-mm", c.heelHeightLowestMm())
        .number("heel-height-highest-mm", c.heelHeightHighestMm())
        .words("source", c.source());
  }

  static Filling height(Length.Height c) {
    return new Filling()
        .words("landmark", Optional.of(c.landmark()))
        .number("left-mm", Optional.of(c.leftMm()))
        .number("right-mm", Optional.of(c.rightMm()));
  }

  static Filling found(Stood.Found c) {
    return new Filling()
        .choice("plane", Choices.PLANE, Optional.of(c.plane()))
        .choice("side", Choices.SIDE, Optional.of(c.side()))
        .words("landmark", Optional.of(c.landmark()))
        .number("offset-mm", Optional.of(c.offsetMm()))
        .number("expanded-mm", Optional.of(c.expandedMm()))
        .number("recommended-mm", Optional.of(c.recommendedMm()))
        .number("below-mm", Optional.of(c.belowMm()))
        .number("above-mm", Optional.of(c.aboveMm()))
        .choice("result", Choices.RESULT, Optional.of(c.result()))
        .words("source", Optional.of(c.source()))
        .name("valid-for", c.validFor());
  }

  static Filling observation(Walking.Observation c) {
    return new Filling()
        .name("deviation", Optional.of(c.deviation()))
        .choice("plane", Choices.GAIT_PLANE, c.plane())
        .choice("phase", Choices.PHASE, c.phase())
        .choice("severity", Choices.SEVERITY, c.severity())
        .name("points-to", c.pointsTo())
        .name("source", c.source());
  }

  static Filling shoe(Footwear.Shoe c) {
    return new Filling()
        .words("shoe", Optional.of(c.shoe()))
        .number("heel-height-mm", Optional.of(c.heelHeightMm()))
        .whole("stand", c.stand())
        .yesNo("wearer-sets-ankle-alone", c.wearerSetsAnkleAlone())
        .words("note", c.note());
  }
}
