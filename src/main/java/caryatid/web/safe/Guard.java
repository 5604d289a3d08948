package caryatid.web.safe;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Refuses what does not come from the owner's own page. A foreign Host is a name that was bound to
 * this computer by somebody else (DNS rebinding); a foreign Origin is a page of another site.
 */
public final class Guard {
  /** No percent signs: no address of the window needs one. */
  private static final Pattern PATH = Pattern.compile("(/[A-Za-z0-9~_-][A-Za-z0-9._~-]*)+|/");

  private static final List<String> METHODS = List.of("GET", "HEAD", "POST");
  private static final List<String> OWN_SITES = List.of("same-origin", "none");

  private final String host;
  private final String cookie;
  private final Token session;
  private final Token key;

  /**
   * @param port the server's
   */
  public Guard(int port) {
    this.host = "127.0.0.1:" + port;
    // Cookies are not kept apart by port: two windows need two names.
    this.cookie = "caryatid-" + port;
    this.session = Token.random();
    this.key = Token.random();
  }

  /** Where the window is, without a slash at the end. */
  public String origin() {
    return "http://" + host;
  }

  /** What the start file shows to be let in. */
  Token key() {
    return key;
  }

  /** The header that lets a browser in from now on. */
  public String cookie() {
    return cookie + "=" + session.reveal() + "; Path=/; HttpOnly; SameSite=Lax";
  }

  /** Whether an address shows the key of the start file. */
  public boolean isKey(Optional<String> shown) {
    return shown.filter(key::is).isPresent();
  }

  /**
   * The HTTP status with which a request is refused; empty where nothing is wrong but that it may
   * lack the cookie.
   */
  public Optional<Integer> refusal(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String path = exchange.getRequestURI().getRawPath();
    if (!METHODS.contains(exchange.getRequestMethod())) {
      return Optional.of(405);
    }
    if (!List.of(host).equals(headers.get("Host")) || exchange.getRequestURI().isAbsolute()) {
      return Optional.of(421);
    }
    if (path == null || !PATH.matcher(path).matches()) {
      return Optional.of(404);
    }
    return isForeign(exchange) ? Optional.of(403) : Optional.empty();
  }

  private boolean isForeign(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> origins = headers.getOrDefault("Origin", List.of());
    boolean changes = exchange.getRequestMethod().equals("POST");
    if (changes ? !origins.equals(List.of(origin())) : origins.stream().anyMatch(this::isOther)) {
      return true;
    }
    String site = Optional.ofNullable(headers.getFirst("Sec-Fetch-Site")).orElse("none");
    boolean visit = !changes && "document".equals(headers.getFirst("Sec-Fetch-Dest"));
    return !OWN_SITES.contains(site) && !visit;
  }

  private boolean isOther(String origin) {
    return !origin.equals(origin());
  }

  /** Whether a request carries the cookie of this window. */
  public boolean isOwner(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(pair -> pair.startsWith(cookie + "="))
        .anyMatch(pair -> session.is(pair.substring(cookie.length() + 1)));
  }

  /** What every answer carries: nothing is kept, framed, or taken from elsewhere. */
  public static void protect(Headers headers) {
    headers.set(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
            + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    // With no-referrer a browser sends "Origin: null" with a plain form.
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }
}
