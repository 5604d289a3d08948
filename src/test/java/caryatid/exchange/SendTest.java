package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** `record send` to a system that is in good order, or is not. */
class SendTest {
  private static final String LOST =
      ": the bundle is here; nothing is lost. Give the same command again to go on: nothing is"
          + " stored twice.\n";

  @TempDir private Path folder;
  private ToldFitting fitting;
  private StubSystem system;

  @BeforeEach
  void start() throws IOException {
    fitting = ToldFitting.in(folder);
    Files.writeString(folder.resolve("token"), "s3cret.Token~1==\n");
    system = new StubSystem();
    system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
  }

  @AfterEach
  void stop() {
    system.close();
  }

  private Run send(String... more) {
    return send(ToldFitting.PATIENT, more);
  }

  private Run send(String patient, String[] more) {
    List<String> all = new ArrayList<>(List.of("record", "send", ToldFitting.CODE));
    all.addAll(List.of(fitting.file("b.json"), "--records", fitting.records(), "--by", "AB"));
    all.addAll(List.of("--to", system.address(), "--token-file", fitting.file("token")));
    all.addAll(List.of("--patient-identifier", patient));
    all.addAll(List.of(more));
    Run run = Run.caryatid(all.toArray(String[]::new));
    assertThat(run.out() + run.err()).doesNotContain(ToldFitting.NUMBER).doesNotContain("s3cret");
    return run;
  }

