package caryatid.exchange;

import caryatid.entry.form.Choices;
import caryatid.format.JsonObjectWriter;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import caryatid.wording.LandmarkWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is observed of an offset: value and uncertainty, tolerance, result, and how it was found.
 */
final class OffsetValue {
  private static final String UNCERTAINTY =
      "http://hl7.org/fhir/StructureDefinition/iso21090-uncertainty";

  private final ToldRecord told;
  private final Wording wording;
  private final LandmarkWords landmarks;

  OffsetValue(ToldRecord told, LandmarkWords landmarks) {
    this.told = told;
    this.wording = told.wording();
    this.landmarks = landmarks;
  }

  /** The members of its observation that others do not have. */
  Fhir.FhirPart members(JudgedOffset offset) {
    return out -> write(out, offset);
  }

  private void write(JsonObjectWriter out, JudgedOffset offset) throws IOException {
    Fhir.object(
        out,
        "valueQuantity",
        quantity -> {
          Fhir.objects(quantity, "extension", uncertainty(offset));
          Fhir.quantity(offset.mm(), Fhir.MM).into(quantity);
        });
    Fhir.objects(
        out,
        "interpretation",
        List.of(
            Fhir.concept(
                Choices.RESULT.code(offset.verdict()),
                Optional.of(wording.word(offset.verdict())))));
    Fhir.object(out, "method", Fhir.concept(offset.method()));
    Optional<Provenance> plate = Devices.plate(told, offset.entry());
    if (plate.isPresent()) {
      Fhir.object(out, "device", Fhir.reference(Devices.urn(plate.get())));
    }
    Fhir.objects(out, "referenceRange", List.of(range(offset)));
    Fhir.objects(out, "component", components(offset));
  }

  private static List<Fhir.FhirPart> uncertainty(JudgedOffset offset) {
    return List.of(
        out -> out.text("url", UNCERTAINTY).number("valueDecimal", offset.standardUncertaintyMm()),
        out -> out.text("url", UNCERTAINTY + "Type").text("valueCode", offset.distribution()));
  }

  private static Fhir.FhirPart range(JudgedOffset offset) {
    return out -> {
      Fhir.object(out, "low", Fhir.quantity(offset.lowestMm(), Fhir.MM));
      Fhir.object(out, "high", Fhir.quantity(offset.highestMm(), Fhir.MM));
      out.text("text", offset.source());
    };
  }

  private static List<Fhir.FhirPart> components(JudgedOffset offset) {
    List<Fhir.FhirPart> all = new ArrayList<>();
    all.add(Observations.coded("plane", Choices.PLANE.code(offset.at().plane())));
    all.add(Observations.coded("side", Choices.SIDE.code(offset.at().side())));
    all.add(
        out -> {
          Fhir.object(out, "code", Fhir.concept("landmark"));
          out.text("valueString", offset.at().landmark());
        });
    offset.line().ifPresent(line -> all.add(Observations.coded("line", line)));
    all.add(counted("recommended-mm", Fhir.quantity(offset.recommendedMm(), Fhir.MM)));
    offset
        .probability()
        .ifPresent(p -> all.add(counted("probability-within", Fhir.quantity(p, "1"))));
    return all;
  }

  private static Fhir.FhirPart counted(String code, Fhir.FhirPart quantity) {
    return out -> {
      Fhir.object(out, "code", Fhir.concept(code));
      Fhir.object(out, "valueQuantity", quantity);
    };
  }

  /** It in words. */
  String sentence(JudgedOffset offset) {
    double lowestMm = Double.parseDouble(offset.lowestMm());
    double highestMm = Double.parseDouble(offset.highestMm());
    return wording.fill(
        "Exchange.offset",
        Argument.text(wording.word(offset.at().plane())),
        Argument.text(wording.word(offset.at().side())),
        Argument.text(landmarks.name(offset.at().landmark(), offset.at().side())),
        Argument.text(wording.signed(offset.estimate().value(), Unit.MM)),
        Argument.text(wording.number(offset.estimate().expanded(Estimate.COVERAGE), Unit.MM)),
        Argument.text(wording.signed(Double.parseDouble(offset.recommendedMm()), Unit.MM)),
        Argument.text(wording.signed(lowestMm, Unit.MM)),
        Argument.text(wording.signed(highestMm, Unit.MM)),
        Argument.text(
            new ResultWords(wording)
                .result(offset.verdict(), offset.estimate().value(), lowestMm, highestMm)));
  }
}
