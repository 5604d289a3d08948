package caryatid.fhir;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Passes requests on to a system and its answers back, at one address whatever the system's own is,
 * and kills the system at a given moment.
 */
final class Relay implements AutoCloseable {
  /** When the system is killed. */
  enum Moment {
    /** It has the bundle and has not answered. */
    WHILE_IT_STORES,
    /** It has stored the bundle; its answer arrives nowhere. */
    BEFORE_ITS_ANSWER,
    /** Two resources were read back. */
    WHILE_IT_IS_READ
  }

  private static final int HEAD_START_MS = 20;

  private final HttpServer listener;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final HttpClient client = HttpClient.newHttpClient();
  private final SystemProcess system;
  private Optional<Moment> moment = Optional.empty();
  private int reads;

  Relay(SystemProcess system) throws IOException {
    this.system = system;
    listener = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    listener.createContext("/fhir", this::pass);
    listener.setExecutor(threads);
    listener.start();
  }

  String address() {
    return "http://127.0.0.1:" + listener.getAddress().getPort() + "/fhir";
  }

  /** Kills the system once, when the moment comes. */
  synchronized void killAt(Moment when) {
    moment = Optional.of(when);
    reads = 0;
  }

  /** Whether the moment came. */
  synchronized boolean hasKilled() {
    return moment.isEmpty();
  }

  private synchronized void pass(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readAllBytes();
    boolean reading = exchange.getRequestMethod().equals("GET");
    boolean bundle = exchange.getRequestURI().getPath().equals("/fhir");
    reads += reading ? 1 : 0;
    CompletableFuture<HttpResponse<byte[]>> asked =
        client.sendAsync(request(exchange, body), HttpResponse.BodyHandlers.ofByteArray());
    boolean killed =
        bundle && killed(Moment.WHILE_IT_STORES, asked)
            || bundle && killed(Moment.BEFORE_ITS_ANSWER, asked)
            || reads == 3 && killed(Moment.WHILE_IT_IS_READ, asked);
    if (!killed) {
      HttpResponse<byte[]> answer = asked.join();
      exchange.getResponseHeaders().set("Content-Type", "application/fhir+json");
      exchange.sendResponseHeaders(answer.statusCode(), answer.body().length);
      exchange.getResponseBody().write(answer.body());
    }
    exchange.close();
  }

  private boolean killed(Moment now, CompletableFuture<?> asked) {
    if (!moment.equals(Optional.of(now))) {
      return false;
    }
    if (now == Moment.WHILE_IT_STORES) {
      pause();
    } else {
      asked.join();
    }
    system.kill();
    moment = Optional.empty();
    return true;
  }

  private static void pause() {
    try {
      Thread.sleep(HEAD_START_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private HttpRequest request(HttpExchange exchange, byte[] body) {
    HttpRequest.Builder builder =
        HttpRequest.newBuilder(
                URI.create("http://127.0.0.1:" + system.port() + exchange.getRequestURI()))
            .version(HttpClient.Version.HTTP_1_1)
            .method(
                exchange.getRequestMethod(),
                body.length == 0
                    ? HttpRequest.BodyPublishers.noBody()
                    : HttpRequest.BodyPublishers.ofByteArray(body));
    for (String header : List.of("Content-Type", "Accept", "Cache-Control")) {
      Optional.ofNullable(exchange.getRequestHeaders().getFirst(header))
          .ifPresent(value -> builder.header(header, value));
    }
    return builder.build();
  }

  @Override
  public void close() {
    listener.stop(0);
    threads.shutdownNow();
  }
}
