package caryatid.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What others on this computer, and pages of other sites, may try. */
@Timeout(60)
class HostileTest {
  @TempDir Path folder;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = new OpenWindow(folder);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  @Test
  void theOwnerIsLetIn() throws Exception {
    HttpResponse<String> page = window.ask(window.own("/"));
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("There are no records yet.");
    assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
    assertThat(page.headers().firstValue("Referrer-Policy")).contains("same-origin");
    assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
        .contains("default-src 'none'", "frame-ancestors 'none'")
        .doesNotContain("unsafe", "http");
  }

  @Test
  void theCookieIsNotForScriptsNorForOtherSites() throws Exception {
    HttpResponse<String> let = window.ask(OpenWindow.unknown(window.key()));
    assertThat(let.statusCode()).isEqualTo(303);
    assertThat(let.headers().firstValue("Location")).contains("/");
    assertThat(let.headers().firstValue("Set-Cookie").orElseThrow())
        .matches("caryatid-\\d+=[0-9a-f]{64}; Path=/; HttpOnly; SameSite=Lax");
  }

  @Test
  void withoutACookieOrWithAWrongOneNothingIsShown() throws Exception {
    String address = window.origin() + "/";
    assertThat(window.ask(OpenWindow.unknown(address)).statusCode()).isEqualTo(403);
    String wrong = window.cookie().replaceAll(".$", "x");
    HttpResponse<String> refused = window.ask(OpenWindow.unknown(address).header("Cookie", wrong));
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.body()).isEqualTo("Refused (403).\n");
    HttpResponse<String> key = window.ask(OpenWindow.unknown(window.origin() + "/open?key=0"));
    assertThat(key.statusCode()).isEqualTo(403);
    assertThat(key.headers().firstValue("Set-Cookie")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "localhost", "127.0.0.1", "127.0.0.1:1", ""})
  void aForeignHostIsRefused(String host) throws Exception {
    assertThat(
            raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nCookie: " + window.cookie() + "\r\n\r\n"))
        .startsWith("HTTP/1.1 4");
  }

  @Test
  void twoHostsAreRefused() throws Exception {
    String host = "Host: 127.0.0.1:" + window.port() + "\r\n";
    assertThat(raw("GET / HTTP/1.1\r\n" + host + host + "Cookie: " + window.cookie() + "\r\n\r\n"))
        .startsWith("HTTP/1.1 421");
  }

  @ParameterizedTest
  @ValueSource(strings = {"https://evil.example", "null", "http://localhost", "http://127.0.0.1:1"})
  void aFormOfAnotherSiteIsRefused(String origin) throws Exception {
    HttpResponse<String> sent =
        window.ask(
            window
                .own("/end")
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("a=b")));
    assertThat(sent.statusCode()).isEqualTo(403);
    assertThat(window.page("/")).contains("There are no records yet.");
  }

  @Test
  void aFormWithoutAnOriginIsRefused() throws Exception {
    assertThat(
            window
                .ask(window.own("/end").POST(HttpRequest.BodyPublishers.ofString("a=b")))
                .statusCode())
        .isEqualTo(403);
  }

  @Test
  void anImageThatAnotherSiteAsksForIsRefusedAndALinkToThePageIsNot() throws Exception {
    assertThat(
            window
                .ask(
                    window
                        .own("/")
                        .header("Sec-Fetch-Site", "cross-site")
                        .header("Sec-Fetch-Dest", "image"))
                .statusCode())
        .isEqualTo(403);
    assertThat(
            window
                .ask(
                    window
                        .own("/")
                        .header("Sec-Fetch-Site", "cross-site")
                        .header("Sec-Fetch-Dest", "document"))
                .statusCode())
        .isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../../etc/passwd",
        "/..%2f..%2fetc/passwd",
        "/r/%2e%2e/x",
        "//etc/passwd",
        "/r/../new",
        "/window.css/../../x",
        "/r/..\\..\\x",
        "/.git",
        "http://127.0.0.1/"
      })
  void tricksWithPathsFindNothing(String path) throws Exception {
    assertThat(
            raw(
                "GET "
                    + path
                    + " HTTP/1.1\r\nHost: 127.0.0.1:"
                    + window.port()
                    + "\r\nCookie: "
                    + window.cookie()
                    + "\r\n\r\n"))
        .startsWith("HTTP/1.1 4");
  }

  @Test
  void tenGigabytesAnnouncedAreRefusedUnread() throws Exception {
    for (String type : List.of("application/octet-stream", "application/x-www-form-urlencoded")) {
      assertThat(raw(post(type, "Content-Length: 10737418240\r\n"))).startsWith("HTTP/1.1 413");
    }
  }

  @Test
  void aBodyOfUnknownLengthAndAnUnknownKindAreRefused() throws Exception {
    assertThat(raw(post("application/octet-stream", "Transfer-Encoding: chunked\r\n")))
        .startsWith("HTTP/1.1 411");
    assertThat(raw(post("text/plain", "Content-Length: 3\r\n"))).startsWith("HTTP/1.1 415");
  }

  @Test
  void aPageOpensWhileEightSendNothingAfterTheirHeaders() throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 8; i++) {
        slow.add(begin(post("application/octet-stream", "Content-Length: 1000\r\n")));
        slow.add(begin(post("application/x-www-form-urlencoded", "Content-Length: 1000\r\n")));
      }
      assertThat(window.page("/")).contains("There are no records yet.");
    } finally {
      closeAll(slow);
    }
  }

  @Test
  void aPageOpensWhileTwoHundredConnectionsSendHalfARequest() throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 200; i++) {
        slow.add(begin("GET / HTTP/1.1\r\nHost: 127"));
      }
      for (int i = 0; i < 20; i++) {
        assertThat(window.page("/")).contains("There are no records yet.");
      }
    } finally {
      closeAll(slow);
    }
  }

  @Test
  void itCannotBeReachedByAnotherAddressOfThisComputer() throws Exception {
    for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
      for (InetAddress address : each.inetAddresses().toList()) {
        if (!address.getHostAddress().equals("127.0.0.1")) {
          assertThat(isReached(address)).as(address.toString()).isFalse();
        }
      }
    }
    assertThat(isReached(loopback(1))).isTrue();
    assertThat(isReached(loopback(2))).isFalse();
  }

  @Test
  void theStartFileIsItsOwnersAloneAndGoesWithTheWindow() throws Exception {
    Path file = window.window().startFile();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
        .isEqualTo("rwx------");
    window.close();
    assertThat(file).doesNotExist();
  }

  @Test
  void aSecondStartFindsTheFirstAndAnotherFolderHasItsOwn() throws Exception {
    assertThat(Window.open(OpenWindow.setting(folder))).isEmpty();
    assertThat(Window.startFile(folder.resolve("home"), folder.resolve("records")))
        .isEqualTo(window.window().startFile());
    try (OpenWindow other = new OpenWindow(folder.resolve("other"))) {
      assertThat(other.port()).isNotEqualTo(window.port());
    }
  }

  @Test
  void aStartFileThatAKilledProgramLeftIsReplaced() throws Exception {
    Path file = window.window().startFile();
    window.close();
    Files.writeString(file, "stale");
    window = new OpenWindow(folder);
    assertThat(window.window().startFile()).isEqualTo(file);
    assertThat(Files.readString(file)).contains(window.origin() + "/open?key=");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  @Test
  void itEndsFromItsPage() throws Exception {
    assertThat(window.send("/end").body()).contains("The program has ended.");
    window.window().awaitEnd();
  }

  @Test
  void halfAFileIsNotTakenForAShortOne() throws Exception {
    String base = window.start("K7-right", "right");
    String half =
        post("application/octet-stream", "Content-Length: 1000\r\n")
            .replace("POST /end", "POST " + base + "/static-alignment/recording?name=a.csv");
    try (Socket socket = begin(half + "x".repeat(500))) {
      socket.shutdownOutput();
      socket.setSoTimeout(10_000);
      assertThat(new String(socket.getInputStream().readAllBytes(), US_ASCII))
          .doesNotStartWith("HTTP/1.1 200");
    }
    assertThat(folder.resolve("records/drafts/K7-right/recording-1")).doesNotExist();
  }

  private String post(String type, String length) {
    return "POST /end HTTP/1.1\r\nHost: 127.0.0.1:"
        + window.port()
        + "\r\nOrigin: "
        + window.origin()
        + "\r\nCookie: "
        + window.cookie()
        + "\r\nContent-Type: "
        + type
        + "\r\n"
        + length
        + "\r\n";
  }

  private boolean isReached(InetAddress address) {
    try (Socket socket = new Socket(address, window.port())) {
      return socket.isConnected();
    } catch (IOException refused) {
      return false;
    }
  }

  /** An address of the loopback network, 127.0.0.0/8. */
  private static InetAddress loopback(int last) throws IOException {
    return InetAddress.getByAddress(new byte[] {127, 0, 0, (byte) last});
  }

  private Socket begin(String bytes) throws IOException {
    Socket socket = new Socket(loopback(1), window.port());
    socket.getOutputStream().write(bytes.getBytes(US_ASCII));
    socket.getOutputStream().flush();
    return socket;
  }

  private String raw(String request) throws IOException {
    try (Socket socket = begin(request)) {
      socket.setSoTimeout(10_000);
      InputStream in = socket.getInputStream();
      byte[] bytes = in.readNBytes(12);
      return new String(bytes, US_ASCII);
    }
  }

  private static void closeAll(List<Socket> sockets) throws IOException {
    for (Socket socket : sockets) {
      socket.close();
    }
  }
}
