package caryatid.exchange;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;

/**
 * A resource and how a system is asked to take it.
 *
 * @param type the resource's type, such as {@code Device}
 * @param fullUrl by what others in the bundle refer to it
 * @param method HTTP method
 * @param url what is asked for, relative to the system's address
 * @param ifNoneExist the query that finds it where it was stored before
 * @param content its members
 */
record BundledResource(
    String type,
    String fullUrl,
    String method,
    String url,
    Optional<String> ifNoneExist,
    Fhir.FhirPart content) {

  /** One that is stored unless there is one with its identifier. */
  static BundledResource once(String type, String system, String value, Fhir.FhirPart content) {
    return new BundledResource(
        type, urn(type, system, value), "POST", type, Optional.of(query(system, value)), content);
  }

  /** One that takes the place of the one with its identifier, if there is one. */
  static BundledResource renewed(String type, String value, Fhir.FhirPart content) {
    String system = Fhir.IDENTIFIERS;
    return new BundledResource(
        type,
        urn(type, system, value),
        "PUT",
        type + "?" + query(system, value),
        Optional.empty(),
        content);
  }

  /** One of a type without identifiers, which is stored under an id of its own. */
  static BundledResource put(String type, String value, Fhir.FhirPart content) {
    UUID id = id(type, Fhir.IDENTIFIERS, value);
    Fhir.FhirPart withId =
        out -> {
          out.text("id", id.toString());
          content.into(out);
        };
    return new BundledResource(
        type, "urn:uuid:" + id, "PUT", type + "/" + id, Optional.empty(), withId);
  }

  /** By what a resource of this project is referred to in a bundle. */
  static String urn(String type, String value) {
    return urn(type, Fhir.IDENTIFIERS, value);
  }

  private static String urn(String type, String system, String value) {
    return "urn:uuid:" + id(type, system, value);
  }

  /** The same for the same resource, so that the same record gives the same bytes. */
  private static UUID id(String type, String system, String value) {
    String name = String.join("\n", type, system, value);
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
  }

  static String query(String system, String value) {
    return "identifier=" + URLEncoder.encode(system + "|" + value, StandardCharsets.UTF_8);
  }
}
