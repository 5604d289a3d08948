package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import caryatid.cli.Main;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.ArrayList;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.Test;

/**
 * `record send` over an encrypted connection. A program of its own is told to trust the
 * certificate, and has the token in its environment.
 */
class SendEncryptedTest extends StubSending {
  private static final String PASSWORD = "invented";
  private static final String NOT_TRUSTED =
      "localhost: this computer does not trust the system's certificate, or the connection could"
          + " not be encrypted. Nothing was sent. Ask the clinic's IT department.\n";

  /** Replaces the system by one with a certificate that nobody but itself vouches for. */
  private void encrypt(String host) throws Exception {
    String keytool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
    Process made =
        new ProcessBuilder(
                keytool,
                "-genkeypair",
                "-alias",
                "demo",
                "-keyalg",
                "EC",
                "-dname",
                "CN=invented",
                "-ext",
                "san=dns:" + host,
                "-storetype",
                "PKCS12",
                "-keystore",
                keys().toString(),
                "-storepass",
                PASSWORD)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(made.waitFor()).isZero();
    encrypt(keys());
  }

  private void encrypt(Path certificates) throws Exception {
    system.close();
    system = StubSystem.encrypted(certificates(certificates));
    system.patient(ToldFitting.SYSTEM, ToldFitting.NUMBER);
  }

  private Path keys() {
    return folder.resolve("keys.p12");
  }

  /** Certificates that are kept, as their {@code make.sh} made them. */
  private static Path made(String name) throws URISyntaxException {
    return Path.of(
        SendEncryptedTest.class.getResource("/caryatid/exchange/certificates/" + name).toURI());
  }

  private static SSLContext certificates(Path keys) throws GeneralSecurityException, IOException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(keys)) {
      store.load(in, PASSWORD.toCharArray());
    }
    KeyManagerFactory managers = KeyManagerFactory.getInstance("PKIX");
    managers.init(store, PASSWORD.toCharArray());
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(managers.getKeyManagers(), null, null);
    return context;
  }

  /** A program of its own, which trusts the certificate. */
  private Run trusting(String token) throws IOException, InterruptedException {
    return trusting(keys(), token);
  }

  /** A program of its own, which trusts what is in a store. */
  private Run trusting(Path trusted, String token) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-Djavax.net.ssl.trustStore=" + trusted));
    line.add("-Djavax.net.ssl.trustStorePassword=" + PASSWORD);
    line.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    line.addAll(command(system.address(), ToldFitting.PATIENT));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder program =
        new ProcessBuilder(line).redirectOutput(out.toFile()).redirectError(err.toFile());
    program.environment().put("CARYATID_FHIR_TOKEN", token);
    int code = program.start().waitFor();
    return new Run(code, text(out), text(err));
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  @Test
  void aCertificateThatNobodyVouchesForIsRefused() throws Exception {
    encrypt("localhost");
    Run run = send();
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).isEqualTo(NOT_TRUSTED + fitting.file("b.json") + LOST);
    assertThat(system.asked).isEmpty();
    assertThat(fitting.kept("entry.json")).hasSize(4);
  }

  @Test
  void aTrustedSystemGetsTheRecordAndTheTokenOfTheEnvironment() throws Exception {
    encrypt("localhost");
    Run run = trusting("fr0m.the-environment");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).startsWith("Sent to " + system.address() + ": 9 resources newly stored");
    assertThat(system.asked).allMatch(asked -> asked.endsWith(" Bearer fr0m.the-environment"));
    assertThat(fitting.everything()).doesNotContain("fr0m");
  }

  @Test
  void aTrustedCertificateOfAnotherHostIsRefused() throws Exception {
    encrypt("other.invalid");
    Run run = trusting("fr0m.the-environment");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).isEqualTo(NOT_TRUSTED + fitting.file("b.json") + LOST);
    assertThat(system.asked).isEmpty();
  }

  /** The same authority vouches for both: only the date differs. */
  @Test
  void aCertificateThatRanOutIsRefused() throws Exception {
    encrypt(made("valid.p12"));
    assertThat(trusting(made("authority.p12"), "fr0m.the-environment").code()).isZero();
    encrypt(made("expired.p12"));
    Run run = trusting(made("authority.p12"), "fr0m.the-environment");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).startsWith(NOT_TRUSTED);
    assertThat(system.asked).isEmpty();
  }

  @Test
  void aTokenInTheEnvironmentThatIsNoneIsNotRepeated() throws Exception {
    encrypt("localhost");
    Run run = trusting("two words");
    assertThat(run.err())
        .isEqualTo(
            "CARYATID_FHIR_TOKEN: expected an access token: one word of letters, digits and . _ ~ +"
                + " / - =. Ask the clinic for one.\n");
    assertThat(system.asked).isEmpty();
  }
}
