package caryatid.entry.form;

import static caryatid.entry.form.Field.choice;
import static caryatid.entry.form.Field.number;
import static caryatid.entry.form.Field.rows;
import static caryatid.entry.form.Field.whole;
import static caryatid.entry.form.Field.words;
import static caryatid.entry.form.Field.yesNo;

import caryatid.entry.MassFrom;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Verdict;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;

/**
 * What each kind of entry is asked for: the one place to add a field. Ranges keep slips of the pen
 * out (a body mass of 8200 kg) and are no advice.
 */
public final class Forms {
  private static final double LONGEST_MM = 2500;
  private static final double HEAVIEST_KG = 500;
  private static final double HIGHEST_HEEL_MM = 200;
  private static final long LAST_ENTRY = 1_000_000;

  public static final Form OPENING =
      Form.of(
          words("wearer").needed(),
          choice("side", ProstheticSide.values()).needed(),
          choice("level", AmputationLevel.values()).needed(),
          number("body-mass-kg", 1, HEAVIEST_KG),
          whole("mobility-grade", 0, 4),
          words("note"));

  public static final Form BEFORE_ANY_SCREW =
      Form.of(
          words("contractures"),
          words("socket-fit"),
          words("liner"),
          whole("sock-ply", 0, 30),
          words("suspension"),
          words("skin"),
          words("shoe"),
          number("minutes-since-donning", 0, 1440),
          words("note"));

  public static final Form BENCH_ALIGNMENT =
      Form.of(
          rows(
                  "items",
                  words("item").needed(),
                  number("recommended", -LONGEST_MM, LONGEST_MM),
                  number("set", -LONGEST_MM, LONGEST_MM).needed(),
                  choice("unit", "mm", "deg", "N m").needed(),
                  words("source"),
                  words("note"))
              .needed(),
          words("note"));

  private static final Form COMPONENT =
      Form.of(
              words("what").needed(),
              words("name").needed(),
              words("serial"),
              number("body-mass-highest-kg", 1, HEAVIEST_KG),
              whole("mobility-grade-lowest", 0, 4),
              whole("mobility-grade-highest", 0, 4),
              number("heel-height-lowest-mm", 0, HIGHEST_HEEL_MM),
              number("heel-height-highest-mm", 0, HIGHEST_HEEL_MM),
              words("source"))
          .ordered("mobility-grade-lowest", "mobility-grade-highest")
          .ordered("heel-height-lowest-mm", "heel-height-highest-mm");

  public static final Form COMPONENTS =
      Form.of(rows("components", COMPONENT).needed(), words("note"));

  public static final Form LENGTH =
      Form.of(
          rows(
                  "landmarks",
                  words("landmark").needed(),
                  number("left-mm", 0, LONGEST_MM).needed(),
                  number("right-mm", 0, LONGEST_MM).needed())
              .needed(),
          number("intended-shortening-mm", 0, 100),
          number("lift-mm", 0, 200),
          choice("lift-under", Side.values()),
          yesNo("pelvis-level"),
          words("note"));

  public static final Form STAND =
      Form.of(
          words("changed"),
          words("why"),
          words("footwear"),
          number("heel-height-mm", -HIGHEST_HEEL_MM, HIGHEST_HEEL_MM),
          words("knee-mode"),
          number("body-mass-kg", 1, HEAVIEST_KG),
          choice("body-mass-from", MassFrom.values()),
          number("load-share-percent", 0, 100),
          rows(
              "findings",
              choice("plane", Plane.values()).needed(),
              choice("side", Side.values()).needed(),
              words("landmark").needed(),
              number("offset-mm", -LONGEST_MM, LONGEST_MM).needed(),
              number("expanded-mm", 0, LONGEST_MM).needed(),
              number("recommended-mm", -LONGEST_MM, LONGEST_MM).needed(),
              number("below-mm", 0, LONGEST_MM).needed(),
              number("above-mm", 0, LONGEST_MM).needed(),
              choice("result", Verdict.values()).needed(),
              words("source").needed(),
              words("valid-for")),
          words("conclusion"),
          words("comfort"),
          words("skin"),
          words("next-step"),
          words("note"));

  public static final Form WALKING =
      Form.of(
          rows(
              "observations",
              words("deviation").needed(),
              choice("plane", "sagittal", "frontal", "transverse"),
              choice("phase", "early stance", "mid-stance", "late stance", "swing", "whole stride"),
              choice("severity", "slight", "moderate", "marked"),
              words("points-to"),
              words("source")),
          whole("comfort", 0, 10),
          words("skin"),
          words("heel-stiffness"),
          words("walking-aid"),
          words("note"));

  public static final Form FOOTWEAR =
      Form.of(
          rows(
                  "shoes",
                  words("shoe").needed(),
                  number("heel-height-mm", -HIGHEST_HEEL_MM, HIGHEST_HEEL_MM).needed(),
                  whole("stand", 1, LAST_ENTRY),
                  yesNo("wearer-sets-ankle-alone"),
                  words("note"))
              .needed(),
          words("note"));

  public static final Form ACCEPTED =
      Form.of(words("what").needed(), words("why").needed(), whole("stand", 1, LAST_ENTRY));

  public static final Form OWN_SETTING =
      Form.of(
              words("what").needed(),
              whole("attempts", 1, 100).needed(),
              whole("succeeded", 0, 100).needed(),
              number("heel-height-wanted-mm", 0, HIGHEST_HEEL_MM),
              number("heel-height-set-mm", 0, HIGHEST_HEEL_MM),
              words("note"))
          .ordered("succeeded", "attempts");

  public static final Form NOTE = Form.of(words("text").needed());

  public static final Form ERASURE =
      Form.of(words("why").needed(), whole("entries", 0, LAST_ENTRY).needed());

  private Forms() {}
}
