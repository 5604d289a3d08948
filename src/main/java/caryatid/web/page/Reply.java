package caryatid.web.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a request is answered with.
 *
 * @param status of HTTP
 * @param type media type
 * @param bytes the body; nothing where it is a file
 * @param file a file that was made to be sent, and goes once it was
 * @param headers further headers
 */
public record Reply(
    int status, String type, byte[] bytes, Optional<Path> file, Map<String, String> headers) {
  public Reply {
    headers = Map.copyOf(headers);
  }

  public Reply(int status, String type, byte[] bytes, Map<String, String> headers) {
    this(status, type, bytes, Optional.empty(), headers);
  }

  /** A page. */
  public static Reply page(int status, Markup page) {
    return new Reply(status, "text/html; charset=utf-8", utf8(page), Map.of());
  }

  /** A part of a page, for the script. */
  public static Reply part(Markup part) {
    return page(200, part);
  }

  /** After something was done: see the page there, so that reloading does not do it again. */
  public static Reply seeOther(String path) {
    return new Reply(303, "text/plain; charset=utf-8", new byte[0], Map.of("Location", path));
  }

  /**
   * A file to be kept.
   *
   * @param name letters, digits, dots and hyphens
   */
  public static Reply download(String name, String type, byte[] bytes) {
    return new Reply(
        200, type, bytes, Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""));
  }

  /**
   * A file to be kept, which is sent as it lies on the disk.
   *
   * @param name letters, digits, dots and hyphens
   * @param made the file; whoever sends the reply removes it
   */
  public static Reply download(String name, String type, Path made) {
    Reply named = download(name, type, new byte[0]);
    return new Reply(200, type, named.bytes(), Optional.of(made), named.headers());
  }

  /** The same reply with a header more. */
  public Reply with(String header, String value) {
    Map<String, String> all = new HashMap<>(headers);
    all.put(header, value);
    return new Reply(status, type, bytes, file, all);
  }

  private static byte[] utf8(Markup page) {
    return page.toString().getBytes(UTF_8);
  }
}
