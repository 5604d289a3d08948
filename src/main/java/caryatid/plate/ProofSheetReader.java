package caryatid.plate;

import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what was done to prove a plate (YAML). */
public final class ProofSheetReader {
  private static final String KIND = "plate-proof";

  /**
   * Where nothing is stated: a mass on a shop's or a clinic's scales (common practice, no source).
   */
  private static final double WEIGHT_PERCENT = 0.2;

  /** Where nothing is stated (common practice, no source). */
  private static final double BODY_KG = 80;

  private static final ValueParser<Double> PLACE_MM = ValueParsers.number(-2_000, 2_000);

  private ProofSheetReader() {}

  /**
   * Reads it.
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static ProofSheet read(NamedBytes yaml) throws BadInput {
    return Section.read(yaml, KIND, ProofSheetReader::sheet);
  }

  private static Optional<ProofSheet> sheet(Section root) {
    Optional<OffsetDateTime> at = root.required("at", ValueParsers.TIME);
    Optional<String> by = root.required("by", ValueParsers.TEXT);
    Optional<ProofDoubts> doubts = doubts(root);
    List<Optional<ProofSheet.PlacedWeight>> weights =
        root.requiredSections("weights", ProofSheetReader::weight);
    Optional<ProofSheet.Person> person =
        root.requiredSection("person").flatMap(ProofSheetReader::person);
    return root.build(
        () ->
            new ProofSheet(
                at.orElseThrow(),
                by.orElseThrow(),
                doubts.orElseThrow(),
                weights.stream().flatMap(Optional::stream).toList(),
                person.orElseThrow()));
  }

  private static Optional<ProofDoubts> doubts(Section root) {
    Optional<Double> place = root.required("place-mm", ValueParsers.number(0.1, 50));
    double weight =
        root.optional("weight-percent", ValueParsers.number(0, 10)).orElse(WEIGHT_PERCENT);
    double body = root.optional("body-load-kg", ValueParsers.number(10, 300)).orElse(BODY_KG);
    List<Double> level = root.list("level-deg", ValueParsers.number(-10, 10));
    return place.map(
        mm ->
            new ProofDoubts(mm, weight / 100, body, level.stream().map(Math::toRadians).toList()));
  }

  private static Optional<ProofSheet.PlacedWeight> weight(Section section) {
    Optional<String> recording = section.required("recording", ValueParsers.TEXT);
    Optional<Double> right = section.required("right-mm", PLACE_MM);
    Optional<Double> anterior = section.required("anterior-mm", PLACE_MM);
    Optional<Double> kg = section.required("kg", ValueParsers.number(3, 300));
    return section.build(
        () ->
            new ProofSheet.PlacedWeight(
                recording.orElseThrow(),
                right.orElseThrow(),
                anterior.orElseThrow(),
                kg.orElseThrow()));
  }

  private static Optional<ProofSheet.Person> person(Section section) {
    Optional<String> standing = section.required("standing", ValueParsers.TEXT);
    Optional<String> forward = section.required("leaning-forward", ValueParsers.TEXT);
    Optional<String> oneFoot = section.required("one-foot", ValueParsers.TEXT);
    Optional<Side> foot = section.required("foot", ValueParsers.word(Side.class));
    Optional<Double> kg = section.optional("body-mass-kg", ValueParsers.number(10, 300));
    return section.build(
        () ->
            new ProofSheet.Person(
                standing.orElseThrow(),
                forward.orElseThrow(),
                oneFoot.orElseThrow(),
                foot.orElseThrow(),
                kg.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
  }
}
