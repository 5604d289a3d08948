package caryatid.entry.form;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.LegLength;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.Walking;
import java.util.Optional;

/** Turns parts of an entry into rows of answers. */
final class RowsToAnswers {
  private RowsToAnswers() {}

  static AnswersBuilder item(BenchAlignment.Item c) {
    return new AnswersBuilder()
        .name("item", Optional.of(c.item()))
        .words("fastener", c.fastener())
        .choice("side", Choices.SIDE, c.side())
        .number("recommended", c.recommended())
        .number("set", Optional.of(c.set()))
        .choice("unit", Choices.UNIT, Optional.of(c.unit()))
        .words("why", c.why())
        .words("source", c.source())
        .words("note", c.note())
        .number("lowest", c.travel().lowest())
        .number("highest", c.travel().highest())
        .number("step", c.travel().step())
        .number("deg-per-turn", c.travel().degPerTurn());
  }

  static AnswersBuilder component(Components.ComponentLimits c) {
    return new AnswersBuilder()
        .words("what", Optional.of(c.what()))
        .choice("side", Choices.SIDE, c.side())
        .words("name", Optional.of(c.name()))
        .words("serial", c.serial())
        .yesNo("ankle-axis", c.ankleAxis())
        .number("body-mass-highest-kg", c.bodyMassHighestKg())
        .whole("mobility-grade-lowest", c.mobilityGradeLowest())
        .whole("mobility-grade-highest", c.mobilityGradeHighest())
        .number("heel-height-lowest-mm", c.heelHeightLowestMm())
        .number("heel-height-highest-mm", c.heelHeightHighestMm())
        .words("source", c.source());
  }

  static AnswersBuilder height(LegLength.Height c) {
    return new AnswersBuilder()
        .words("landmark", Optional.of(c.landmark()))
        .number("left-mm", Optional.of(c.leftMm()))
        .number("right-mm", Optional.of(c.rightMm()));
  }

  static AnswersBuilder found(StandSummary.Found c) {
    return new AnswersBuilder()
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

  static AnswersBuilder observation(Walking.Observation c) {
    return new AnswersBuilder()
        .name("deviation", Optional.of(c.deviation()))
        .choice("plane", Choices.GAIT_PLANE, c.plane())
        .choice("phase", Choices.PHASE, c.phase())
        .choice("severity", Choices.SEVERITY, c.severity())
        .name("points-to", c.pointsTo())
        .name("source", c.source());
  }

  static AnswersBuilder shoe(ShoeList.Shoe c) {
    return new AnswersBuilder()
        .words("shoe", Optional.of(c.shoe()))
        .number("heel-height-mm", Optional.of(c.heelHeightMm()))
        .whole("stand", c.stand())
        .yesNo("wearer-sets-ankle-alone", c.wearerSetsAnkleAlone())
        .words("note", c.note());
  }
}
