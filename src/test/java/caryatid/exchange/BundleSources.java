package caryatid.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What in a bundle comes neither from the record nor from what is the same in each bundle. */
final class BundleSources {
  /** Worked out of the record's numbers, which BundleNumbers does again. */
  private static final Set<String> WORKED_OUT =
      Set.of("valueDecimal", "low.value", "high.value", "attachment.size");

  /** Terms of the standard, and this project's names. */
  private static final Set<String> ALWAYS =
      Set.of(
          "Bundle",
          "Patient",
          "Device",
          "DocumentReference",
          "Observation",
          "Procedure",
          "Provenance",
          "transaction",
          "user-friendly-name",
          "POST",
          "PUT",
          "generated",
          "final",
          "entered-in-error",
          "active",
          "current",
          "completed",
          "source",
          "assembler",
          "author",
          "T",
          "N",
          "mm",
          "%",
          "kg",
          "1",
          "en",
          "application/pdf",
          "urn:ietf:rfc:3986",
          "http://unitsofmeasure.org",
          "http://terminology.hl7.org/CodeSystem/provenance-participant-type",
          "http://hl7.org/fhir/StructureDefinition/iso21090-uncertainty",
          "http://hl7.org/fhir/StructureDefinition/iso21090-uncertaintyType",
          "http://caryatid.invalid/fhir/CodeSystem/record",
          "http://caryatid.invalid/fhir/identifier",
          "http://caryatid.invalid/fhir/StructureDefinition/offset",
          "http://caryatid.invalid/fhir/StructureDefinition/component",
          ToldFitting.SYSTEM,
          ToldFitting.NUMBER);

  private static final String UUID = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  /** Identifiers begin with the record's code and a part of its sums, and name an entry's part. */
  private static final Pattern NAMES =
      Pattern.compile(
          "(urn:uuid:|Provenance/)?"
              + UUID
              + "|K7-right\\.[0-9a-f]{16}\\.([0-9]+\\.(offset-mm-[0-9]|load-share-percent|socket-comfort)"
              + "|session-[0-9-]{10}|component\\."
              + UUID
              + "|report-[0-9a-f]{32}-en)");

  private static final Pattern QUERY = Pattern.compile("(?:[A-Za-z]+\\?)?identifier=(.*)");
  private static final Pattern SUM = Pattern.compile("ni:///sha-512;(.*)");
  private static final Pattern LETTERS = Pattern.compile("\\p{L}+");

  private final String record;
  private final Set<BigDecimal> numbers = new HashSet<>();
  private final Set<String> codes = BundleFaults.publishedCodes();
  private final Set<Instant> times = new HashSet<>();
  private final Set<String> words = new HashSet<>();
  private final List<String> found = new ArrayList<>();

  private BundleSources(ToldFitting fitting) throws IOException {
    record = fitting.everything();
    Stream.concat(fitting.kept("entry.json").stream(), fitting.kept("result.json").stream())
        .forEach(file -> take(ToldFitting.json(file)));
    words.addAll(letters(record));
    try (Stream<Path> wording = Files.list(Path.of("src/main/resources/caryatid/wording"))) {
      for (Path file : wording.filter(f -> !f.toString().contains("_")).toList()) {
        words.addAll(letters(Files.readString(file)));
      }
    }
    words.addAll(letters("div xmlns http www w3 org xhtml lang xml p w"));
  }

  /** Each value of which nobody knows where it comes from, with its place. */
  static List<String> unknown(ToldFitting fitting, JsonNode bundle) throws IOException {
    BundleSources sources = new BundleSources(fitting);
    sources.look("", "", bundle);
    return sources.found;
  }

  private void take(JsonNode node) {
    if (node.isNumber()) {
      numbers.add(node.decimalValue().stripTrailingZeros());
    }
    time(node.asText()).ifPresent(times::add);
    node.forEach(this::take);
  }

  private static Optional<Instant> time(String text) {
    try {
      return Optional.of(OffsetDateTime.parse(text).toInstant());
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static List<String> letters(String text) {
    return LETTERS.matcher(text).results().map(MatchResult::group).toList();
  }

  private void look(String above, String key, JsonNode node) {
    if (node.isContainerNode()) {
      node.properties().forEach(each -> look(key, each.getKey(), each.getValue()));
      if (node.isArray()) {
        node.forEach(each -> look(above, key, each));
      }
    } else if (!key.equals("data") && !isKnown(above + "." + key, key, node)) {
      found.add(key + ": " + node.asText());
    }
  }

  private boolean isKnown(String place, String key, JsonNode node) {
    if (node.isNumber()) {
      return WORKED_OUT.contains(place)
          || WORKED_OUT.contains(key)
          || numbers.contains(node.decimalValue().stripTrailingZeros());
    }
    Matcher query = QUERY.matcher(node.asText());
    return query.matches()
        ? Stream.of(URLDecoder.decode(query.group(1), StandardCharsets.UTF_8).split("\\|"))
            .allMatch(this::isKnown)
        : isKnown(node.asText());
  }

  private boolean isKnown(String text) {
    return ALWAYS.contains(text)
        || codes.contains(text)
        || NAMES.matcher(text).matches()
        || time(text).filter(times::contains).isPresent()
        || isSum(text)
        || words.containsAll(letters(text)) && !text.startsWith("urn:") && time(text).isEmpty();
  }

  private boolean isSum(String text) {
    Matcher sum = SUM.matcher(text);
    return sum.matches()
        && record.contains(HexFormat.of().formatHex(Base64.getUrlDecoder().decode(sum.group(1))));
  }
}
