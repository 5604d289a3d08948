package caryatid.exchange;

import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.format.JsonObjectWriter;
import caryatid.remark.Argument;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The fitting sessions: each day on which something was done or measured. */
final class Sessions {
  private static final String TYPE = "Procedure";
  private static final String CODE = "fitting-session";

  private final ToldRecord told;

  Sessions(ToldRecord told) {
    this.told = told;
  }

  /** One for each day, the earliest first. A day that goes on renews its own. */
  List<BundledResource> all() {
    Map<LocalDate, List<Entry>> days =
        told.work().stream()
            .collect(
                Collectors.groupingBy(
                    entry -> day(told, entry), TreeMap::new, Collectors.toList()));
    List<BundledResource> all = new ArrayList<>();
    days.forEach(
        (day, entries) ->
            all.add(
                BundledResource.renewed(
                    TYPE, identity(told, day), out -> session(out, day, entries))));
    return all;
  }

  /** By what the session of an entry is referred to. */
  static String urn(ToldRecord told, Entry entry) {
    return BundledResource.urn(TYPE, identity(told, day(told, entry)));
  }

  private static LocalDate day(ToldRecord told, Entry entry) {
    return told.record().timeOf(entry).toLocalDate();
  }

  private static String identity(ToldRecord told, LocalDate day) {
    return told.identity("session-" + day);
  }

  private void session(JsonObjectWriter out, LocalDate day, List<Entry> entries)
      throws IOException {
    String name = told.wording().word("Exchange.code." + CODE);
    String sentence =
        told.wording()
            .fill("Exchange.observed", Argument.text(name), Argument.text(day.toString()));
    Fhir.words(out, told.language(), sentence);
    Fhir.objects(
        out, "identifier", List.of(Fhir.identifier(Fhir.IDENTIFIERS, identity(told, day))));
    out.text("status", "completed");
    Fhir.object(out, "code", Fhir.concept(CODE, Optional.of(name)));
    Fhir.object(out, "subject", Fhir.reference(told.patient()));
    Fhir.object(out, "performedPeriod", period(entries));
    Fhir.objects(out, "performer", performers(entries));
    Fhir.objects(out, "report", List.of(Fhir.reference(ReportDocument.urn(told))));
    Fhir.objects(out, "focalDevice", devices());
  }

  private Fhir.FhirPart period(List<Entry> entries) {
    List<OffsetDateTime> times =
        entries.stream()
            .map(told.record()::timeOf)
            .sorted(Comparator.comparing(OffsetDateTime::toInstant))
            .toList();
    return out ->
        out.text("start", Fhir.time(times.get(0)))
            .text("end", Fhir.time(times.get(times.size() - 1)));
  }

  private static List<Fhir.FhirPart> performers(List<Entry> entries) {
    return entries.stream()
        .map(Entry::by)
        .distinct()
        .<Fhir.FhirPart>map(by -> out -> Fhir.object(out, "actor", Fhir.named(by)))
        .toList();
  }

  private List<Fhir.FhirPart> devices() {
    List<Fhir.FhirPart> all = new ArrayList<>();
    for (ComponentLimits component : Devices.components(told)) {
      Fhir.FhirPart device = Fhir.reference(Devices.urn(told, component));
      all.add(out -> Fhir.object(out, "manipulated", device));
    }
    return all;
  }
}
