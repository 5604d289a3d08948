package caryatid.alignment;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.sheet.TrialSheet;
import caryatid.standing.LoadLineOwner;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An earlier alignment state in short, as a later check is given it: what was found then stands.
 * How far its stands scattered counts in the later check.
 *
 * @param resultSha512 SHA-512 of the result it was taken from, hexadecimal
 * @param wearer the wearer's code
 * @param at when it was measured
 * @param footwear in what the wearer stood, in the clinician's words
 * @param heelHeightMm effective heel height, mm
 * @param stands in how many stands, at least one; at least two where a spread is told
 * @param offsets of the vertical load lines
 * @param marked whether drawings mark it as the state before
 */
public record EarlierState(
    String resultSha512,
    String wearer,
    OffsetDateTime at,
    String footwear,
    double heelHeightMm,
    int stands,
    List<EarlierOffset> offsets,
    boolean marked) {

  /**
   * Where a load line ran past a landmark.
   *
   * @param at the landmark, and the plane it is seen in
   * @param of whose load line
   * @param meanMm mean of the state's stands, mm, signed as offsets are
   * @param spreadMm standard deviation between the stands, mm; empty for one stand
   */
  public record EarlierOffset(
      LandmarkInPlane at, LoadLineOwner of, double meanMm, OptionalDouble spreadMm) {
    /**
     * @throws IllegalArgumentException if a number is not finite or the spread is negative
     */
    public EarlierOffset {
      double spread = spreadMm.orElse(0);
      if (!Double.isFinite(meanMm) || !Double.isFinite(spread) || !(spread >= 0)) {
        throw new IllegalArgumentException(meanMm + " ± " + spread);
      }
    }
  }

  /**
   * @throws IllegalArgumentException if there is no stand, the heel height is not finite, or one
   *     stand has a spread
   */
  public EarlierState {
    if (stands < 1 || !Double.isFinite(heelHeightMm)) {
      throw new IllegalArgumentException(stands + " stands, heel " + heelHeightMm);
    }
    offsets = List.copyOf(offsets);
    if (stands == 1 && offsets.stream().anyMatch(offset -> offset.spreadMm().isPresent())) {
      throw new IllegalArgumentException("a spread of one stand");
    }
  }

  /**
   * A state in short, marked in drawings.
   *
   * @param resultSha512 SHA-512 of the result that holds it, hexadecimal
   */
  public static EarlierState of(AlignmentState state, String resultSha512) {
    TrialSheet trial = state.trial();
    List<EarlierOffset> offsets =
        state.offsets().stream()
            .map(StateOffset::offset)
            .filter(offset -> offset.kind() == LoadLineMethod.VERTICAL)
            .map(offset -> offset(offset, state.stands()))
            .toList();
    return new EarlierState(
        resultSha512,
        trial.wearer(),
        trial.at(),
        trial.footwear().description(),
        trial.footwear().heelHeightMm(),
        state.stands().size(),
        offsets,
        true);
  }

  /** The same, whether or not drawings mark it. */
  public EarlierState marked(boolean yes) {
    return new EarlierState(resultSha512, wearer, at, footwear, heelHeightMm, stands, offsets, yes);
  }

  private static EarlierOffset offset(Offset offset, List<Stand> stands) {
    double[] each =
        stands.stream()
            .flatMap(stand -> stand.offsets().stream())
            .filter(o -> o.kind() == offset.kind())
            .filter(o -> o.at().equals(offset.at()) && o.of() == offset.of())
            .mapToDouble(o -> o.mm().value())
            .toArray();
    return new EarlierOffset(offset.at(), offset.of(), offset.mm().value(), spread(each));
  }

  /** Sample standard deviation. */
  private static OptionalDouble spread(double[] each) {
    if (each.length < 2) {
      return OptionalDouble.empty();
    }
    double mean = 0;
    for (double mm : each) {
      mean += mm / each.length;
    }
    double squares = 0;
    for (double mm : each) {
      squares += (mm - mean) * (mm - mean);
    }
    return OptionalDouble.of(Math.sqrt(squares / (each.length - 1)));
  }

  /** Standard deviation between its stands of a line in a plane, mm; empty for one stand. */
  OptionalDouble spreadMm(Plane plane, LoadLineOwner of) {
    return offsets.stream()
        .filter(offset -> offset.at().plane() == plane && offset.of() == of)
        .map(EarlierOffset::spreadMm)
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  /** Whether it tells of a leg. */
  public boolean tellsOf(Side leg) {
    return offsets.stream().anyMatch(offset -> offset.at().side() == leg);
  }

  /** Where the same load line ran past the same landmark then, mm. */
  public OptionalDouble meanMm(LandmarkInPlane at, LoadLineOwner of) {
    return offsets.stream()
        .filter(offset -> offset.at().equals(at) && offset.of() == of)
        .mapToDouble(EarlierOffset::meanMm)
        .findFirst();
  }
}
