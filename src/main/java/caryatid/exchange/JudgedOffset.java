package caryatid.exchange;

import caryatid.entry.Entry;
import caryatid.entry.StandSummary;
import caryatid.fitting.TypedFindings;
import caryatid.format.JsonNumber;
import caryatid.format.ResultSpellings;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import caryatid.uncertainty.Estimate;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An offset against its target, its numbers with the digits of the result that is kept with its
 * stand; of a typed stand, with those that were typed.
 *
 * @param entry the stand
 * @param index its place among the stand's findings, from 1
 * @param at the landmark, and the plane it is seen in
 * @param mm the offset, mm
 * @param estimate the same with its uncertainty
 * @param recommendedMm what is recommended, mm
 * @param lowestMm the smallest offset within the tolerance, mm
 * @param highestMm the largest one, mm
 * @param verdict the result
 * @param source the document that recommends it
 * @param probability probability that the true offset is within; empty for a typed stand
 * @param line whose load line it is; empty for a typed stand
 * @param method how the load line was found, or that it was typed
 */
record JudgedOffset(
    Entry entry,
    int index,
    LandmarkInPlane at,
    String mm,
    Estimate estimate,
    String recommendedMm,
    String lowestMm,
    String highestMm,
    Verdict verdict,
    String source,
    Optional<String> probability,
    Optional<String> line,
    String method) {
  private static final String TYPED = "typed";

  /** The findings of a stand. */
  static List<JudgedOffset> of(Entry entry, ToldRecord told) {
    if (told.states().containsKey(entry.number())) {
      List<Finding> findings = told.states().get(entry.number()).findings();
      return IntStream.range(0, findings.size())
          .mapToObj(i -> of(entry, i + 1, findings.get(i)))
          .toList();
    }
    List<StandSummary.Found> findings =
        entry.content(StandSummary.class).map(StandSummary::findings).orElse(List.of());
    return IntStream.range(0, findings.size())
        .mapToObj(i -> of(entry, i + 1, findings.get(i)))
        .toList();
  }

  private static JudgedOffset of(Entry entry, int index, Finding finding) {
    BigDecimal recommendedMm = decimal(finding.target().recommendedMm());
    return new JudgedOffset(
        entry,
        index,
        finding.offset().at(),
        JsonNumber.of(finding.offset().mm().value()),
        finding.offset().mm(),
        digits(recommendedMm),
        digits(recommendedMm.subtract(decimal(finding.target().belowMm()))),
        digits(recommendedMm.add(decimal(finding.target().aboveMm()))),
        finding.verdict(),
        finding.target().source(),
        Optional.of(JsonNumber.of(finding.probabilityWithin())),
        Optional.of(ResultSpellings.line(finding.offset().of())),
        ResultSpellings.method(finding.offset().kind()));
  }

  private static JudgedOffset of(Entry entry, int index, StandSummary.Found found) {
    return new JudgedOffset(
        entry,
        index,
        found.at(),
        digits(found.offsetMm()),
        TypedFindings.offset(found),
        digits(found.recommendedMm()),
        digits(found.recommendedMm().subtract(found.belowMm())),
        digits(found.recommendedMm().add(found.aboveMm())),
        found.result(),
        found.source(),
        Optional.empty(),
        Optional.empty(),
        TYPED);
  }

  String standardUncertaintyMm() {
    return JsonNumber.of(estimate.standardUncertainty());
  }

  /** The distribution: normal where no source of uncertainty has finite degrees of freedom. */
  String distribution() {
    return estimate.degreesOfFreedom() == Double.POSITIVE_INFINITY ? "N" : "T";
  }

  private static BigDecimal decimal(double value) {
    return new BigDecimal(JsonNumber.of(value));
  }

  private static String digits(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
