package caryatid.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.net.ssl.SSLContext;

/**
 * A small record system in memory: search by identifier, transactions with conditional create and
 * update, reading. It can be told to misbehave.
 */
final class StubSystem implements AutoCloseable {
  /** Answers instead of the system, or lets it answer. */
  interface Fault {
    /** Whether it answered. */
    boolean answers(HttpExchange exchange) throws IOException;
  }

  private static final ObjectMapper MAPPER = new ObjectMapper();

  static {
    // Read once, when the server's classes load. Without it each answer waits 40 ms.
    System.setProperty("sun.net.httpserver.nodelay", "true");
  }

  private final HttpServer server;
  private final boolean encrypted;
  private final ExecutorService threads = Executors.newCachedThreadPool();

  /** What is stored, by type and id. */
  final Map<String, ObjectNode> stored = new LinkedHashMap<>();

  /** The method, address and token of each request. */
  final List<String> asked = new ArrayList<>();

  /** What happens to a request before it is taken; none while it is empty. */
  Optional<Fault> before = Optional.empty();

  /** What happens after a transaction was stored, instead of its answer. */
  Optional<Fault> after = Optional.empty();

  /** Whether transactions are answered without saying where things are. */
  boolean silent;

  StubSystem() {
    this(Optional.empty());
  }

  /**
   * A system that is spoken to over an encrypted connection.
   *
   * @param certificates who it says it is
   */
  static StubSystem encrypted(SSLContext certificates) {
    return new StubSystem(Optional.of(certificates));
  }

  private StubSystem(Optional<SSLContext> certificates) {
    encrypted = certificates.isPresent();
    InetSocketAddress place = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
    try {
      if (encrypted) {
        HttpsServer https = HttpsServer.create(place, 0);
        https.setHttpsConfigurator(new HttpsConfigurator(certificates.get()));
        server = https;
      } else {
        server = HttpServer.create(place, 0);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.createContext("/fhir", this::handle);
    server.setExecutor(threads);
    server.start();
  }

  String address() {
    return (encrypted ? "https" : "http")
        + "://localhost:"
        + server.getAddress().getPort()
        + "/fhir";
  }

  void patient(String system, String value) {
    ObjectNode patient = MAPPER.createObjectNode().put("resourceType", "Patient");
    patient.putArray("name").addObject().put("family", "Invented");
    patient.putArray("identifier").addObject().put("system", system).put("value", value);
    store("Patient", patient);
  }

  private synchronized void handle(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().toString().replaceFirst("^/fhir/?", "");
    asked.add(
        exchange.getRequestMethod()
            + " "
            + path
            + " "
            + exchange.getRequestHeaders().getFirst("Authorization"));
    byte[] body = exchange.getRequestBody().readAllBytes();
    if (before.isPresent() && before.get().answers(exchange)) {
      return;
    }
    if (path.endsWith("/_search")) {
      String query =
          URLDecoder.decode(new String(body, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
      answer(exchange, 200, found(path.replace("/_search", ""), query));
    } else if (path.isEmpty()) {
      JsonNode response = transact(MAPPER.readTree(body));
      if (after.isEmpty() || !after.get().answers(exchange)) {
        answer(exchange, 200, response);
      }
    } else {
      answer(exchange, stored.containsKey(path) ? 200 : 404, stored.get(path));
    }
  }

  private JsonNode found(String type, String query) {
    ObjectNode bundle = MAPPER.createObjectNode().put("resourceType", "Bundle");
    bundle.put("type", "searchset");
    ArrayNode entries = bundle.putArray("entry");
    matches(type, query).forEach(place -> entries.addObject().set("resource", stored.get(place)));
    return bundle;
  }

  private List<String> matches(String type, String query) {
    return stored.entrySet().stream()
        .filter(each -> each.getKey().startsWith(type + "/"))
        .filter(
            each ->
                ("identifier="
                        + each.getValue().path("identifier").path(0).path("system").asText()
                        + "|"
                        + each.getValue().path("identifier").path(0).path("value").asText())
                    .equals(query))
        .map(Map.Entry::getKey)
        .toList();
  }

  private String store(String type, ObjectNode resource) {
    String place = type + "/s" + (stored.size() + 1);
    stored.put(place, resource.put("id", place.substring(type.length() + 1)));
    return place;
  }

  private JsonNode transact(JsonNode bundle) {
    Map<String, String> places = new LinkedHashMap<>();
    List<String> statuses = new ArrayList<>();
    for (JsonNode entry : bundle.path("entry")) {
      ObjectNode resource = entry.path("resource").deepCopy();
      String type = resource.path("resourceType").asText();
      String url = entry.path("request").path("url").asText();
      String query =
          URLDecoder.decode(
              entry.path("request").has("ifNoneExist")
                  ? entry.path("request").path("ifNoneExist").asText()
                  : url.substring(url.indexOf('?') + 1),
              StandardCharsets.UTF_8);
      boolean byId = url.contains("/");
      Optional<String> there =
          byId
              ? Optional.of(url).filter(stored::containsKey)
              : matches(type, query).stream().findFirst();
      String place = there.orElseGet(() -> byId ? url : store(type, resource));
      if (byId || entry.path("request").path("method").asText().equals("PUT")) {
        stored.put(place, resource.put("id", place.substring(type.length() + 1)));
      }
      places.put(entry.path("fullUrl").asText(), place);
      statuses.add(there.isPresent() ? "200 OK" : "201 Created");
    }
    stored.replaceAll((place, resource) -> resolved(resource, places));
    ObjectNode answer = MAPPER.createObjectNode().put("resourceType", "Bundle");
    ArrayNode entries = answer.put("type", "transaction-response").putArray("entry");
    int i = 0;
    for (String place : places.values()) {
      ObjectNode response =
          entries.addObject().putObject("response").put("status", statuses.get(i));
      if (!silent) {
        response.put("location", place + "/_history/1");
      }
      i++;
    }
    return answer;
  }

  private static ObjectNode resolved(ObjectNode resource, Map<String, String> places) {
    String text = resource.toString();
    for (Map.Entry<String, String> each : places.entrySet()) {
      text = text.replace("\"" + each.getKey() + "\"", "\"" + each.getValue() + "\"");
    }
    try {
      return (ObjectNode) MAPPER.readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void answer(HttpExchange exchange, int status, Object body) throws IOException {
    byte[] bytes = String.valueOf(body).getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", "application/fhir+json");
    exchange.sendResponseHeaders(status, bytes.length);
    exchange.getResponseBody().write(bytes);
    exchange.close();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
