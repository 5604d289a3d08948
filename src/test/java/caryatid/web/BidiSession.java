package caryatid.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;

/** Commands, answers and events of WebDriver BiDi over one web socket, one command at a time. */
final class BidiSession implements WebSocket.Listener, AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final WebSocket socket;
  private final StringBuilder part = new StringBuilder();
  private final Map<Integer, CompletableFuture<JsonNode>> open = new ConcurrentHashMap<>();
  private final ConcurrentLinkedQueue<JsonNode> events = new ConcurrentLinkedQueue<>();
  private int commands;

  BidiSession(URI address) {
    socket = HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, this).join();
  }

  /** What a command gives; fails where the browser says that it failed. */
  JsonNode ask(String method, Map<String, ?> parameters) {
    JsonNode answer = answer(method, parameters);
    if (answer.has("error")) {
      throw new AssertionError(method + ": " + answer.get("error") + ' ' + answer.get("message"));
    }
    return answer.get("result");
  }

  /** The whole answer, which may be a failure. */
  JsonNode answer(String method, Map<String, ?> parameters) {
    int id = ++commands;
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    open.put(id, answer);
    try {
      String text =
          JSON.writeValueAsString(Map.of("id", id, "method", method, "params", parameters));
      socket.sendText(text, true).join();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return answer.orTimeout(60, TimeUnit.SECONDS).join();
  }

  /** What happened of one kind, since the last time. */
  List<JsonNode> events(String method) {
    List<JsonNode> found = new ArrayList<>();
    events.removeIf(
        event -> {
          boolean wanted = event.get("method").asText().equals(method);
          return wanted && found.add(event.get("params"));
        });
    return found;
  }

  @Override
  public CompletionStage<?> onText(WebSocket from, CharSequence text, boolean last) {
    part.append(text);
    if (last) {
      hear(part.toString());
      part.setLength(0);
    }
    from.request(1);
    return null;
  }

  private void hear(String text) {
    try {
      JsonNode heard = JSON.readTree(text);
      if (heard.get("type").asText().equals("event")) {
        events.add(heard);
      } else {
        CompletableFuture<JsonNode> asked = open.remove(heard.path("id").asInt());
        if (asked != null) {
          asked.complete(heard);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    answer("browser.close", Map.of());
    socket.abort();
  }
}
