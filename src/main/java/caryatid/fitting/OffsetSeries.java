package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Verdict;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How one offset went from stand to stand.
 *
 * @param plane in which plane
 * @param side the leg
 * @param landmark the landmark's name
 * @param measured at least one, in order of time
 */
public record OffsetSeries(Plane plane, Side side, String landmark, List<Measured> measured) {

  /**
   * What one stand found.
   *
   * @param entry number of the stand's entry
   * @param at when the wearer stood so
   * @param offsetMm the offset, mm, signed as offsets are
   * @param expandedMm half-width of its 95 % interval, mm
   * @param lowestMm the smallest offset that was within, mm
   * @param recommendedMm what was recommended, mm
   * @param highestMm the largest offset that was within, mm
   * @param verdict the result
   * @param source the document the recommendation comes from
   * @param validFor what else the recommendation is valid for, in the clinician's words
   * @param footwear in what the wearer stood, in the clinician's words
   */
  public record Measured(
      int entry,
      OffsetDateTime at,
      double offsetMm,
      double expandedMm,
      double lowestMm,
      double recommendedMm,
      double highestMm,
      Verdict verdict,
      String source,
      Optional<String> validFor,
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
      String shoe = m.footwear().map(s -> s.strip().toLowerCase(Locale.ROOT)).orElse("");
      latest.remove(shoe);
      latest.put(shoe, m);
    }
    return List.copyOf(latest.values());
  }

  static List<String> key(Answers finding) {
    return List.of(
        finding.words("plane").orElseThrow(),
        finding.words("side").orElseThrow(),
        finding.words("landmark").orElseThrow());
  }

  static OffsetSeries of(List<String> key, List<Measured> measured) {
    return new OffsetSeries(
        constant(Plane.values(), key.get(0)),
        constant(Side.values(), key.get(1)),
        key.get(2),
        measured);
  }

  static Measured measured(Entry entry, OffsetDateTime at, Answers finding) {
    double recommended = number(finding, "recommended-mm");
    return new Measured(
        entry.number(),
        at,
        number(finding, "offset-mm"),
        number(finding, "expanded-mm"),
        recommended - number(finding, "below-mm"),
        recommended,
        recommended + number(finding, "above-mm"),
        constant(Verdict.values(), finding.words("result").orElseThrow()),
        finding.words("source").orElseThrow(),
        finding.words("valid-for"),
        entry.content().words("footwear"));
  }

  private static double number(Answers finding, String key) {
    return finding.number(key).orElseThrow().doubleValue();
  }

  private static <E extends Enum<E>> E constant(E[] all, String word) {
    return Arrays.stream(all).filter(e -> Field.word(e).equals(word)).findFirst().orElseThrow();
  }
}
