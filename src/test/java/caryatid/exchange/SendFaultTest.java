package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** `record send` to a system that is not in good order. */
class SendFaultTest extends StubSending {
  private static final String BROKEN = "the connection was lost before the answer was complete.";
  private static final String SLOW = "did not answer within 1 s. Allow more time with --timeout.";
  private static final String OTHER =
      "the answer does not come from a system of this kind. Check the address.";

  /**
   * What the system does wrong, and what is said of it; then it is in order, and sending goes on.
   */
  private record Wrong(String name, String says, Consumer<StubSystem> fault) {}

  @TestFactory
  Stream<DynamicTest> whatGoesWrongIsSaidAndSendingGoesOnAfterwards() {
    return Stream.of(
            after("dies after storing", BROKEN, SendFaultTest::dies),
            after("dies midway in its answer", BROKEN, SendFaultTest::diesMidway),
            after("fails", "the system failed (status 500). Try again later.", status(500, "{}")),
            before("is full", "the system failed (status 429). Try again later.", status(429, "")),
            before(
                "lets nobody in",
                "refused access (status 401). The access token is missing, has expired, or does not"
                    + " allow this. Get a new one.",
                status(401, "")),
            before("is slow", SLOW, exchange -> pause(3000)),
            before("trickles", SLOW, SendFaultTest::trickle),
            before("talks garbage", OTHER, status(200, "<html>hello")),
            after(
                "answers with something else",
                OTHER,
                status(200, "{\"resourceType\":\"Bundle\",\"entry\":[]}")),
            before(
                "refuses",
                "the system refused this (status 422; reason: invalid, duplicate). Ask those who"
                    + " run it.",
                status(
                    422,
                    "{\"resourceType\":\"OperationOutcome\",\"issue\":[{\"code\":\"invalid\",\"diagnostics\":\"Q8-77123\"},{\"code\":\"duplicate\"}]}")),
            before(
                "sends elsewhere",
                "the system redirects to another address (host: other.invalid), which is not"
                    + " followed. Ask the clinic for the right address.",
                SendFaultTest::elsewhere))
        .map(wrong -> DynamicTest.dynamicTest(wrong.name(), () -> goesWrong(wrong)));
  }

  private static Wrong before(String name, String says, StubSystem.Fault fault) {
    return new Wrong(name, says, system -> system.before = Optional.of(fault));
  }

  private static Wrong after(String name, String says, StubSystem.Fault fault) {
    return new Wrong(name, says, system -> system.after = Optional.of(fault));
  }

  private void goesWrong(Wrong wrong) throws IOException {
    Files.deleteIfExists(folder.resolve("b.json"));
    try (StubSystem fresh = new StubSystem()) {
      system.close();
      system = fresh;
      system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
      wrong.fault().accept(system);
      int entries = fitting.kept("entry.json").size();
      Run run = send("--timeout", "1");
      assertThat(run.code()).isEqualTo(1);
      assertThat(run.err())
          .isEqualTo("localhost: " + wrong.says() + "\n" + fitting.file("b.json") + LOST);
      assertThat(run.out()).isEmpty();
      assertThat(fitting.kept("entry.json")).hasSize(entries);
      system.before = Optional.empty();
      system.after = Optional.empty();
      assertThat(send("--timeout", "20").err()).isEmpty();
      assertThat(system.stored).hasSize(10);
      assertThat(fitting.kept("entry.json")).hasSize(entries + 1);
    }
  }

  private static StubSystem.Fault status(int status, String body) {
    return exchange -> {
      StubSystem.answer(exchange, status, body);
      return true;
    };
  }

  private static boolean dies(HttpExchange exchange) {
    exchange.close();
    return true;
  }

  private static boolean diesMidway(HttpExchange exchange) throws IOException {
    exchange.sendResponseHeaders(200, 1000);
    exchange.getResponseBody().write("{\"resourceType\":".getBytes(StandardCharsets.UTF_8));
    exchange.getResponseBody().flush();
    exchange.close();
    return true;
  }

  private static boolean trickle(HttpExchange exchange) throws IOException {
    exchange.sendResponseHeaders(200, 0);
    for (int i = 0; i < 12; i++) {
      exchange.getResponseBody().write(' ');
      exchange.getResponseBody().flush();
      pause(250);
    }
    return true;
  }

  private static boolean pause(int ms) {
    try {
      Thread.sleep(ms);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return true;
  }

  private static boolean elsewhere(HttpExchange exchange) throws IOException {
    exchange.getResponseHeaders().set("Location", "https://other.invalid/fhir");
    exchange.sendResponseHeaders(307, -1);
    exchange.close();
    return true;
  }

  /** What is stored is changed behind the sender's back. */
  @TestFactory
  Stream<DynamicTest> whatIsStoredOtherwiseIsSaid() {
    return Stream.of(
        changed(
            "Observation, valueQuantity.value",
            "Observation",
            r -> r.withObject("/valueQuantity").put("value", 5)),
        changed(
            "Observation, effectiveDateTime",
            "Observation",
            r -> r.put("effectiveDateTime", "2026-03-04T10:16:00+01:00")),
        changed("Observation, interpretation", "Observation", r -> r.putArray("interpretation")),
        changed("Device, serialNumber", "Device", r -> r.remove("serialNumber")),
        changed(
            "DocumentReference, content.attachment.data",
            "DocumentReference",
            r -> ((ObjectNode) r.at("/content/0/attachment")).put("data", "JVBERg==")),
        changed("Provenance, entity", "Provenance", r -> r.putArray("entity")));
  }

  private DynamicTest changed(String says, String type, Consumer<ObjectNode> change) {
    return DynamicTest.dynamicTest(
        says,
        () -> {
          Files.deleteIfExists(folder.resolve("b.json"));
          system.stored.clear();
          system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
          system.after =
              Optional.of(
                  exchange -> {
                    system.stored.values().stream()
                        .filter(r -> r.path("resourceType").asText().equals(type))
                        .filter(
                            r ->
                                !type.equals("Observation")
                                    || r.toString().contains("\"offset-mm\""))
                        .findFirst()
                        .ifPresent(change);
                    return false;
                  });
          Run run = send();
          assertThat(run.code()).isEqualTo(1);
          assertThat(run.err())
              .startsWith(
                  "localhost: stored something other than what was sent ("
                      + says
                      + "). Do not rely on");
        });
  }
}
