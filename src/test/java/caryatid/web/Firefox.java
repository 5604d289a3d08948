package caryatid.web;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Debian's firefox-esr, driven through its remote agent by WebDriver BiDi (W3C working draft),
 * which needs no driver beside it.
 */
final class Firefox implements RealBrowser {
  private static final Path BROWSER = Path.of("/usr/bin/firefox-esr");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path profile;
  private final Process program;
  private final BidiSession session;
  private final String blank;
  private final String tab;

  /**
   * @param profile a folder of its own
   * @param language the one that it asks for, such as {@code de-DE}
   */
  Firefox(Path profile, String language) throws Exception {
    assumeTrue(
        Files.isExecutable(BROWSER), "skipped: no Firefox in /usr/bin (Debian's firefox-esr)");
    this.profile = Files.createDirectories(profile);
    Files.writeString(
        profile.resolve("user.js"),
        """
        user_pref("intl.accept_languages", "%s");
        user_pref("datareporting.policy.dataSubmissionEnabled", false);
        user_pref("app.normandy.enabled", false);
        """
            .formatted(language));
    program =
        new ProcessBuilder(
                BROWSER.toString(),
                "--headless",
                "--no-remote",
                "--profile",
                profile.toString(),
                "--remote-debugging-port=0",
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    session = new BidiSession(address());
    session.ask("session.new", Map.of("capabilities", Map.of()));
    session.ask(
        "session.subscribe",
        Map.of("events", List.of("log.entryAdded", "network.beforeRequestSent")));
    blank = session.ask("browsingContext.getTree", Map.of()).at("/contexts/0/context").asText();
    // The first tab has no focus, and without it a key presses no button.
    tab = session.ask("browsingContext.create", Map.of("type", "tab")).get("context").asText();
    activate(tab);
  }

  private void activate(String which) {
    session.ask("browsingContext.activate", Map.of("context", which));
  }

  /** Where it listens, which it writes into its profile. */
  private URI address() throws IOException {
    Path said = profile.resolve("WebDriverBiDiServer.json");
    for (int i = 0; i < 1500 && program.isAlive(); i++) {
      if (Files.exists(said) && JSON.readTree(said.toFile()).at("/ws_port").asInt() > 0) {
        JsonNode at = JSON.readTree(said.toFile());
        return URI.create(
            "ws://%s:%s/session".formatted(at.at("/ws_host").asText(), at.at("/ws_port").asInt()));
      }
      Hand.pause();
    }
    throw new IOException("Firefox does not listen");
  }

  @Override
  public void open(Window window) {
    String start = window.startFile().toUri().toString();
    session.ask("browsingContext.navigate", Map.of("context", tab, "url", start));
    for (int i = 0; i < 500; i++) {
      if (Boolean.TRUE.equals(run("return !!document.getElementById('main');"))) {
        return;
      }
      Hand.pause();
    }
  }

  @Override
  public void saveTo(Path folder) {
    String to = folder.toAbsolutePath().toString();
    session.ask(
        "browser.setDownloadBehavior",
        Map.of("downloadBehavior", Map.of("type", "allowed", "destinationFolder", to)));
  }

  /** A page that is being left answers null. */
  @Override
  public Object run(String script, Object... arguments) {
    List<Map<String, String>> given =
        Stream.of(arguments)
            .map(argument -> Map.of("type", "string", "value", argument.toString()))
            .toList();
    JsonNode answer =
        session.answer(
            "script.callFunction",
            Map.of(
                "functionDeclaration",
                "function() { return JSON.stringify((function() {"
                    + script
                    + "}).apply(null, arguments) ?? null); }",
                "arguments",
                given,
                "awaitPromise",
                false,
                "target",
                Map.of("context", tab)));
    if (answer.at("/result/type").asText().equals("exception")) {
      throw new AssertionError(answer.at("/result/exceptionDetails/text").asText());
    }
    try {
      return JSON.readValue(answer.at("/result/result/value").asText("null"), Object.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void write(CharSequence keys) {
    List<Map<String, String>> actions =
        keys.codePoints()
            .mapToObj(Character::toString)
            .flatMap(
                key ->
                    Stream.of(
                        Map.of("type", "keyDown", "value", key),
                        Map.of("type", "keyUp", "value", key)))
            .toList();
    session.ask(
        "input.performActions",
        Map.of(
            "context",
            tab,
            "actions",
            List.of(Map.of("type", "key", "id", "keyboard", "actions", actions))));
    // Tab goes from the last of the page to the browser's toolbars, where no page hears a key.
    if (Boolean.FALSE.equals(run("return document.hasFocus();"))) {
      activate(blank);
      activate(tab);
    }
  }

  @Override
  public void give(String id, List<Path> files) {
    JsonNode field =
        session
            .ask(
                "browsingContext.locateNodes",
                Map.of("context", tab, "locator", Map.of("type", "css", "value", "#" + id)))
            .at("/nodes/0/sharedId");
    List<String> names = files.stream().map(f -> f.toAbsolutePath().toString()).toList();
    session.ask(
        "input.setFiles",
        Map.of("context", tab, "element", Map.of("sharedId", field.asText()), "files", names));
  }

  @Override
  public List<String> asked() {
    return session.events("network.beforeRequestSent").stream()
        .map(event -> event.at("/request/url").asText())
        .toList();
  }

  @Override
  public List<String> complaints() {
    return session.events("log.entryAdded").stream()
        .filter(event -> List.of("error", "warn").contains(event.at("/level").asText()))
        .map(event -> event.at("/text").asText())
        .toList();
  }

  @Override
  public void close() {
    session.close();
    program.destroy();
    program.onExit().orTimeout(30, TimeUnit.SECONDS).join();
    try (Stream<Path> all = Files.walk(profile)) {
      all.sorted((a, b) -> b.compareTo(a)).forEach(file -> file.toFile().delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
