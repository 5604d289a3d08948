package caryatid.exchange;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.entry.form.Choices;
import caryatid.format.JsonObjectWriter;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.views.CurrentComponent;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;

/** The components of the prosthesis with their makers' limits, and the plates stood on. */
final class Devices {
  private static final String TYPE = "Device";

  private final ToldRecord told;

  Devices(ToldRecord told) {
    this.told = told;
  }

  /** The components that are fitted now, and the plates of all stands. */
  List<BundledResource> all() {
    List<BundledResource> all = new ArrayList<>();
    for (ComponentLimits component : components(told)) {
      all.add(
          BundledResource.once(
              TYPE, Fhir.IDENTIFIERS, identity(told, component), out -> component(out, component)));
    }
    Map<String, Provenance> plates = new LinkedHashMap<>();
    for (Entry entry : told.record().entries()) {
      plate(told, entry).ifPresent(plate -> plates.put(plate.sha512(), plate));
    }
    for (Provenance plate : plates.values()) {
      all.add(
          BundledResource.once(
              TYPE, Fhir.IDENTIFIERS, plateIdentity(plate), out -> plate(out, plate)));
    }
    return all;
  }

  static List<ComponentLimits> components(ToldRecord told) {
    return CurrentComponent.of(told.record().valid()).stream()
        .map(CurrentComponent::limits)
        .distinct()
        .toList();
  }

  /** By what a component is referred to. */
  static String urn(ToldRecord told, ComponentLimits component) {
    return BundledResource.urn(TYPE, identity(told, component));
  }

  /** By what a plate is referred to. */
  static String urn(Provenance plate) {
    return BundledResource.urn(TYPE, plateIdentity(plate));
  }

  /** The description of the plate that a stand's recordings were read by. */
  static Optional<Provenance> plate(ToldRecord told, Entry entry) {
    return Optional.ofNullable(told.states().get(entry.number()))
        .map(AlignmentState::stands)
        .flatMap(stands -> stands.stream().map(Stand::description).findFirst())
        .flatMap(description -> description);
  }

  /** One with other limits, another name or serial number is another one. */
  private static String identity(ToldRecord told, ComponentLimits component) {
    byte[] said = component.toString().getBytes(StandardCharsets.UTF_8);
    return told.identity("component." + UUID.nameUUIDFromBytes(said));
  }

  private static String plateIdentity(Provenance plate) {
    return Sha512.name(plate.sha512());
  }

  private void component(JsonObjectWriter out, ComponentLimits component) throws IOException {
    String what =
        told.wording()
            .fill(
                "Exchange.component",
                Argument.text(component.what()),
                Argument.text(component.name()));
    Fhir.object(out, "meta", Fhir.profile("component"));
    head(out, identity(told, component), what);
    out.text("serialNumber", component.serial());
    named(out, component.name());
    Fhir.object(out, "type", Fhir.concept("component", Optional.of(component.what())));
    Fhir.object(out, "patient", Fhir.reference(told.patient()));
    Fhir.objects(out, "property", properties(component));
    if (component.source().isPresent()) {
      Fhir.objects(out, "note", List.of(note -> note.text("text", component.source())));
    }
  }

  private void plate(JsonObjectWriter out, Provenance plate) throws IOException {
    String what = told.wording().fill("Exchange.plate", Argument.text(plate.name()));
    head(out, plateIdentity(plate), what);
    named(out, plate.name());
    Fhir.object(
        out,
        "type",
        Fhir.concept("force-plate", Optional.of(told.wording().word("Exchange.code.force-plate"))));
  }

  private void head(JsonObjectWriter out, String identity, String sentence) throws IOException {
    Fhir.words(out, told.language(), sentence);
    Fhir.objects(out, "identifier", List.of(Fhir.identifier(Fhir.IDENTIFIERS, identity)));
    out.text("status", "active");
  }

  private static void named(JsonObjectWriter out, String name) throws IOException {
    Fhir.FhirPart deviceName = each -> each.text("name", name).text("type", "user-friendly-name");
    Fhir.objects(out, "deviceName", List.of(deviceName));
  }

  private static List<Fhir.FhirPart> properties(ComponentLimits component) {
    List<Fhir.FhirPart> all = new ArrayList<>();
    component.side().map(Choices.SIDE::code).ifPresent(side -> all.add(coded("side", side)));
    component
        .ankleAxis()
        .ifPresent(axis -> all.add(coded("ankle-axis", Boolean.TRUE.equals(axis) ? "yes" : "no")));
    counted("body-mass-highest-kg", component.bodyMassHighestKg(), "kg", all);
    counted("mobility-grade-lowest", decimal(component.mobilityGradeLowest()), "1", all);
    counted("mobility-grade-highest", decimal(component.mobilityGradeHighest()), "1", all);
    counted("heel-height-lowest-mm", component.heelHeightLowestMm(), Fhir.MM, all);
    counted("heel-height-highest-mm", component.heelHeightHighestMm(), Fhir.MM, all);
    return all;
  }

  private static Optional<BigDecimal> decimal(OptionalInt number) {
    return number.isPresent()
        ? Optional.of(BigDecimal.valueOf(number.getAsInt()))
        : Optional.empty();
  }

  private static Fhir.FhirPart coded(String code, String value) {
    return out -> {
      Fhir.object(out, "type", Fhir.concept(code));
      Fhir.objects(out, "valueCode", List.of(Fhir.concept(value)));
    };
  }

  private static void counted(
      String code, Optional<BigDecimal> number, String unit, List<Fhir.FhirPart> all) {
    number.ifPresent(
        value ->
            all.add(
                out -> {
                  Fhir.object(out, "type", Fhir.concept(code));
                  Fhir.objects(
                      out, "valueQuantity", List.of(Fhir.quantity(value.toPlainString(), unit)));
                }));
  }
}
