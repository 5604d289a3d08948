package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills the window's program (SIGKILL, where the system has it) at random moments while somebody
 * types and keeps. What the page was told is saved is there at the next start: the draft as it was
 * answered last, or the one that was on its way; every entry that was confirmed, and none half. The
 * page sends half a second after the last key, so that less than 2 s of typing can be lost.
 */
@Tag("proof")
class WindowKillTest {
  private static final int KILLS = Math.min(100, Integer.getInteger("kills", 30));
  private static final int LONGEST_MS = 1500;
  private static final Pattern UP =
      Pattern.compile("name=\"landmark\\[1]\\.up\"[^>]* value=\"(\\d*)\"");
  private static final Pattern NEWEST = Pattern.compile("kept up to entry (\\d+)");

  @TempDir Path folder;
  private final HttpClient client = HttpClient.newHttpClient();
  private Process program;
  private String origin;
  private String cookie;
  private String base;
  private int typed = 100;
  private int entries = 1;

  /** What is left running holds the streams of the tests, and the build waits for it. */
  @AfterEach
  void end() throws InterruptedException {
    if (program != null) {
      program.destroyForcibly().waitFor();
    }
  }

  @Test
  void whatWasSavedOrKeptSurvivesAKill() throws Exception {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    start();
    HttpResponse<String> started =
        post("/new", "record-code=K7-right&wearer=K7&side=right&level=transtibial&by-initials=AB");
    assertThat(started.statusCode()).isEqualTo(303);
    plate();
    for (int kill = 0; kill < KILLS; kill++) {
      String when = "seed " + seed + ", kill " + kill;
      open();
      typeAndKill(random.nextInt(LONGEST_MS));
      start();
      open();
      assertThat(found(UP, "/static-alignment")).as(when).isBetween(typed, typed + 1);
      assertThat(found(NEWEST, "/record")).as(when).isBetween(entries, entries + 1);
      typed = found(UP, "/static-alignment");
      entries = found(NEWEST, "/record");
    }
    assertThat(get(base + "/verify").body()).doesNotContain("class=\"fault\"");
    System.out.println(KILLS + " kills of the window, seed " + seed + ", " + entries + " entries");
  }

  /** The page of the landmarks is there once a plate is known. */
  private void plate() throws Exception {
    Path samples = Path.of("sample-recordings/k7");
    program.destroyForcibly().waitFor();
    Process remember =
        caryatid(
            "clinic",
            "plate",
            samples.resolve("shoe.csv").toString(),
            samples.resolve("plate-pressure.yaml").toString());
    assertThat(remember.waitFor()).isZero();
    start();
    open();
    type(typed);
  }

  private Process caryatid(String... arguments) throws IOException {
    Stream<String> java =
        Stream.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Dcaryatid.windows=" + folder.resolve("windows"),
            "-cp",
            System.getProperty("java.class.path"),
            "caryatid.cli.Main");
    Stream<String> records = Stream.of("--records", folder.resolve("records").toString());
    return new ProcessBuilder(
            Stream.of(java, Stream.of(arguments), records).flatMap(s -> s).toList())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private void start() throws Exception {
    program = caryatid("open", "--no-browser");
    String said = program.inputReader().readLine();
    Matcher file = Pattern.compile("Open (\\S+\\.html)").matcher(said);
    assertThat(file.find()).as(said).isTrue();
    Matcher url =
        Pattern.compile("url=((http://[^/]+)[^\"]+)")
            .matcher(Files.readString(Path.of(file.group(1))));
    assertThat(url.find()).isTrue();
    origin = url.group(2);
    HttpResponse<String> let =
        client.send(
            HttpRequest.newBuilder(URI.create(url.group(1))).build(), BodyHandlers.ofString());
    cookie = let.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  private void open() throws Exception {
    Matcher handle = OpenWindow.HANDLE.matcher(get("/").body());
    assertThat(handle.find()).isTrue();
    base = handle.group();
  }

  /** Types without a pause, and keeps every fifth time, until the program is gone. */
  private void typeAndKill(int afterMs) throws Exception {
    Thread killing =
        new Thread(
            () -> {
              try {
                Thread.sleep(afterMs);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
              program.destroyForcibly();
            });
    killing.start();
    try {
      for (int i = 1; i < 10_000; i++) {
        type(typed + 1);
        typed++;
        if (i % 5 == 0) {
          keep();
        }
      }
    } catch (IOException gone) {
      assertThat(program.waitFor()).isNotZero();
    }
    killing.join();
  }

  private void type(int number) throws Exception {
    String fields = "part=live&landmark%5B1%5D.up=" + number;
    assertThat(post(base + "/static-alignment", fields).statusCode()).isEqualTo(200);
  }

  private void keep() throws Exception {
    String head = OpenWindow.head(get(base + "/arriving").body());
    HttpResponse<String> kept =
        post(base + "/arriving", "text=nothing+new&by-initials=AB&record-head=" + head);
    assertThat(kept.statusCode()).isEqualTo(303);
    String done = kept.headers().firstValue("Location").orElseThrow();
    assertThat(get(done).body()).contains("Kept as entry");
    entries++;
  }

  private int found(Pattern pattern, String step) throws Exception {
    String page = get(base + step).body();
    Matcher found = pattern.matcher(page);
    assertThat(found.find()).as(page).isTrue();
    return Integer.parseInt(found.group(1));
  }

  private HttpResponse<String> get(String path) throws Exception {
    return client.send(own(path).build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String path, String fields) throws Exception {
    return client.send(
        own(path)
            .header("Origin", origin)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(fields, UTF_8))
            .build(),
        BodyHandlers.ofString());
  }

  private HttpRequest.Builder own(String path) {
    return HttpRequest.newBuilder(URI.create(origin + path)).header("Cookie", cookie);
  }
}
