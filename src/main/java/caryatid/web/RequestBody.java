package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.web.page.Request;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a request brings with it, by what it announces: fields of a form, or a file as it is. A body
 * of unknown length is not taken.
 *
 * @param file whether it is a file
 * @param bytes how long it is
 */
record RequestBody(boolean file, long bytes) {
  private static final long MOST_OF_A_FORM = 1 << 20;
  private static final long MOST_OF_A_FILE = 512L << 20;
  private static final Pattern PAGE =
      Pattern.compile("http://127\\.0\\.0\\.1:\\d+(/[A-Za-z0-9/~-]*)(\\?.*)?");
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final String FILE = "application/octet-stream";

  /** A request that is not taken. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final int status;

    Refused(int status) {
      super("status " + status);
      this.status = status;
    }

    int status() {
      return status;
    }
  }

  /**
   * What a request announces.
   *
   * @throws Refused if it does not say how long it is, or what
   */
  static RequestBody of(HttpExchange exchange) throws Refused {
    Headers headers = exchange.getRequestHeaders();
    if (!exchange.getRequestMethod().equals("POST")) {
      return new RequestBody(false, 0);
    }
    String length = Optional.ofNullable(headers.getFirst("Content-Length")).orElse("");
    if (!length.matches("\\d{1,18}") || headers.containsKey("Transfer-Encoding")) {
      throw new Refused(411);
    }
    String type = Optional.ofNullable(headers.getFirst("Content-Type")).orElse("");
    if (!type.startsWith(FORM) && !type.equals(FILE)) {
      throw new Refused(415);
    }
    return new RequestBody(type.equals(FILE), Long.parseLong(length));
  }

  boolean isFile() {
    return file;
  }

  boolean isTooLarge() {
    return bytes > (file ? MOST_OF_A_FILE : MOST_OF_A_FORM);
  }

  /** The request with its fields read. */
  Request fields(HttpExchange exchange) throws IOException {
    Map<String, List<String>> fields = new LinkedHashMap<>(query(exchange));
    byte[] body = announced(exchange).readNBytes((int) bytes);
    fields.putAll(FormFields.read(new String(body, UTF_8)));
    return request(exchange, fields, InputStream.nullInputStream());
  }

  /** The request with its file still to be read. */
  Request file(HttpExchange exchange) {
    return request(exchange, query(exchange), announced(exchange));
  }

  private InputStream announced(HttpExchange exchange) {
    return new AnnouncedBody(exchange.getRequestBody(), bytes);
  }

  private static Map<String, List<String>> query(HttpExchange exchange) {
    return FormFields.read(Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse(""));
  }

  private static Request request(
      HttpExchange exchange, Map<String, List<String>> fields, InputStream body) {
    List<String> path =
        Arrays.stream(exchange.getRequestURI().getRawPath().split("/"))
            .filter(part -> !part.isEmpty())
            .toList();
    boolean changes = exchange.getRequestMethod().equals("POST");
    return new Request(
        changes, path, fields, body, languages(exchange.getRequestHeaders()), from(exchange));
  }

  private static String from(HttpExchange exchange) {
    String referrer =
        Optional.ofNullable(exchange.getRequestHeaders().getFirst("Referer")).orElse("");
    Matcher own = PAGE.matcher(referrer);
    return own.matches() ? own.group(1) : "/";
  }

  /** The cookie's choice first, then what the browser says its owner reads. */
  private static List<String> languages(Headers headers) {
    List<String> tags = new ArrayList<>();
    headers.getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(pair -> pair.startsWith("language="))
        .forEach(pair -> tags.add(pair.substring(pair.indexOf('=') + 1)));
    headers.getOrDefault("Accept-Language", List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(",")))
        .forEach(range -> tags.add(range.split("[;-]")[0].strip()));
    return tags;
  }
}
