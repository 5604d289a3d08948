package caryatid.entry.form;

import static caryatid.entry.form.Field.choice;
import static caryatid.entry.form.Field.computed;
import static caryatid.entry.form.Field.day;
import static caryatid.entry.form.Field.name;
import static caryatid.entry.form.Field.number;
import static caryatid.entry.form.Field.rows;
import static caryatid.entry.form.Field.whole;
import static caryatid.entry.form.Field.words;
import static caryatid.entry.form.Field.yesNo;

import caryatid.entry.EntryKind;
import caryatid.entry.Range;

/**
 * The form of each kind of entry: the one place to add a field, with its place in the kind's
 * record, in {@link AnswersToContent} and in {@link ContentToAnswers} (for a row, {@link
 * AnswersToRows} and {@link RowsToAnswers}).
 */
public final class EntryForms {

  private static final Form OPENING =
      Form.of(
          words("wearer").needed(),
          choice("side", Choices.PROSTHETIC_SIDE.codes()).needed(),
          choice("level", Choices.LEVEL.codes()).needed(),
          choice("level-left", Choices.LEVEL.codes()),
          choice("level-right", Choices.LEVEL.codes()),
          number("body-mass-kg", Range.BODY_MASS_KG),
          whole("mobility-grade", Range.MOBILITY_GRADE),
          words("note"));

  private static final Form ASSESSMENT =
      Form.of(
          words("contractures"),
          number("contracture-deg", Range.CONTRACTURE_DEG),
          words("socket-fit"),
          words("liner"),
          whole("sock-ply", Range.SOCK_PLY),
          words("suspension"),
          words("skin"),
          words("shoe"),
          number("minutes-since-donning", Range.MINUTES),
          whole("socket-comfort", Range.SCORE),
          whole("pain", Range.SCORE),
          words("wearer-says"),
          words("note"));

  private static final Form BENCH_ITEM =
      Form.of(
              name("item", Vocabulary.BENCH_ITEM).needed(),
              words("fastener"),
              choice("side", Choices.SIDE.codes()),
              number("recommended", Range.SETTING),
              number("set", Range.SETTING).needed(),
              choice("unit", Choices.UNIT.codes()).needed(),
              words("why"),
              words("source"),
              words("note"),
              number("lowest", Range.SETTING),
              number("highest", Range.SETTING),
              number("step", Range.STEP),
              number("deg-per-turn", Range.STEP))
          .ordered("lowest", "highest");

  private static final Form BENCH_ALIGNMENT =
      Form.of(rows("items", BENCH_ITEM).needed(), words("note"));

  private static final Form COMPONENT =
      Form.of(
              words("what").needed(),
              choice("side", Choices.SIDE.codes()),
              words("name").needed(),
              words("serial"),
              yesNo("ankle-axis"),
              number("body-mass-highest-kg", Range.BODY_MASS_KG),
              whole("mobility-grade-lowest", Range.MOBILITY_GRADE),
              whole("mobility-grade-highest", Range.MOBILITY_GRADE),
              number("heel-height-lowest-mm", Range.HEEL_MM),
              number("heel-height-highest-mm", Range.HEEL_MM),
              words("source"))
          .ordered("mobility-grade-lowest", "mobility-grade-highest")
          .ordered("heel-height-lowest-mm", "heel-height-highest-mm");

  private static final Form COMPONENTS =
      Form.of(rows("components", COMPONENT).needed(), words("note"));

  private static final Form LEG_LENGTH =
      Form.of(
          rows(
              "landmarks",
              words("landmark").needed(),
              number("left-mm", Range.HEIGHT_MM).needed(),
              number("right-mm", Range.HEIGHT_MM).needed()),
          number("intended-shortening-mm", Range.SHORTENING_MM),
          number("lift-mm", Range.LIFT_MM),
          choice("lift-under", Choices.SIDE.codes()),
          yesNo("pelvis-level"),
          words("note"));

