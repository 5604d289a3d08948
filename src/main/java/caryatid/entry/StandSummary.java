package caryatid.entry;

import caryatid.loadline.AtLandmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A stand on the plate, in short; its complete result is kept with the entry as a file.
 *
 * @param changed what was changed before it
 * @param why why it was
 * @param footwear in what the wearer stood
 * @param heelHeightMm effective heel height, mm
 * @param kneeMode whether the prosthetic knee was locked, and its mode in words
 * @param bodyMassKg body mass, kg
 * @param bodyMassFrom where that comes from
 * @param loadSharePercent load on the prosthetic side, percent
 * @param findings each offset that was compared with a target
 * @param conclusion what the clinician concludes, in words
 * @param comfort how the wearer felt, in words
 * @param skin how the skin is
 * @param nextStep what is next
 * @param note further remarks
 */
public record StandSummary(
    Optional<String> changed,
    Optional<String> why,
    Optional<String> footwear,
    Optional<BigDecimal> heelHeightMm,
    Optional<TermOrText<KneeLock>> kneeMode,
    Optional<BigDecimal> bodyMassKg,
    Optional<BodyMassSource> bodyMassFrom,
    Optional<BigDecimal> loadSharePercent,
    List<Found> findings,
    Optional<String> conclusion,
    Optional<String> comfort,
    Optional<String> skin,
    Optional<String> nextStep,
    Optional<String> note)
    implements EntryContent {

  /**
   * One offset against one target.
   *
   * @param at the landmark, and the plane it is seen in
   * @param offsetMm the offset, mm, signed as offsets are
   * @param expandedMm half-width of its 95 % interval, mm
   * @param recommendedMm what is recommended, mm
   * @param belowMm tolerance below, mm
   * @param aboveMm tolerance above, mm
   * @param result the result
   * @param source the document that recommends it
   * @param validFor what else the target is valid for: footwear or mode of the knee
   */
  public record Found(
      LandmarkInPlane at,
      BigDecimal offsetMm,
      BigDecimal expandedMm,
      BigDecimal recommendedMm,
      BigDecimal belowMm,
      BigDecimal aboveMm,
      Verdict result,
      String source,
      Optional<TermOrText<KneeLock>> validFor)
      implements AtLandmark {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Found {
      Range.OFFSET_MM.require(offsetMm);
      Range.HEIGHT_MM.require(expandedMm);
      Range.OFFSET_MM.require(recommendedMm);
      Range.HEIGHT_MM.require(belowMm);
      Range.HEIGHT_MM.require(aboveMm);
    }
  }

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public StandSummary {
    findings = List.copyOf(findings);
    Range.EFFECTIVE_HEEL_MM.require(heelHeightMm);
    Range.BODY_MASS_KG.require(bodyMassKg);
    Range.PERCENT.require(loadSharePercent);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.STAND;
  }
}
