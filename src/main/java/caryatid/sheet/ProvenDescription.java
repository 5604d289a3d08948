package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.MeasuredValue;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The proof at the end of a plate description, read and written. It names the digest of what stands
 * above it, so that it holds for no other description.
 */
public final class ProvenDescription {
  static final String KEY = "proof";

  private static final ValueParser<Double> DEGREES = ValueParsers.numberAbove(0, 1_000_000);
  private static final ValueParser<Double> ANY = ValueParsers.number(-1_000_000, 1_000_000);
  private static final Pattern START = Pattern.compile("(?m)^proof:");
  private static final Pattern SHA_512 = Pattern.compile("[0-9a-f]{128}");

  /** Digits of what was measured; more say nothing. */
  private static final MathContext DIGITS = new MathContext(5);

  private ProvenDescription() {}

  /** The description's bytes with the proof at their end, in place of one that stood there. */
  public static byte[] with(byte[] description, PlateProof proof) {
    String above = above(new String(description, UTF_8));
    StringBuilder text = new StringBuilder(above);
    text.append(KEY).append(":\n");
    line(text, "at: " + proof.at());
    line(text, "by: " + YamlWords.text(proof.by()));
    line(text, "description-sha512: " + YamlWords.text(digest(above)));
    line(text, "weight-kg: " + number(proof.weightKg()));
    line(text, "body-load-kg: " + number(proof.bodyKg()));
    line(text, "accuracy: {" + YamlWords.flow(accuracy(proof.accuracy())) + "}");
    line(text, "plates:");
    proof.plates().forEach(plate -> shown(text, plate));
    line(text, "recordings:");
    proof.recordings().forEach(recording -> recording(text, recording));
    return text.toString().getBytes(UTF_8);
  }

  /** Whether two texts are the same description, whatever their proofs. */
  public static boolean isOf(String one, String other) {
    return above(one).equals(above(other));
  }

  private static void line(StringBuilder text, String line) {
    text.append("  ").append(line).append('\n');
  }

