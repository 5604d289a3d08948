package caryatid.exchange;

import caryatid.format.Json;
import caryatid.remark.Argument;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.InputValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A bundle that is sent: the answer to it, and what is stored after it. */
final class SentBundle {
  private static final String PATIENT = "Patient";

  private final FhirServer server;
  private final int most;
  private final List<InputValue> entries;

  /** Where each resource is stored, by its {@code fullUrl}. */
  private final Map<String, String> places = new LinkedHashMap<>();

  private final List<Boolean> isNew = new ArrayList<>();

  private SentBundle(FhirServer server, byte[] bundle) {
    this.server = server;
    this.most = (int) Math.min(Integer.MAX_VALUE - 8L, (16L << 20) + 2L * bundle.length);
    try {
      this.entries = FhirTree.items(Json.read(bundle, "bundle"), "entry");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Sends a bundle, reads back what is stored and compares it.
   *
   * @return how many resources the system did not have, and how many it had
   */
  static Counts to(FhirServer server, byte[] bundle) throws StoreFailure {
    SentBundle sent = new SentBundle(server, bundle);
    sent.take(server.transact(bundle));
    for (int i = 0; i < sent.entries.size(); i++) {
      sent.compare(i);
    }
    int created = (int) sent.isNew.stream().filter(each -> each).count();
    return new Counts(created, sent.entries.size() - created);
  }

  /**
   * How many resources were stored.
   *
   * @param created the system did not have before
   * @param there it had
   */
  record Counts(int created, int there) {}

  private void take(List<InputValue> answers) throws StoreFailure {
    if (answers.size() != entries.size()) {
      throw server.failure(ExchangeProblem.NOT_UNDERSTOOD);
    }
    for (int i = 0; i < entries.size(); i++) {
      InputValue entry = entries.get(i);
      String status = FhirTree.text(answers.get(i), "response", "status").orElse("");
      isNew.add(status.startsWith("201"));
      Optional<String> told =
          FhirTree.text(answers.get(i), "response", "location")
              .flatMap(StoredDifference::place)
              .filter(place -> place.startsWith(type(entry) + "/"));
      places.put(
          FhirTree.text(entry, "fullUrl").orElseThrow(),
          told.isPresent() ? told.get() : found(entry));
    }
  }

  private static String type(InputValue entry) {
    return FhirTree.text(entry, "resource", "resourceType").orElseThrow();
  }

  /** Some systems do not say where; it is sought by its identifier, or lies where it was put. */
  private String found(InputValue entry) throws StoreFailure {
    String url = FhirTree.text(entry, "request", "url").orElseThrow();
    if (url.contains("/")) {
      return url;
    }
    String query =
        FhirTree.text(entry, "request", "ifNoneExist")
            .orElseGet(() -> url.substring(url.indexOf('?') + 1));
    List<InputValue> found = server.search(type(entry), query);
    Optional<String> id = found.size() == 1 ? FhirTree.text(found.get(0), "id") : Optional.empty();
    if (id.isEmpty()) {
      throw server.failure(ExchangeProblem.NOT_THERE, Argument.text(type(entry)));
    }
    return type(entry) + "/" + id.get();
  }

  /** The patient is the clinic's own and has more than was sent. */
  private void compare(int i) throws StoreFailure {
    InputValue entry = entries.get(i);
    if (type(entry).equals(PATIENT)) {
      return;
    }
    String place = places.get(FhirTree.text(entry, "fullUrl").orElseThrow());
    InputValue stored = server.stored(type(entry), place.substring(place.indexOf('/') + 1), most);
    Optional<String> differs =
        new StoredDifference(places, isNew.get(i))
            .of(FhirTree.at(entry, "resource").orElseThrow(), stored);
    if (differs.isPresent()) {
      boolean whose = differs.get().matches("(subject|patient)(\\..*)?");
      throw whose
          ? server.failure(ExchangeProblem.OTHER_PATIENT, Argument.text(type(entry)))
          : server.failure(
              ExchangeProblem.STORED_OTHERWISE,
              Argument.text(type(entry)),
              Argument.text(differs.get()));
    }
  }
}
