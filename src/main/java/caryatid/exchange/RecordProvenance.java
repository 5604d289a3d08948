package caryatid.exchange;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.format.JsonObjectWriter;
import caryatid.remark.Argument;
import caryatid.usecase.Program;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Where all of it comes from: the record's head digest, and the sums of the recordings. */
final class RecordProvenance {
  private static final String NAMES = "urn:ietf:rfc:3986";

  private final ToldRecord told;
  private final List<String> targets;

  /**
   * @param targets the {@code fullUrl} of what comes from there
   */
  RecordProvenance(ToldRecord told, List<String> targets) {
    this.told = told;
    this.targets = List.copyOf(targets);
  }

  BundledResource resource() {
    String identity = told.identity("provenance-" + told.record().headDigest());
    return BundledResource.put("Provenance", identity + "-" + told.language(), this::content);
  }

  private void content(JsonObjectWriter out) throws IOException {
    List<Entry> entries = told.record().entries();
    Entry last = entries.get(entries.size() - 1);
    String sentence =
        told.wording()
            .fill(
                "Exchange.provenance",
                Argument.text(told.record().code().text()),
                Argument.count(last.number()),
                Argument.text(told.record().headDigest()));
    Fhir.words(out, told.language(), sentence);
    Fhir.objects(out, "target", targets.stream().map(Fhir::reference).toList());
    out.text("recorded", Fhir.time(last.at()));
    Fhir.objects(out, "agent", agents(entries));
    Fhir.objects(out, "entity", entities(entries, sentence));
  }

  private static List<Fhir.FhirPart> agents(List<Entry> entries) {
    List<Fhir.FhirPart> all = new ArrayList<>();
    all.add(agent("assembler", Program.NAME));
    entries.stream().map(Entry::by).distinct().forEach(by -> all.add(agent("author", by)));
    return all;
  }

  private static Fhir.FhirPart agent(String does, String who) {
    return out -> {
      Fhir.object(
          out,
          "type",
          type -> Fhir.objects(type, "coding", List.of(Fhir.coding(Fhir.PARTICIPANT, does))));
      Fhir.object(out, "who", Fhir.named(who));
    };
  }

  private List<Fhir.FhirPart> entities(List<Entry> entries, String head) {
    List<Fhir.FhirPart> all = new ArrayList<>();
    all.add(source(told.record().headDigest(), head));
    for (Entry entry : entries) {
      for (KeptFile recording : entry.recordings()) {
        String path = entry.folder() + "/" + recording.name();
        told.record().digest(entry, recording).ifPresent(sum -> all.add(source(sum, path)));
      }
    }
    return all;
  }

  private static Fhir.FhirPart source(String sha512, String display) {
    return out -> {
      out.text("role", "source");
      Fhir.object(
          out,
          "what",
          what -> {
            Fhir.object(what, "identifier", Fhir.identifier(NAMES, Sha512.name(sha512)));
            what.text("display", display);
          });
    };
  }
}
