package caryatid.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A window as a program of its own with 256 MB, under what a day and a nuisance bring. */
@Tag("proof")
@Timeout(300)
class LoadProofTest {
  private static final Path EXPORT = Path.of("sample-recordings/k7/shoe.csv");
  private static final Path JDK = Path.of(System.getProperty("java.home"), "bin");

  /**
   * What may be left of 200 pages: caches and the like; 10 kB a page would be 2 MB (regression).
   */
  private static final long MOST_LEFT_BYTES = 1 << 20;

  @TempDir Path folder;
  private Process program;
  private String origin;
  private String cookie;
  private final HttpClient client = HttpClient.newBuilder().build();

  @BeforeEach
  void start() throws Exception {
    program =
        new ProcessBuilder(
                JDK.resolve("java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-Dcaryatid.windows=" + folder.resolve("windows"),
                "-cp",
                System.getProperty("java.class.path"),
                "caryatid.cli.Main",
                "open",
                "--no-browser",
                "--records",
                folder.resolve("records").toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    program.inputReader().readLine();
    Matcher url = Pattern.compile("url=((http://[^/]+)[^\"]+)").matcher(startFile());
    assertThat(url.find()).isTrue();
    origin = url.group(2);
    HttpResponse<String> let = get(HttpRequest.newBuilder(URI.create(url.group(1))));
    cookie = let.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  private String startFile() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("windows"))) {
      return Files.readString(
          files.filter(file -> file.toString().endsWith(".html")).findFirst().orElseThrow());
    }
  }

  @AfterEach
  void end() throws Exception {
    program.destroy();
    assertThat(program.waitFor(30, TimeUnit.SECONDS)).isTrue();
  }

  @Test
  void theHeapIsFlatOver200PagesAnd20Uploads() throws Exception {
    String record = record();
    look(record, 100);
    long before = liveBytes();
    look(record, 200);
    long after = liveBytes();
    System.out.printf("Live after 100 pages %,d bytes, after 200 more %,d%n", before, after);
    assertThat(after - before).isLessThan(MOST_LEFT_BYTES);
  }

  private String record() throws Exception {
    String form = "record-code=K7-right&wearer=K7&side=right&level=transtibial&by-initials=AB";
    HttpResponse<String> started =
        get(
            own("/new")
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    return started.headers().firstValue("Location").orElseThrow().replaceAll("/[^/]*$", "");
  }

  private void look(String record, int pages) throws Exception {
    List<String> all =
        List.of(
            "/",
            "/plates",
            record + "/arriving",
            record + "/bench-alignment",
            record + "/static-alignment",
            record + "/dynamic-alignment",
            record + "/record");
    for (int i = 0; i < pages; i++) {
      assertThat(get(own(all.get(i % all.size()))).statusCode()).isEqualTo(200);
      if (i % 10 == 0) {
        assertThat(get(own(upload())).statusCode()).isEqualTo(200);
      }
    }
  }

  private String upload() throws Exception {
    return get(own("/plates/file?name=shoe.csv")
            .header("Origin", origin)
            .header("Content-Type", "application/octet-stream")
            .POST(HttpRequest.BodyPublishers.ofFile(EXPORT)))
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  /** What is alive after a collection, by the JDK's own tool. */
  private long liveBytes() throws Exception {
    Process histogram =
        new ProcessBuilder(
                JDK.resolve("jcmd").toString(), Long.toString(program.pid()), "GC.class_histogram")
            .start();
    String text = new String(histogram.getInputStream().readAllBytes(), US_ASCII);
    Matcher total = Pattern.compile("(?m)^Total\\s+\\d+\\s+(\\d+)").matcher(text);
    assertThat(total.find()).as(text).isTrue();
    return Long.parseLong(total.group(1));
  }

  @Test
  void twoHundredConnectionsAtOnceAreAllAnswered() {
    List<CompletableFuture<Integer>> asked =
        IntStream.range(0, 200)
            .mapToObj(
                i ->
                    HttpClient.newBuilder()
                        .build()
                        .sendAsync(own("/").build(), BodyHandlers.ofString())
                        .thenApply(HttpResponse::statusCode))
            .toList();
    assertThat(asked.stream().map(CompletableFuture::join)).hasSize(200).containsOnly(200);
  }

  /** Half of them stop in the headers, half in the body; more come than there are threads. */
  @Test
  void afterSlowSendersOnEveryThreadTheWindowIsThereAgainInHalfAMinute() throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 600; i++) {
        begin(slow, i % 2 == 0 ? "GET / HTTP/1.1\r\nHost: 127" : halfABody());
      }
      long until = System.nanoTime() + Duration.ofSeconds(30).toNanos();
      boolean opened = false;
      while (!opened && System.nanoTime() < until) {
        opened = isOpened();
      }
      assertThat(opened).isTrue();
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
    assertThat(get(own("/")).statusCode()).isEqualTo(200);
  }

  private boolean isOpened() throws Exception {
    try {
      return get(own("/").timeout(Duration.ofSeconds(5))).statusCode() == 200;
    } catch (IOException refused) {
      Thread.sleep(200);
      return false;
    }
  }

  private String halfABody() {
    return "POST /plates/file?name=x HTTP/1.1\r\nHost: "
        + origin.replace("http://", "")
        + "\r\nOrigin: "
        + origin
        + "\r\nCookie: "
        + cookie
        + "\r\nContent-Type: application/octet-stream\r\nContent-Length: 1000\r\n\r\nhalf";
  }

  private void begin(List<Socket> slow, String bytes) {
    try {
      Socket socket =
          new Socket(
              InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), URI.create(origin).getPort());
      slow.add(socket);
      socket.getOutputStream().write(bytes.getBytes(US_ASCII));
      socket.getOutputStream().flush();
    } catch (IOException refused) {
      // So many at once are not let in.
    }
  }

  private HttpRequest.Builder own(String path) {
    return HttpRequest.newBuilder(URI.create(origin + path)).header("Cookie", cookie);
  }

  private HttpResponse<String> get(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofString());
  }
}
