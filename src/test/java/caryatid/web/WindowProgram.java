package caryatid.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A window as a program of its own with 256 MB, and its owner's browser as far as a test needs one.
 */
final class WindowProgram implements AutoCloseable {
  private static final Path JDK = Path.of(System.getProperty("java.home"), "bin");

  private final Path folder;
  private final Process program;
  private final String origin;
  private final String cookie;
  private final HttpClient client = HttpClient.newBuilder().build();

  WindowProgram(Path folder) throws Exception {
    this.folder = folder;
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
    Matcher url =
        Pattern.compile("url=((http://[^/]+)[^\"]+)").matcher(Files.readString(startFile()));
    assertThat(url.find()).isTrue();
    origin = url.group(2);
    HttpResponse<String> let = get(HttpRequest.newBuilder(URI.create(url.group(1))));
    cookie = let.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  Path startFile() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("windows"))) {
      return files.filter(file -> file.toString().endsWith(".html")).findFirst().orElseThrow();
    }
  }

  ProcessHandle process() {
    return program.toHandle();
  }

  String origin() {
    return origin;
  }

  String cookie() {
    return cookie;
  }

  HttpRequest.Builder own(String path) {
    return HttpRequest.newBuilder(URI.create(origin + path)).header("Cookie", cookie);
  }

  HttpResponse<String> get(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  /** Sends a form. */
  HttpResponse<String> send(String path, Map<String, String> fields) throws Exception {
    String form =
        fields.entrySet().stream()
            .map(f -> f.getKey() + "=" + URLEncoder.encode(f.getValue(), UTF_8))
            .collect(Collectors.joining("&"));
    return get(
        own(path)
            .header("Origin", origin)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form)));
  }

  /** Starts a record; gives the address of its pages. */
  String start(String code) throws Exception {
    HttpResponse<String> started =
        send(
            "/new",
            Map.of(
                "record-code", code,
                "wearer", code.replaceAll("-.*", ""),
                "side", "right",
                "level", "transtibial",
                "by-initials", "AB"));
    return started.headers().firstValue("Location").orElseThrow().replaceAll("/[^/]*$", "");
  }

  /** What is alive after a collection, by the JDK's own tool. */
  long liveBytes() throws Exception {
    Process histogram =
        new ProcessBuilder(
                JDK.resolve("jcmd").toString(), Long.toString(program.pid()), "GC.class_histogram")
            .start();
    String text = new String(histogram.getInputStream().readAllBytes(), US_ASCII);
    Matcher total = Pattern.compile("(?m)^Total\\s+\\d+\\s+(\\d+)").matcher(text);
    assertThat(total.find()).as(text).isTrue();
    return Long.parseLong(total.group(1));
  }

  @Override
  public void close() {
    program.destroy();
    program.onExit().orTimeout(30, TimeUnit.SECONDS).join();
  }
}
