package caryatid.format;

import caryatid.geometry.Side;
import caryatid.standing.ForceInclination;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import caryatid.standing.Standing;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Estimate;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The analysis of a stand's recording in JSON. */
final class StandingForm {
  private static final String LEFT = "left";
  private static final String RIGHT = "right";

  private StandingForm() {}

  static void write(Standing standing, JsonObjectWriter out) throws IOException {
    out.object("stretch", standing.stretch(), StandingForm::writeStretch)
        .number("rate-hz", standing.rateHz())
        .list("loads", standing.loads(), StandingForm::writeLoad)
        .list("sway", standing.sway(), SwayForm::write)
        .list("placements", standing.placements(), SwayForm::writePlacement)
        .object("share", standing.share(), StandingForm::writeShare)
        .list("remarks", standing.remarks(), RemarkForm::write);
  }

  static Standing read(JsonObjectReader in) {
    return new Standing(
        in.object("stretch", StandingForm::readStretch),
        in.number("rate-hz"),
        in.list("loads", StandingForm::readLoad),
        in.list("sway", SwayForm::read),
        in.list("placements", SwayForm::readPlacement),
        in.object("share", StandingForm::readShare),
        in.list("remarks", RemarkForm::read));
  }

  private static void writeStretch(QuietStretch stretch, JsonObjectWriter out) throws IOException {
    out.whole("from-index", stretch.fromIndex())
        .whole("to-index", stretch.toIndex())
        .number("from-s", stretch.fromS())
        .number("to-s", stretch.toS())
        .flag("by-hand", stretch.byHand())
        .list("left-out", stretch.leftOut(), StandingForm::writeLeftOut);
  }

  private static QuietStretch readStretch(JsonObjectReader in) {
    return new QuietStretch(
        in.whole("from-index"),
        in.whole("to-index"),
        in.number("from-s"),
        in.number("to-s"),
        in.flag("by-hand"),
        in.list("left-out", StandingForm::readLeftOut));
  }

  private static void writeLeftOut(UnusedPart left, JsonObjectWriter out) throws IOException {
    out.number("from-s", left.fromS())
        .number("to-s", left.toS())
        .word("reason", FindingSpellings.LEFT_OUT, left.reason());
  }

  private static UnusedPart readLeftOut(JsonObjectReader in) {
    return new UnusedPart(
        in.number("from-s"), in.number("to-s"), in.word("reason", FindingSpellings.LEFT_OUT));
  }

  private static void writeLoad(MeanLoad load, JsonObjectWriter out) throws IOException {
    out.word("of", FindingSpellings.LINE_OF, load.of())
        .object("cop-right-mm", load.copRightMm(), EstimateForm::write)
        .object("cop-anterior-mm", load.copAnteriorMm(), EstimateForm::write)
        .object("up-n", load.upN(), EstimateForm::write)
        .object("lean", load.lean(), StandingForm::writeLean);
  }

  private static MeanLoad readLoad(JsonObjectReader in) {
    return new MeanLoad(
        in.word("of", FindingSpellings.LINE_OF),
        in.object("cop-right-mm", EstimateForm::read),
        in.object("cop-anterior-mm", EstimateForm::read),
        in.objectIfThere("up-n", EstimateForm::read),
        in.objectIfThere("lean", StandingForm::readLean));
  }

  private static void writeLean(ForceInclination lean, JsonObjectWriter out) throws IOException {
    out.object("right-per-up", lean.rightPerUp(), EstimateForm::write)
        .object("anterior-per-up", lean.anteriorPerUp(), EstimateForm::write);
  }

  private static ForceInclination readLean(JsonObjectReader in) {
    return new ForceInclination(
        in.object("right-per-up", EstimateForm::read),
        in.object("anterior-per-up", EstimateForm::read));
  }

  private static void writeShare(Map<Side, Estimate> share, JsonObjectWriter out)
      throws IOException {
    out.object(LEFT, Optional.ofNullable(share.get(Side.LEFT)), EstimateForm::write)
        .object(RIGHT, Optional.ofNullable(share.get(Side.RIGHT)), EstimateForm::write);
  }

  private static Map<Side, Estimate> readShare(JsonObjectReader in) {
    Map<Side, Estimate> share = new EnumMap<>(Side.class);
    in.objectIfThere(LEFT, EstimateForm::read).ifPresent(of -> share.put(Side.LEFT, of));
    in.objectIfThere(RIGHT, EstimateForm::read).ifPresent(of -> share.put(Side.RIGHT, of));
    return share;
  }
}
