package caryatid.exchange;

import caryatid.format.Json;
import caryatid.format.JsonObjectWriter;
import caryatid.views.RecordView;
import caryatid.wording.LandmarkWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A record as one transaction bundle of HL7 FHIR R4 (4.0.1): the patient, the report, each finding,
 * the components, the sessions and where it comes from. The same record gives the same bytes.
 */
final class RecordBundle {
  private static final String PATIENT = "Patient";

  private RecordBundle() {}

  /** The patient as a bundle has it: nothing but the identifier. */
  static BundledResource patient(PatientIdentifier who) {
    return BundledResource.once(
        PATIENT,
        who.system(),
        who.value(),
        out ->
            Fhir.objects(out, "identifier", List.of(Fhir.identifier(who.system(), who.value()))));
  }

  /**
   * The bundle as UTF-8 JSON, indented, with a line end at its end.
   *
   * @param pdf the record's report
   */
  static byte[] bytes(ToldRecord told, PatientIdentifier who, byte[] pdf) {
    List<BundledResource> resources = resources(told, who, pdf);
    try {
      return Json.write(json -> new JsonObjectWriter(json).members(resources, RecordBundle::write));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<BundledResource> resources(
      ToldRecord told, PatientIdentifier who, byte[] pdf) {
    List<BundledResource> sources = new ArrayList<>();
    sources.add(new ReportDocument(told, pdf).resource());
    sources.addAll(new Sessions(told).all());
    LandmarkWords landmarks = LandmarkWords.of(RecordView.of(told.record()), told.wording());
    sources.addAll(new Observations(told, landmarks).all());
    List<String> targets = sources.stream().map(BundledResource::fullUrl).toList();
    List<BundledResource> all = new ArrayList<>();
    all.add(patient(who));
    all.addAll(new Devices(told).all());
    all.addAll(sources);
    all.add(new RecordProvenance(told, targets).resource());
    return all;
  }

  private static void write(List<BundledResource> resources, JsonObjectWriter out)
      throws IOException {
    out.text("resourceType", "Bundle").text("type", "transaction");
    out.list("entry", resources, RecordBundle::write);
  }

  private static void write(BundledResource resource, JsonObjectWriter out) throws IOException {
    out.text("fullUrl", resource.fullUrl());
    Fhir.object(
        out,
        "resource",
        members -> {
          members.text("resourceType", resource.type());
          resource.content().into(members);
        });
    Fhir.object(
        out,
        "request",
        request ->
            request
                .text("method", resource.method())
                .text("url", resource.url())
                .text("ifNoneExist", resource.ifNoneExist()));
  }
}
