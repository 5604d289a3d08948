package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** `record send` to a system that is in good order. */
class SendTest extends StubSending {
  private void assertSent(int created, int there, int entry) {
    Run run = send();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            "Sent to %s: %d resources newly stored, %d already there. All were read back and compared. Entry %d notes it.%n"
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
            "Already sent to %s: it still has all 10 resources. They were read back and compared; nothing new was stored.%n"
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
            "localhost: the system knows no patient with this identifier. Check the number. To"
                + " create the patient there, add --new-patient. Nothing was sent.\n");
    assertThat(system.stored).isEmpty();
    assertThat(send("--new-patient").out()).contains("10 resources newly stored, 0 already there");
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
            "localhost: already has this record, but under another patient (Device). Check both"
                + " numbers now, and have the data under the wrong patient removed there.\n"
                + fitting.file("b.json")
                + LOST);
    assertThat(fitting.kept("entry.json")).hasSize(5);
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

  /** Not even to a system that would take it. */
  @ParameterizedTest
  @ValueSource(ints = {301, 302, 303, 307, 308})
  void aRedirectionIsNotFollowed(int status) {
    try (StubSystem other = new StubSystem()) {
      other.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
      system.before =
          Optional.of(
              exchange -> {
                String path = exchange.getRequestURI().toString().substring("/fhir".length());
                exchange.getResponseHeaders().set("Location", other.address() + path);
                exchange.sendResponseHeaders(status, -1);
                exchange.close();
                return true;
              });
      assertThat(send().err()).startsWith("localhost: the system redirects to another address");
      assertThat(other.asked).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"two words", "", "s3cret\u0000", "Bearer:s3cret"})
  void aFileWithoutATokenIsNotSent(String text) throws IOException {
    Files.writeString(folder.resolve("token"), text);
    assertThat(send().err())
        .isEqualTo(
            fitting.file("token")
                + ": expected an access token: one word of letters, digits and . _ ~ + / - =. Ask"
                + " the clinic for one.\n");
    assertThat(system.asked).isEmpty();
  }

  @Test
  void anotherFileIsNotOverwritten() throws IOException {
    Files.writeString(folder.resolve("b.json"), "mine");
    assertThat(send().err())
        .endsWith(
            "b.json: already exists, with something other than what the record says now. Choose"
                + " another file.\n");
    assertThat(system.asked).isEmpty();
  }
}
