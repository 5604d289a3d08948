package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.KneeLock;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.loadline.AtLandmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One offset from stand to stand.
 *
 * @param at the landmark, and the plane it is seen in
 * @param measured at least one, in order of time
 */
public record OffsetSeries(LandmarkInPlane at, List<Measured> measured) implements AtLandmark {

  /**
   * What one stand found.
   *
   * @param entry number of the stand's entry
   * @param typed whether somebody typed it: there is no recording
   * @param at when the wearer stood so
   * @param offsetMm the offset, mm, signed as offsets are
   * @param expandedMm half-width of its 95 % interval, mm
   * @param lowestMm the smallest offset that was within, mm
   * @param recommendedMm what was recommended, mm
   * @param highestMm the largest offset that was within, mm
   * @param verdict the result
   * @param source the document the recommendation comes from
   * @param validFor what else the recommendation is valid for: footwear or mode of the knee
   * @param footwear in what the wearer stood, in the clinician's words
   */
  public record Measured(
      int entry,
      boolean typed,
      OffsetDateTime at,
      double offsetMm,
      double expandedMm,
      double lowestMm,
      double recommendedMm,
      double highestMm,
      Verdict verdict,
      String source,
      Optional<TermOrText<KneeLock>> validFor,
      Optional<String> footwear) {

    /** The entry and the footwear, as lists name a stand: {@code 17, walking shoe}. */
    public String stand() {
      return entry + footwear.map(shoe -> ", " + shoe.strip()).orElse("");
    }
  }

  public OffsetSeries {
    measured = List.copyOf(measured);
  }

  /** The latest of them in each footwear, in order of time: a result holds for one footwear. */
  public List<Measured> current() {
    Map<String, Measured> latest = new LinkedHashMap<>();
    for (Measured m : measured) {
      String shoe = m.footwear().map(TermOrText::fold).orElse("");
      latest.remove(shoe);
      latest.put(shoe, m);
    }
    return List.copyOf(latest.values());
  }

  /** The same series, and what came later. */
  OffsetSeries with(OffsetSeries later) {
    List<Measured> both = new ArrayList<>(measured);
    both.addAll(later.measured);
    return new OffsetSeries(at, both);
  }

  /** What a finding has in common with the others of its series, however its name is written. */
  static LandmarkInPlane key(LandmarkInPlane found) {
    return new LandmarkInPlane(found.plane(), found.side(), TermOrText.fold(found.landmark()));
  }

  static Measured measured(Entry entry, OffsetDateTime at, StandSummary.Found found) {
    double recommended = found.recommendedMm().doubleValue();
    return new Measured(
        entry.number(),
        entry.isTyped(),
        at,
        found.offsetMm().doubleValue(),
        found.expandedMm().doubleValue(),
        recommended - found.belowMm().doubleValue(),
        recommended,
        recommended + found.aboveMm().doubleValue(),
        found.result(),
        found.source(),
        found.validFor(),
        entry.content(StandSummary.class).flatMap(StandSummary::footwear));
  }
}
