package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.usecase.Records;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A window that a test opened, and its owner's browser as far as a test needs one. */
final class OpenWindow implements AutoCloseable {
  static final Pattern HANDLE = Pattern.compile("/r/[0-9a-f]+");

  private final Window window;
  private final String cookie;
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();

  OpenWindow(Path folder) throws Exception {
    this(setting(folder));
  }

  OpenWindow(Window.Setting setting) throws Exception {
    window = Window.open(setting).orElseThrow();
    cookie = ask(unknown(key())).headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  static Window.Setting setting(Path folder) throws Exception {
    return new Window.Setting(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        0,
        folder.resolve("home"),
        Clock.system(ZoneId.systemDefault()),
        failure -> "kept");
  }

  /** The address in the start file. */
  String key() throws IOException {
    Matcher url = Pattern.compile("url=([^\"]+)").matcher(Files.readString(window.startFile()));
    url.find();
    return url.group(1);
  }

  String origin() {
    return window.address().replaceAll("/$", "");
  }

  int port() {
    return URI.create(origin()).getPort();
  }

  String cookie() {
    return cookie;
  }

  Window window() {
    return window;
  }

  HttpResponse<String> ask(HttpRequest.Builder request) throws Exception {
    return client.send(
        request.timeout(Duration.ofSeconds(30)).build(), HttpResponse.BodyHandlers.ofString());
  }

  static HttpRequest.Builder unknown(String address) {
    return HttpRequest.newBuilder(URI.create(address));
  }

  HttpRequest.Builder own(String path) {
    return unknown(origin() + path).header("Cookie", cookie);
  }

  String page(String path) throws Exception {
    return ask(own(path)).body();
  }

  /** Sends a form, and goes on to the page that answers it, as a browser does. */
  HttpResponse<String> send(String path, String... fields) throws Exception {
    HttpResponse<String> sent = sendOnly(path, fields);
    String next = sent.headers().firstValue("Location").orElse("");
    return next.contains("?done=") ? ask(own(next)) : sent;
  }

  HttpResponse<String> sendOnly(String path, String... fields) throws Exception {
    StringBuilder form = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      form.append(i == 0 ? "" : "&")
          .append(URLEncoder.encode(fields[i], UTF_8))
          .append('=')
          .append(URLEncoder.encode(fields[i + 1], UTF_8));
    }
    return ask(
        own(path)
            .header("Origin", origin())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form.toString())));
  }

  /** Starts a record; gives the address of its pages. */
  String start(String code, String side) throws Exception {
    HttpResponse<String> started =
        send(
            "/new",
            "record-code",
            code,
            "wearer",
            code,
            "side",
            side,
            "level",
            "transtibial",
            "by-initials",
            "AB");
    Matcher handle =
        HANDLE.matcher(started.headers().firstValue("Location").orElse(started.body()));
    if (!handle.find()) {
      throw new AssertionError(started.body());
    }
    return handle.group();
  }

  /** What a page says the record is. */
  static String head(String page) {
    Matcher head = Pattern.compile("name=\"record-head\" value=\"([0-9a-f]+)\"").matcher(page);
    head.find();
    return head.group(1);
  }

  static List<String> unescaped(String page) {
    return page.replaceAll("<[^>]*>", "\n").lines().map(String::strip).toList();
  }

  @Override
  public void close() throws IOException {
    window.close();
  }
}
