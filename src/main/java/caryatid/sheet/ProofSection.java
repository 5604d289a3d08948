package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.Measure;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The proof at the end of a plate description. It names the digest of what stands above it, so that
 * it holds for no other description.
 */
final class ProofSection {
  static final String KEY = "proof";

  private static final ValueParser<Double> DEGREES = ValueParsers.numberAbove(0, 1_000_000);
  private static final ValueParser<Double> ANY = ValueParsers.number(-1_000_000, 1_000_000);
  private static final Pattern START = Pattern.compile("(?m)^proof:");
  private static final Pattern SHA_512 = Pattern.compile("[0-9a-f]{128}");

  private ProofSection() {}

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
    Optional<PlateAccuracy> accuracy = accuracy(section);
    List<Optional<Shown>> plates = section.requiredSections("plates", ProofSection::shown);
    List<Optional<Provenance>> recordings =
        section.requiredSections("recordings", ProofSection::recording);
    return section.build(
        () ->
            new PlateProof(
                at.orElseThrow(),
                by.orElseThrow(),
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
    Optional<Measure> scaleRight = measure(section, "scale-right");
    Optional<Measure> scaleAnterior = measure(section, "scale-anterior");
    Optional<Measure> turn = measure(section, "turn-deg");
    Optional<Measure> right = measure(section, "zero-right-mm");
    Optional<Measure> anterior = measure(section, "zero-anterior-mm");
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

  private static Optional<Measure> measure(Section plate, String key) {
    return plate
        .requiredSection(key)
        .flatMap(
            section -> {
              Optional<Double> value = section.required("value", ANY);
              Optional<Double> half = section.required("plus-minus", ValueParsers.number(0, 1e6));
              return section.build(() -> new Measure(value.orElseThrow(), half.orElseThrow()));
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
