package caryatid.exchange;

import caryatid.entry.Entry;
import caryatid.format.JsonObjectWriter;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Data types of HL7 FHIR R4 (4.0.1) as they are written into resources. */
final class Fhir {
  /** Names of this project's codes and profiles begin so; the address leads nowhere. */
  static final String OWN = "http://caryatid.invalid/fhir/";

  /** The code system in docs/fhir. */
  static final String CODES = OWN + "CodeSystem/record";

  /** What identifiers of resources are unique in. */
  static final String IDENTIFIERS = OWN + "identifier";

  static final String UCUM = "http://unitsofmeasure.org";
  static final String MM = "mm";
  static final String PARTICIPANT =
      "http://terminology.hl7.org/CodeSystem/provenance-participant-type";

  private static final String TIME = "yyyy-MM-dd'T'HH:mm:ssXXX";
  private static final String NAMESPACE = "http://www.w3.org/1999/xhtml";

  private Fhir() {}

  /** What writes one member of a resource. */
  interface FhirPart {
    void into(JsonObjectWriter out) throws IOException;
  }

  static void object(JsonObjectWriter out, String key, FhirPart part) throws IOException {
    out.object(key, part, (p, members) -> p.into(members));
  }

  static void objects(JsonObjectWriter out, String key, List<? extends FhirPart> parts)
      throws IOException {
    out.listUnlessEmpty(key, List.<FhirPart>copyOf(parts), (p, members) -> p.into(members));
  }

  /** A time with its seconds, which FHIR wants, and its offset from UTC. */
  static String time(OffsetDateTime time) {
    return DateTimeFormatter.ofPattern(TIME, Locale.ROOT).format(time);
  }

  static FhirPart coding(String system, String code) {
    return out -> out.text("system", system).text("code", code);
  }

  /** A code of this project's own system. */
  static FhirPart concept(String code) {
    return concept(code, Optional.empty());
  }

  static FhirPart concept(String code, Optional<String> text) {
    return out -> {
      objects(out, "coding", List.of(coding(CODES, code)));
      out.text("text", text);
    };
  }

  static FhirPart reference(String fullUrl) {
    return out -> out.text("reference", fullUrl);
  }

  static FhirPart named(String display) {
    return out -> out.text("display", display);
  }

  static FhirPart by(Entry entry) {
    return named(entry.by());
  }

  static FhirPart identifier(String system, String value) {
    return out -> out.text("system", system).text("value", value);
  }

  static FhirPart quantity(String digits, String unit) {
    return out ->
        out.number("value", digits).text("unit", unit).text("system", UCUM).text("code", unit);
  }

  /** The language of a resource's words, and what a person reads of it, in one sentence. */
  static void words(JsonObjectWriter out, String language, String sentence) throws IOException {
    String div =
        "<div xmlns=\"%s\" lang=\"%s\" xml:lang=\"%s\"><p>%s</p></div>"
            .formatted(NAMESPACE, language, language, escaped(sentence));
    out.text("language", language);
    object(out, "text", text -> text.text("status", "generated").text("div", div));
  }

  /** Characters that XML 1.0 does not have become a replacement character. */
  private static String escaped(String text) {
    return text.replaceAll("[\\p{Cntrl}&&[^\n\t]]|[\\ufffe\\uffff]", "\ufffd")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }

  static FhirPart profile(String name) {
    return out -> out.textsUnlessEmpty("profile", List.of(OWN + "StructureDefinition/" + name));
  }
}
