package caryatid.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is wrong with a bundle, by rules of HL7 FHIR R4 that a validator knows as warnings or not at
 * all, and by the definitions in docs/fhir.
 */
final class BundleFaults {
  private static final Path CODES = Path.of("docs/fhir/CodeSystem-record.json");
  private static final String OWN = "http://caryatid.invalid/fhir/CodeSystem/record";
  private static final String UCUM = "http://unitsofmeasure.org";
  private static final String UNCERTAINTY =
      "http://hl7.org/fhir/StructureDefinition/iso21090-uncertainty";
  private static final Set<String> EXTENSIONS = Set.of(UNCERTAINTY, UNCERTAINTY + "Type");
  private static final Set<String> TIMES =
      Set.of("effectiveDateTime", "date", "recorded", "start", "end");
  private static final String TIME =
      "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(Z|[+-]\\d\\d:\\d\\d)";

  /** The unit (UCUM) of what has a code. */
  private static final Map<String, String> UNITS =
      Map.of(
          "offset-mm", "mm",
          "recommended-mm", "mm",
          "load-share-percent", "%",
          "probability-within", "1",
          "body-mass-highest-kg", "kg",
          "mobility-grade-lowest", "1",
          "mobility-grade-highest", "1",
          "heel-height-lowest-mm", "mm",
          "heel-height-highest-mm", "mm");

  private final List<String> faults = new ArrayList<>();
  private final Set<String> codes = new HashSet<>();
  private final Set<String> urls = new HashSet<>();

  private BundleFaults() {}

  static Set<String> publishedCodes() {
    Set<String> codes = new HashSet<>();
    ToldFitting.json(CODES).path("concept").forEach(c -> codes.add(c.path("code").asText()));
    return codes;
  }

  static List<String> of(JsonNode bundle) {
    BundleFaults found = new BundleFaults();
    found.codes.addAll(publishedCodes());
    Set<String> identifiers = new HashSet<>();
    for (JsonNode entry : bundle.path("entry")) {
      if (!found.urls.add(entry.path("fullUrl").asText())) {
        found.faults.add("fullUrl twice: " + entry.path("fullUrl").asText());
      }
      found.request(entry, identifiers);
    }
    found.look("", bundle);
    return found.faults;
  }

  /** Sent twice, nothing may be stored twice. */
  private void request(JsonNode entry, Set<String> identifiers) {
    JsonNode resource = entry.path("resource");
    String type = resource.path("resourceType").asText();
    JsonNode request = entry.path("request");
    String identifier =
        resource.path("identifier").path(0).path("system").asText()
            + "|"
            + resource.path("identifier").path(0).path("value").asText();
    String query =
        "identifier="
            + java.net.URLEncoder.encode(identifier, java.nio.charset.StandardCharsets.UTF_8);
    boolean once =
        request.path("method").asText().equals("POST")
            && request.path("url").asText().equals(type)
            && request.path("ifNoneExist").asText().equals(query);
    boolean renewed =
        request.path("method").asText().equals("PUT")
            && Set.of(type + "?" + query, type + "/" + resource.path("id").asText())
                .contains(request.path("url").asText());
    if (!once && !renewed) {
      faults.add("stored twice: " + type);
    }
    if (resource.has("identifier") && !identifiers.add(type + identifier)) {
      faults.add("identifier twice: " + type);
    }
  }

  private void look(String key, JsonNode node) {
    if (TIMES.contains(key) && !node.asText().matches(TIME)) {
      faults.add("time: " + key + " " + node.asText());
    }
    if (key.equals("reference") && !urls.contains(node.asText())) {
      faults.add("reference to nothing: " + node.asText());
    }
    if (key.equals("extension")) {
      node.forEach(extension -> extension(extension));
    }
    if (node.path("system").asText().equals(OWN) && !codes.contains(node.path("code").asText())) {
      faults.add("code: " + node.path("code").asText());
    }
    if (node.has("valueQuantity")) {
      quantity(node);
    }
    node.properties().forEach(field -> look(field.getKey(), field.getValue()));
    if (node.isArray()) {
      node.forEach(item -> look("", item));
    }
  }

  private void extension(JsonNode extension) {
    if (!EXTENSIONS.contains(extension.path("url").asText())) {
      faults.add("extension: " + extension.path("url").asText());
    }
  }

  private void quantity(JsonNode node) {
    JsonNode named = node.has("code") ? node.path("code") : node.path("type");
    String code = named.path("coding").path(0).path("code").asText();
    JsonNode value = node.path("valueQuantity");
    JsonNode quantity = value.isArray() ? value.path(0) : value;
    boolean right =
        quantity.path("system").asText().equals(UCUM)
            && quantity.path("code").asText().equals(UNITS.get(code))
            && quantity.path("unit").asText().equals(UNITS.get(code))
            && quantity.path("value").isNumber();
    if (!right) {
      faults.add("unit: " + code + " " + quantity.path("code").asText());
    }
  }
}
