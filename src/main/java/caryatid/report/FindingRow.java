package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Verdict;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.TrialSheet;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A recommended offset of one state among those of many: what a table of them shows.
 *
 * @param state the state's name
 * @param wearer the wearer's code
 * @param at when the wearer stood
 * @param level level of amputation
 * @param heelMm heel height of what was worn, mm
 * @param stands how many stands the state has
 * @param usedS how much of them is used, together, s
 * @param plane of the offset
 * @param side of the landmark
 * @param landmark kind of the landmark
 * @param landmarkName the landmark as the sheet calls it
 * @param line whose load line
 * @param offset with its uncertainty, mm
 * @param recommendedMm the recommended offset, mm
 * @param lowestMm lowest tolerated, mm
 * @param highestMm highest tolerated, mm
 * @param probabilityWithin that the offset lies within the tolerance
 * @param verdict whether it is met
 * @param undecidable whether it is open because the tolerance is too narrow for this measurement
 * @param unsafe codes of the state's remarks on what is unsafe
 * @param source where the recommendation is from
 * @param unusual whether the offset is unusual among those of many states; empty if it was not
 *     compared, or with too few
 */
public record FindingRow(
    String state,
    String wearer,
    OffsetDateTime at,
    AmputationLevel level,
    double heelMm,
    int stands,
    double usedS,
    Plane plane,
    Side side,
    LandmarkKind landmark,
    String landmarkName,
    LoadLineOwner line,
    Estimate offset,
    double recommendedMm,
    double lowestMm,
    double highestMm,
    double probabilityWithin,
    Verdict verdict,
    boolean undecidable,
    List<String> unsafe,
    String source,
    Optional<Boolean> unusual) {
  public FindingRow {
    unsafe = List.copyOf(unsafe);
  }

  /** The findings of a result, in their order. */
  public static List<FindingRow> of(String state, Result result) {
    return result.state().findings().stream().map(f -> of(state, result.state(), f)).toList();
  }

  private static FindingRow of(String name, AlignmentState state, Finding finding) {
    TrialSheet trial = state.stands().get(0).trial();
    var offset = finding.offset();
    var target = finding.target();
    return new FindingRow(
        name,
        trial.wearer(),
        trial.at(),
        trial.level(),
        trial.footwear().heelHeightMm(),
        state.stands().size(),
        state.stands().stream().mapToDouble(FindingRow::usedS).sum(),
        offset.plane(),
        offset.side(),
        kind(state, finding),
        offset.landmark(),
        offset.of(),
        offset.mm(),
        target.recommendedMm(),
        target.lowestMm(),
        target.highestMm(),
        finding.probabilityWithin(),
        finding.verdict(),
        finding.undecidable(),
        unsafe(state),
        target.source(),
        Optional.empty());
  }

  private static double usedS(Stand stand) {
    return stand.standing().stretch().toS() - stand.standing().stretch().fromS();
  }

  FindingRow compared(Optional<Boolean> unusual) {
    return new FindingRow(
        state,
        wearer,
        at,
        level,
        heelMm,
        stands,
        usedS,
        plane,
        side,
        landmark,
        landmarkName,
        line,
        offset,
        recommendedMm,
        lowestMm,
        highestMm,
        probabilityWithin,
        verdict,
        undecidable,
        unsafe,
        source,
        unusual);
  }

  private static List<String> unsafe(AlignmentState state) {
    return GroupedRemark.of(state).stream()
        .map(said -> said.remark().topic())
        .filter(topic -> topic.weight() == Weight.SAFETY)
        .map(Topic::code)
        .distinct()
        .toList();
  }

  private static LandmarkKind kind(AlignmentState state, Finding finding) {
    return state.stands().get(0).landmarks().stream()
        .filter(l -> l.name().equals(finding.offset().landmark()))
        .map(l -> l.kind())
        .findFirst()
        .orElse(LandmarkKind.OTHER);
  }

  /** Half the width of the 95 % interval, mm. */
  double expandedMm() {
    return offset.expanded(Estimate.COVERAGE);
  }

  boolean isUnusual() {
    return unusual.orElse(false);
  }

  /** Half the width of the tolerance, mm. */
  double toleranceMm() {
    return (highestMm - lowestMm) / 2;
  }

  /** The cause with the largest share in the variance; empty if nothing is uncertain. */
  Optional<Cause> largest() {
    Map<Cause, Double> shares = new EnumMap<>(Cause.class);
    for (Contribution part : offset.contributions()) {
      shares.merge(part.source().cause(), part.amount() * part.amount(), Double::sum);
    }
    return shares.entrySet().stream()
        .filter(share -> share.getValue() > 0)
        .max(Comparator.comparingDouble(Map.Entry::getValue))
        .map(Map.Entry::getKey);
  }
}