  private void assertSent(int created, int there, int entry) {
    Run run = send();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            "Sent to %s: %d resources stored there now, %d it had before. All were read back and compared. Entry %d notes it.%n"
                .formatted(system.address(), created, there, entry));
  }

  @Test
  void aRecordIsSentReadBackAndNoted() {
    assertSent(9, 1, 5);
    assertThat(system.stored).hasSize(10);
    assertThat(system.asked).allMatch(request -> request.endsWith(" Bearer s3cret.Token~1=="));
    assertThat(system.asked.subList(0, 2))
        .containsExactly(
            "POST Patient/_search Bearer s3cret.Token~1==", "POST  Bearer s3cret.Token~1==");
    assertThat(fitting.bytes("b.json")).isEqualTo(bundleNow());
    Run shown = Run.caryatid("record", "show", ToldFitting.CODE, "--records", fitting.records());
    assertThat(shown.out())
        .contains("sent to: " + system.address())
        .contains("up to entry: 4")
        .contains("newly stored there: 9");
    assertThat(fitting.everything())
        .doesNotContain(ToldFitting.NUMBER)
        .doesNotContain("s3cret")
        .doesNotContain("Patient/");
    assertThat(Run.caryatid("record", "verify", "--records", fitting.records()).code()).isZero();
  }

  /** The entry about the sending changes neither the bundle nor what is stored. */
  private byte[] bundleNow() {
    fitting.bundled("now.json");
    return fitting.bytes("now.json");
  }

  @Test
  void sentAgainNothingIsStoredAndNothingNoted() {
    assertSent(9, 1, 5);
    String before = system.stored.toString();
    Run again = send();
    assertThat(again.out())
        .isEqualTo(
            "Sent to %s before: it still has all 10 resources. They were read back and compared; nothing new was stored.%n"
                .formatted(system.address()));
    assertThat(system.stored.toString()).isEqualTo(before);
    assertThat(fitting.kept("entry.json")).hasSize(5);
  }

  @Test
  void inAnotherLanguageOnlyTheReportIsNew() throws IOException {
    assertSent(9, 1, 5);
    Files.delete(folder.resolve("b.json"));
    Run german = send("--language", "de");
    assertThat(german.err()).isEmpty();
    assertThat(german.out()).contains("2 Ressourcen neu gespeichert, 8 waren schon da");
    assertThat(system.stored).hasSize(12);
  }

  @Test
  void whatWasCorrectedAfterItWasSentBecomesEnteredInError() throws IOException {
    assertSent(9, 1, 5);
    Files.delete(folder.resolve("b.json"));
    fitting.corrected();
    Run run = send();
    assertThat(run.err()).isEmpty();
    assertThat(statuses()).containsExactly("entered-in-error", "final");
    assertThat(
            system.stored.values().stream()
                .filter(r -> r.path("status").asText().equals("entered-in-error"))
                .map(r -> r.path("identifier").path(0).path("value").asText()))
        .allMatch(identifier -> identifier.contains(".4."))
        .hasSize(3);
  }

  private Set<String> statuses() {
    TreeSet<String> found = new TreeSet<>();
    system.stored.values().stream()
        .filter(r -> r.path("resourceType").asText().equals("Observation"))
        .forEach(r -> found.add(r.path("status").asText()));
    return found;
  }

  @Test
  void aSystemThatDoesNotSayWhereIsSearched() {
    system.silent = true;
    assertSent(9, 1, 5);
  }

  @Test
  void aPatientWhomTheSystemDoesNotKnowIsNotMadeUnasked() {
    system.stored.clear();
    Run refused = send();
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err())
        .isEqualTo(
            "localhost: the system knows no patient with this identifier. Check the number. If the"
                + " patient is truly to be made there, say --new-patient. Nothing was sent.\n");
    assertThat(system.stored).isEmpty();
    assertThat(send("--new-patient").out()).contains("10 resources stored there now, 0 it had");
  }

  @Test
  void aNumberOfSeveralPatientsIsRefused() {
    system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
    assertThat(send().err())
        .isEqualTo(
            "localhost: the system knows 2 patients with this identifier. Have the clinic sort that"
                + " out first. Nothing was sent.\n");
  }

  @Test
  void aRecordThatLiesUnderAnotherPatientIsNotLeftUnnoticed() throws IOException {
    assertSent(9, 1, 5);
    Files.delete(folder.resolve("b.json"));
    system.patient(ToldFitting.SYSTEM, "R9");
    Run other = send(ToldFitting.SYSTEM + "|R9", new String[0]);
    assertThat(other.code()).isEqualTo(1);
    assertThat(other.err())
        .isEqualTo(
            "localhost: has this record already, but under another patient (Device). Check both"
                + " numbers now, and have what is under the wrong patient removed there.\n"
                + fitting.file("b.json")
                + LOST);
    assertThat(fitting.kept("entry.json")).hasSize(5);
  }

  /**
   * What the system does wrong, and what is said of it; then it is in order, and sending goes on.
   */
  private record Wrong(String name, String says, Consumer<StubSystem> fault) {}

  @TestFactory
  Stream<DynamicTest> whatGoesWrongIsSaidAndSendingGoesOnAfterwards() {
    return Stream.of(
            new Wrong(
                "dies after storing",
                "the connection broke off before the answer was complete.",
                s -> s.after = Optional.of(SendTest::dies)),
            new Wrong(
                "dies midway in its answer",
                "the connection broke off before the answer was complete.",
                s -> s.after = Optional.of(SendTest::diesMidway)),
            new Wrong(
                "fails",
                "the system failed (status 500). Try again later.",
                s -> s.after = status(500, "{}")),
            new Wrong(
                "is full",
                "the system failed (status 429). Try again later.",
                s -> s.before = status(429, "")),
            new Wrong(
                "lets nobody in",
                "did not let the sender in (status 401). The access token is missing, has expired, or does not allow this. Get a new one.",
                s -> s.before = status(401, "")),
            new Wrong(
                "is slow",
                "did not answer within 1 s. Allow it more with --timeout.",
                s -> s.before = Optional.of(SendTest::slow)),
            new Wrong(
                "trickles",
                "did not answer within 1 s. Allow it more with --timeout.",
                s -> s.before = Optional.of(SendTest::trickle)),
            new Wrong(
                "talks garbage",
                "the answer is not one that such a system gives. Check the address.",
                s -> s.before = status(200, "<html>hello")),
            new Wrong(
                "answers with something else",
                "the answer is not one that such a system gives. Check the address.",
                s -> s.after = status(200, "{\"resourceType\":\"Bundle\",\"entry\":[]}")),
            new Wrong(
                "refuses",
                "the system refused this (status 422; reason: invalid, duplicate). Ask those who run it.",
                s ->
                    s.before =
                        status(
                            422,
                            "{\"resourceType\":\"OperationOutcome\",\"issue\":[{\"code\":\"invalid\",\"diagnostics\":\"Q8-77123\"},{\"code\":\"duplicate\"}]}")),
            new Wrong(
                "sends elsewhere",
                "the system sends on to another address (host: other.invalid), which is not followed. Ask the clinic for the right address.",
                s -> s.before = Optional.of(SendTest::elsewhere)))
        .map(wrong -> DynamicTest.dynamicTest(wrong.name(), () -> goesWrong(wrong)));
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

  private static Optional<StubSystem.Fault> status(int status, String body) {
    return Optional.of(
        exchange -> {
          StubSystem.answer(exchange, status, body);
          return true;
        });
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

  private static boolean slow(HttpExchange exchange) {
    return pause(3000);
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

  @Test
  void nothingAnswers() {
    system.close();
    assertThat(send().err())
        .isEqualTo(
            "localhost: cannot be reached. Check the address and the network.\n"
                + fitting.file("b.json")
                + LOST);
  }

  @Test
  void anotherFileIsNotOverwritten() throws IOException {
    Files.writeString(folder.resolve("b.json"), "mine");
    assertThat(send().err())
        .endsWith(
            "b.json: is there already and does not hold what the record says now. Choose another file.\n");
    assertThat(system.asked).isEmpty();
  }
}