  private static Map<String, String> accuracy(PlateAccuracy accuracy) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("cop-mm", number(accuracy.copMm()));
    values.put("cop-degrees-of-freedom", number(accuracy.degrees().cop()));
    values.put("level-deg", number(Math.toDegrees(accuracy.levelRad())));
    values.put("level-degrees-of-freedom", number(accuracy.degrees().level()));
    values.put("force-percent", number(accuracy.forceFraction() * 100));
    values.put("force-degrees-of-freedom", number(accuracy.degrees().force()));
    values.put("lean-deg", number(Math.toDegrees(accuracy.leanRad())));
    values.put("lean-degrees-of-freedom", number(accuracy.degrees().lean()));
    return values;
  }

  private static void shown(StringBuilder text, Shown plate) {
    line(text, "  - name: " + YamlWords.text(plate.name()));
    line(text, "    marks: " + plate.marks());
    measure(text, "scale-right", plate.scaleRight());
    measure(text, "scale-anterior", plate.scaleAnterior());
    measure(text, "turn-deg", plate.turnDeg());
    measure(text, "zero-right-mm", plate.zeroRightMm());
    measure(text, "zero-anterior-mm", plate.zeroAnteriorMm());
  }

  private static void measure(StringBuilder text, String key, MeasuredValue measure) {
    line(
        text,
        "    "
            + key
            + ": {value: "
            + number(measure.value())
            + ", plus-minus: "
            + number(measure.halfWidth())
            + "}");
  }

  private static void recording(StringBuilder text, Provenance recording) {
    line(text, "  - name: " + YamlWords.text(recording.name()));
    line(text, "    bytes: " + recording.bytes());
    line(text, "    sha512: '" + recording.sha512() + "'");
  }

  private static String number(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** A description's text without its proof, as the digest is made of it. */
  static String above(String text) {
    Matcher start = START.matcher(text);
    String above = start.find() ? text.substring(0, start.start()) : text;
    return above.lines().map(String::stripTrailing).reduce("", (all, line) -> all + line + "\n");
  }

  /** The digest of a description's text without its proof. */
  static String digest(String text) {
    try {
      return Provenance.of(NamedBytes.of("", above(text).getBytes(UTF_8))).sha512();
    } catch (BadInput e) {
      throw new IllegalArgumentException("bytes that cannot be read", e);
    }
  }

  /**
   * The proof.
   *
   * @param yaml the whole description
   */
  static Optional<PlateProof> proof(Section section, NamedBytes yaml) {
    Optional<OffsetDateTime> at = section.required("at", ValueParsers.TIME);
    Optional<String> by = section.required("by", ValueParsers.TEXT);
    Optional<String> of = section.required("description-sha512", ValueParsers.TEXT);
    of.filter(digest -> isOther(digest, section, yaml))
        .ifPresent(
            digest ->
                section.refuse(
                    section.place("description-sha512"), DescriptionProblem.PROOF_OF_ANOTHER));
    Optional<Double> weight = section.required("weight-kg", ValueParsers.numberAbove(0, 1000));
    Optional<Double> body = section.required("body-load-kg", ValueParsers.numberAbove(0, 1000));
    Optional<PlateAccuracy> accuracy = accuracy(section);
    List<Optional<Shown>> plates = section.requiredSections("plates", ProvenDescription::shown);
    List<Optional<Provenance>> recordings =
        section.requiredSections("recordings", ProvenDescription::recording);
    return section.build(
        () ->
            new PlateProof(
                at.orElseThrow(),
                by.orElseThrow(),
                weight.orElseThrow(),
                body.orElseThrow(),
                accuracy.orElseThrow(),
                plates.stream().flatMap(Optional::stream).toList(),
                recordings.stream().flatMap(Optional::stream).toList()));
  }

  private static boolean isOther(String digest, Section section, NamedBytes yaml) {
    try {
      return !digest.equals(digest(new String(yaml.readAll(), UTF_8)));
    } catch (BadInput e) {
      section.refuse(e);
      return false;
    }
  }

  private static Optional<PlateAccuracy> accuracy(Section root) {
    Optional<Section> section = root.requiredSection("accuracy");
    return section.flatMap(
        s -> {
          Optional<Double> cop = s.required("cop-degrees-of-freedom", DEGREES);
          Optional<Double> level = s.required("level-degrees-of-freedom", DEGREES);
          Optional<Double> force = s.required("force-degrees-of-freedom", DEGREES);
          Optional<Double> lean = s.required("lean-degrees-of-freedom", DEGREES);
          return DescriptionReader.accuracy(s)
              .map(
                  accuracy ->
                      accuracy.knownTo(
                          new PlateAccuracy.Degrees(
                              cop.orElseThrow(),
                              level.orElseThrow(),
                              force.orElseThrow(),
                              lean.orElseThrow())));
        });
  }

  private static Optional<Shown> shown(Section section) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<Integer> marks = section.required("marks", ValueParsers.whole(1, 1000));
    Optional<MeasuredValue> scaleRight = measure(section, "scale-right");
    Optional<MeasuredValue> scaleAnterior = measure(section, "scale-anterior");
    Optional<MeasuredValue> turn = measure(section, "turn-deg");
    Optional<MeasuredValue> right = measure(section, "zero-right-mm");
    Optional<MeasuredValue> anterior = measure(section, "zero-anterior-mm");
    return section.build(
        () ->
            new Shown(
                name.orElseThrow(),
                marks.orElseThrow(),
                scaleRight.orElseThrow(),
                scaleAnterior.orElseThrow(),
                turn.orElseThrow(),
                right.orElseThrow(),
                anterior.orElseThrow()));
  }

  private static Optional<MeasuredValue> measure(Section plate, String key) {
    return plate
        .requiredSection(key)
        .flatMap(
            section -> {
              Optional<Double> value = section.required("value", ANY);
              Optional<Double> half = section.required("plus-minus", ValueParsers.number(0, 1e6));
              return section.build(
                  () -> new MeasuredValue(value.orElseThrow(), half.orElseThrow()));
            });
  }

  private static Optional<Provenance> recording(Section section) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<Integer> bytes = section.required("bytes", ValueParsers.whole(0, 999_999_999));
    Optional<String> sha =
        section
            .required("sha512", ValueParsers.TEXT)
            .filter(
                text -> {
                  boolean fine = SHA_512.matcher(text).matches();
                  if (!fine) {
                    section.refuse(section.place("sha512"), DescriptionProblem.NO_DIGEST);
                  }
                  return fine;
                });
    return section.build(
        () -> new Provenance(name.orElseThrow(), bytes.orElseThrow(), sha.orElseThrow()));
  }
}
