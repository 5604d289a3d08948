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
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
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

  /**
   * What may be left of 200 pages: caches and the like; 10 kB a page would be 2 MB (regression).
   */
  private static final long MOST_LEFT_BYTES = 1 << 20;

  @TempDir Path folder;
  private WindowProgram program;

  @BeforeEach
  void start() throws Exception {
    program = new WindowProgram(folder);
  }

  @AfterEach
  void end() {
    program.close();
  }

  @Test
  void theHeapIsFlatOver200PagesAnd20Uploads() throws Exception {
    String record = program.start("K7-right");
    look(record, 100);
    long before = program.liveBytes();
    look(record, 200);
    long after = program.liveBytes();
    System.out.printf("Live after 100 pages %,d bytes, after 200 more %,d%n", before, after);
    assertThat(after - before).isLessThan(MOST_LEFT_BYTES);
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
      assertThat(program.get(program.own(all.get(i % all.size()))).statusCode()).isEqualTo(200);
      if (i % 10 == 0) {
        assertThat(program.get(program.own(upload())).statusCode()).isEqualTo(200);
      }
    }
  }

  private String upload() throws Exception {
    return program
        .get(
            program
                .own("/plates/file?name=shoe.csv")
                .header("Origin", program.origin())
                .header("Content-Type", "application/octet-stream")
                .POST(HttpRequest.BodyPublishers.ofFile(EXPORT)))
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  @Test
  void twoHundredConnectionsAtOnceAreAllAnswered() {
    List<CompletableFuture<Integer>> asked =
        IntStream.range(0, 200)
            .mapToObj(
                i ->
                    HttpClient.newBuilder()
                        .build()
                        .sendAsync(program.own("/").build(), BodyHandlers.ofString())
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
    assertThat(program.get(program.own("/")).statusCode()).isEqualTo(200);
  }

  private boolean isOpened() throws Exception {
    try {
      return program.get(program.own("/").timeout(Duration.ofSeconds(5))).statusCode() == 200;
    } catch (IOException refused) {
      Thread.sleep(200);
      return false;
    }
  }

  private String halfABody() {
    return "POST /plates/file?name=x HTTP/1.1\r\nHost: "
        + program.origin().replace("http://", "")
        + "\r\nOrigin: "
        + program.origin()
        + "\r\nCookie: "
        + program.cookie()
        + "\r\nContent-Type: application/octet-stream\r\nContent-Length: 1000\r\n\r\nhalf";
  }

  private void begin(List<Socket> slow, String bytes) {
    try {
      Socket socket =
          new Socket(
              InetAddress.getByAddress(new byte[] {127, 0, 0, 1}),
              URI.create(program.origin()).getPort());
      slow.add(socket);
      socket.getOutputStream().write(bytes.getBytes(US_ASCII));
      socket.getOutputStream().flush();
    } catch (IOException refused) {
      // So many at once are not let in.
    }
  }
}
