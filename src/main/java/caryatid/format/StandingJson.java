package caryatid.format;

import caryatid.geometry.Side;
import caryatid.standing.ForceInclination;
import caryatid.standing.MeanLoad;
import caryatid.standing.PercentileRank;
import caryatid.standing.QuietStretch;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.standing.Sway.BothDirections;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Estimate;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The analysis of a stand's recording in JSON. */
final class StandingJson {
  private static final String LEFT = "left";
  private static final String RIGHT = "right";

  private StandingJson() {}

  static void write(Standing standing, JsonObjectWriter out) throws IOException {
    out.object("stretch", standing.stretch(), StandingJson::writeStretch)
        .number("rate-hz", standing.rateHz())
        .list("loads", standing.loads(), StandingJson::writeLoad)
        .list("sway", standing.sway(), SwayJson::write)
        .list("placements", standing.placements(), SwayJson::writePlacement)
        .object("share", standing.share(), StandingJson::writeShare)
        .list("remarks", standing.remarks(), RemarkJson::write);
  }

  static Standing read(JsonObjectReader in) {
    return new Standing(
        in.object("stretch", StandingJson::readStretch),
        in.number("rate-hz"),
        in.list("loads", StandingJson::readLoad),
        in.list("sway", SwayJson::read),
        in.list("placements", SwayJson::readPlacement),
        in.object("share", StandingJson::readShare),
        in.list("remarks", RemarkJson::read));
  }

  private static void writeStretch(QuietStretch stretch, JsonObjectWriter out) throws IOException {
    out.whole("from-index", stretch.fromIndex())
        .whole("to-index", stretch.toIndex())
        .number("from-s", stretch.fromS())
        .number("to-s", stretch.toS())
        .flag("by-hand", stretch.byHand())
        .list("left-out", stretch.leftOut(), StandingJson::writeLeftOut);
  }

  private static QuietStretch readStretch(JsonObjectReader in) {
    return new QuietStretch(
        in.whole("from-index"),
        in.whole("to-index"),
        in.number("from-s"),
        in.number("to-s"),
        in.flag("by-hand"),
        in.list("left-out", StandingJson::readLeftOut));
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
        .object("cop-right-mm", load.copRightMm(), EstimateJson::write)
        .object("cop-anterior-mm", load.copAnteriorMm(), EstimateJson::write)
        .object("up-n", load.upN(), EstimateJson::write)
        .object("lean", load.lean(), StandingJson::writeLean);
  }

  private static MeanLoad readLoad(JsonObjectReader in) {
    return new MeanLoad(
        in.word("of", FindingSpellings.LINE_OF),
        in.objectIfThere("cop-right-mm", EstimateJson::read),
        in.object("cop-anterior-mm", EstimateJson::read),
        in.objectIfThere("up-n", EstimateJson::read),
        in.objectIfThere("lean", StandingJson::readLean));
  }

  private static void writeLean(ForceInclination lean, JsonObjectWriter out) throws IOException {
    out.object("right-per-up", lean.rightPerUp(), EstimateJson::write)
        .object("anterior-per-up", lean.anteriorPerUp(), EstimateJson::write);
  }

  private static ForceInclination readLean(JsonObjectReader in) {
    return new ForceInclination(
        in.object("right-per-up", EstimateJson::read),
        in.object("anterior-per-up", EstimateJson::read));
  }

  private static void writeShare(Map<Side, Estimate> share, JsonObjectWriter out)
      throws IOException {
    out.object(LEFT, Optional.ofNullable(share.get(Side.LEFT)), EstimateJson::write)
        .object(RIGHT, Optional.ofNullable(share.get(Side.RIGHT)), EstimateJson::write);
  }

  private static Map<Side, Estimate> readShare(JsonObjectReader in) {
    Map<Side, Estimate> share = new EnumMap<>(Side.class);
    in.objectIfThere(LEFT, EstimateJson::read).ifPresent(of -> share.put(Side.LEFT, of));
    in.objectIfThere(RIGHT, EstimateJson::read).ifPresent(of -> share.put(Side.RIGHT, of));
    return share;
  }

  /** Measures of sway and their percentile ranks in JSON. */
  private static final class SwayJson {
    private SwayJson() {}

    static void write(Sway sway, JsonObjectWriter out) throws IOException {
      out.word("of", FindingSpellings.LINE_OF, sway.of())
          .number("low-pass-hz", sway.lowPassHz())
          .number("sd-right-mm", of(sway, BothDirections::sdRightMm))
          .number("sd-anterior-mm", sway.sdAnteriorMm())
          .number("range-right-mm", of(sway, BothDirections::rangeRightMm))
          .number("range-anterior-mm", sway.rangeAnteriorMm())
          .number("path-mm", of(sway, BothDirections::pathMm))
          .number("mean-speed-mm-per-s", of(sway, BothDirections::meanSpeedMmPerS))
          .number("ellipse-mm2", of(sway, BothDirections::ellipseMm2))
          .number("covariance-mm2", of(sway, BothDirections::covarianceMm2))
          .number("mean-frequency-hz", of(sway, BothDirections::meanFrequencyHz))
          .number("effective-right", of(sway, BothDirections::effectiveRight))
          .number("effective-anterior", sway.effectiveAnterior());
    }

    private static OptionalDouble of(Sway sway, ToDoubleFunction<BothDirections> what) {
      return sway.both()
          .map(what::applyAsDouble)
          .map(OptionalDouble::of)
          .orElse(OptionalDouble.empty());
    }

    static Sway read(JsonObjectReader in) {
      return new Sway(
          in.word("of", FindingSpellings.LINE_OF),
          in.numberIfThere("low-pass-hz"),
          in.number("sd-anterior-mm"),
          in.number("range-anterior-mm"),
          in.number("effective-anterior"),
          readBoth(in));
    }

    /** A plate that measures fore and aft only has none of these. */
    private static Optional<BothDirections> readBoth(JsonObjectReader in) {
      return in.numberIfThere("sd-right-mm").isEmpty()
          ? Optional.empty()
          : Optional.of(
              new BothDirections(
                  in.number("sd-right-mm"),
                  in.number("range-right-mm"),
                  in.number("path-mm"),
                  in.number("mean-speed-mm-per-s"),
                  in.number("ellipse-mm2"),
                  in.number("covariance-mm2"),
                  in.number("mean-frequency-hz"),
                  in.number("effective-right")));
    }

    static void writePlacement(PercentileRank placement, JsonObjectWriter out) throws IOException {
      out.word("measure", FindingSpellings.MEASURE, placement.measure())
          .number("value", placement.value())
          .whole("from-percent", placement.fromPercent())
          .whole("to-percent", placement.toPercent());
    }

    static PercentileRank readPlacement(JsonObjectReader in) {
      return new PercentileRank(
          in.word("measure", FindingSpellings.MEASURE),
          in.number("value"),
          in.whole("from-percent"),
          in.whole("to-percent"));
    }
  }
}