  private static final Form STAND =
      Form.of(
          words("changed"),
          words("why"),
          words("footwear"),
          number("heel-height-mm", Range.EFFECTIVE_HEEL_MM),
          name("knee-mode", Vocabulary.KNEE_LOCK),
          number("body-mass-kg", Range.BODY_MASS_KG),
          choice("body-mass-from", Choices.MASS_FROM.codes()),
          number("load-share-percent", Range.PERCENT),
          rows(
              "findings",
              choice("plane", Choices.PLANE.codes()).needed(),
              choice("side", Choices.SIDE.codes()).needed(),
              words("landmark").needed(),
              number("offset-mm", Range.OFFSET_MM).needed(),
              number("expanded-mm", Range.HEIGHT_MM).needed(),
              number("recommended-mm", Range.OFFSET_MM).needed(),
              number("below-mm", Range.HEIGHT_MM).needed(),
              number("above-mm", Range.HEIGHT_MM).needed(),
              computed("result", Choices.RESULT.codes()),
              words("source").needed(),
              name("valid-for", Vocabulary.KNEE_LOCK)),
          words("conclusion"),
          words("comfort"),
          words("skin"),
          words("next-step"),
          words("note"));

  private static final Form WALKING =
      Form.of(
          rows(
              "observations",
              name("deviation", Vocabulary.DEVIATION).needed(),
              choice("plane", Choices.GAIT_PLANE.codes()),
              choice("phase", Choices.PHASE.codes()),
              choice("severity", Choices.SEVERITY.codes()),
              name("points-to", Vocabulary.POINTS_TO),
              name("source", Vocabulary.SOURCE)),
          whole("comfort", Range.SCORE),
          words("skin"),
          words("heel-stiffness"),
          words("walking-aid"),
          whole("socket-comfort", Range.SCORE),
          whole("pain", Range.SCORE),
          words("wearer-says"),
          words("note"));

  private static final Form FOOTWEAR =
      Form.of(
          rows(
                  "shoes",
                  words("shoe").needed(),
                  number("heel-height-mm", Range.EFFECTIVE_HEEL_MM).needed(),
                  whole("stand", Range.ENTRY),
                  yesNo("wearer-sets-ankle-alone"),
                  words("note"))
              .needed(),
          words("note"));

  private static final Form ACCEPTED =
      Form.of(
          words("what").needed(),
          words("why").needed(),
          whole("stand", Range.ENTRY),
          whole("entry", Range.ENTRY));

  private static final Form OWN_SETTING =
      Form.of(
              words("what").needed(),
              whole("attempts", Range.ATTEMPTS).needed(),
              whole("succeeded", Range.SUCCESSES).needed(),
              number("heel-height-wanted-mm", Range.HEEL_MM),
              number("heel-height-set-mm", Range.HEEL_MM),
              words("note"))
          .ordered("succeeded", "attempts");

  private static final Form CLOSING =
      Form.of(
          whole("socket-comfort", Range.SCORE),
          whole("pain", Range.SCORE),
          words("wearer-says"),
          number("minutes-stood", Range.MINUTES),
          words("skin"),
          day("next-visit"),
          words("note"));

  private static final Form NOTE = Form.of(words("text").needed());

  private static final Form SENDING =
      Form.of(
          words("sent-to").needed(),
          whole("up-to-entry", Range.ENTRY).needed(),
          whole("newly-stored", Range.ENTRIES).needed());

  private static final Form ERASURE =
      Form.of(words("why").needed(), whole("entries", Range.ENTRIES).needed());

  private EntryForms() {}

  /** What an entry of a kind is asked for. */
  public static Form of(EntryKind kind) {
    return switch (kind) {
      case OPENING -> OPENING;
      case ASSESSMENT -> ASSESSMENT;
      case BENCH_ALIGNMENT -> BENCH_ALIGNMENT;
      case COMPONENTS -> COMPONENTS;
      case LEG_LENGTH -> LEG_LENGTH;
      case STAND -> STAND;
      case WALKING -> WALKING;
      case FOOTWEAR -> FOOTWEAR;
      case ACCEPTED -> ACCEPTED;
      case OWN_SETTING -> OWN_SETTING;
      case CLOSING -> CLOSING;
      case NOTE -> NOTE;
      case SENDING -> SENDING;
      case ERASURE -> ERASURE;
    };
  }
}
