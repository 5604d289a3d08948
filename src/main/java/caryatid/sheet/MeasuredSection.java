package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the clinic measured of its own hands, as a trial sheet holds it: it counts for each landmark
 * whose marking the sheet does not state, and for the turn if the sheet does not state it.
 *
 * @param marking of one mark, mm
 * @param turn of the feet on the plate, degrees
 */
public record MeasuredSection(Optional<KnownTo> marking, Optional<KnownTo> turn) {
  static final String KEY = "measured";

  /** Nothing was measured. */
  static final MeasuredSection NONE = new MeasuredSection(Optional.empty(), Optional.empty());

  private static final Pattern THERE = Pattern.compile("(?m)^" + KEY + ":");
  private static final ValueParser<Double> DEGREES = ValueParsers.numberAbove(0, 1_000_000);

  /**
   * A standard uncertainty that was measured.
   *
   * @param value in its own unit, not negative
   * @param degreesOfFreedom above 0
   */
  public record KnownTo(double value, double degreesOfFreedom) {
    /**
     * @throws IllegalArgumentException if a number is out of its range
     */
    public KnownTo {
      if (!(value >= 0) || !(degreesOfFreedom > 0)) {
        throw new IllegalArgumentException(value + ", " + degreesOfFreedom);
      }
    }
  }

  static MeasuredSection in(Section root) {
    return root.optionalSection(KEY).flatMap(MeasuredSection::read).orElse(NONE);
  }

  private static Optional<MeasuredSection> read(Section section) {
    Optional<KnownTo> marking = known(section, "marking-mm", "marking-degrees-of-freedom", 100);
    Optional<KnownTo> turn = known(section, "turn-deg", "turn-degrees-of-freedom", 45);
    return section.build(() -> new MeasuredSection(marking, turn));
  }

  private static Optional<KnownTo> known(
      Section section, String key, String degreesKey, double most) {
    if (!section.has(key) && !section.has(degreesKey)) {
      return Optional.empty();
    }
    Optional<Double> value = section.required(key, ValueParsers.number(0, most));
    Optional<Double> degrees = section.required(degreesKey, DEGREES);
    return value.flatMap(v -> degrees.map(d -> new KnownTo(v, d)));
  }

  /** A sheet's bytes with this at their end, unless the sheet has such a section. */
  public byte[] into(byte[] sheet) {
    Map<String, String> values = new LinkedHashMap<>();
    marking.ifPresent(
        known -> {
          values.put("marking-mm", number(known.value()));
          values.put("marking-degrees-of-freedom", number(known.degreesOfFreedom()));
        });
    turn.ifPresent(
        known -> {
          values.put("turn-deg", number(known.value()));
          values.put("turn-degrees-of-freedom", number(known.degreesOfFreedom()));
        });
    String text = new String(sheet, UTF_8);
    if (values.isEmpty() || THERE.matcher(text).find()) {
      return sheet.clone();
    }
    String end = text.endsWith("\n") ? "" : "\n";
    return (text + end + KEY + ": {" + YamlWords.flow(values) + "}\n").getBytes(UTF_8);
  }

  private static String number(double value) {
    return YamlWords.number(new BigDecimal(value).round(new MathContext(5)).doubleValue());
  }
}
