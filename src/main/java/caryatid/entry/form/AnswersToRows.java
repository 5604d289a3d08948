package caryatid.entry.form;

import static caryatid.entry.form.AnswersToContent.choice;
import static caryatid.entry.form.AnswersToContent.name;
import static caryatid.entry.form.AnswersToContent.whole;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Components;
import caryatid.entry.KneeLock;
import caryatid.entry.LegLength;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.Walking;
import caryatid.entry.WalkingDeviation;
import caryatid.loadline.LandmarkInPlane;

/** Turns rows of answers into parts of an entry. */
final class AnswersToRows {
  private AnswersToRows() {}

  static BenchAlignment.Item item(Answers a) {
    return new BenchAlignment.Item(
        name(a, "item", BenchItem.class).orElseThrow(),
        a.words("fastener"),
        choice(a, "side", Choices.SIDE),
        a.number("recommended"),
        a.number("set").orElseThrow(),
        choice(a, "unit", Choices.UNIT).orElseThrow(),
        a.words("why"),
        a.words("source"),
        a.words("note"),
        new BenchAlignment.Travel(
            a.number("lowest"), a.number("highest"), a.number("step"), a.number("deg-per-turn")));
  }

  static Components.ComponentLimits component(Answers a) {
    return new Components.ComponentLimits(
        a.words("what").orElseThrow(),
        choice(a, "side", Choices.SIDE),
        a.words("name").orElseThrow(),
        a.words("serial"),
        a.yesNo("ankle-axis"),
        a.number("body-mass-highest-kg"),
        whole(a, "mobility-grade-lowest"),
        whole(a, "mobility-grade-highest"),
        a.number("heel-height-lowest-mm"),
        a.number("heel-height-highest-mm"),
        a.words("source"));
  }

  static LegLength.Height height(Answers a) {
    return new LegLength.Height(
        a.words("landmark").orElseThrow(),
        a.number("left-mm").orElseThrow(),
        a.number("right-mm").orElseThrow());
  }

  static StandSummary.Found found(Answers a) {
    return new StandSummary.Found(
        new LandmarkInPlane(
            choice(a, "plane", Choices.PLANE).orElseThrow(),
            choice(a, "side", Choices.SIDE).orElseThrow(),
            a.words("landmark").orElseThrow()),
        a.number("offset-mm").orElseThrow(),
        a.number("expanded-mm").orElseThrow(),
        a.number("recommended-mm").orElseThrow(),
        a.number("below-mm").orElseThrow(),
        a.number("above-mm").orElseThrow(),
        choice(a, "result", Choices.RESULT).orElseThrow(),
        a.words("source").orElseThrow(),
        name(a, "valid-for", KneeLock.class));
  }

  static Walking.Observation observation(Answers a) {
    return new Walking.Observation(
        name(a, "deviation", WalkingDeviation.class).orElseThrow(),
        choice(a, "plane", Choices.GAIT_PLANE),
        choice(a, "phase", Choices.PHASE),
        choice(a, "severity", Choices.SEVERITY),
        name(a, "points-to", WalkingDeviation.class),
        name(a, "source", WalkingDeviation.Reference.class));
  }

  static ShoeList.Shoe shoe(Answers a) {
    return new ShoeList.Shoe(
        a.words("shoe").orElseThrow(),
        a.number("heel-height-mm").orElseThrow(),
        whole(a, "stand"),
        a.yesNo("wearer-sets-ankle-alone"),
        a.words("note"));
  }
}
