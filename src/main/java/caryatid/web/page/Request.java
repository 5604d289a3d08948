package caryatid.web.page;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A request of the owner's own page.
 *
 * @param changes whether it is meant to change something: POST
 * @param path the parts of the address
 * @param fields what a form or the address says, in order
 * @param body the bytes of a file that is sent as it is; empty where fields were sent
 * @param language the language tags that the cookie and the browser prefer, the best first
 * @param from the window's page that it was sent from; the first page where that is not known
 */
public record Request(
    boolean changes,
    List<String> path,
    Map<String, List<String>> fields,
    InputStream body,
    List<String> language,
    String from) {
  public Request {
    path = List.copyOf(path);
    fields = Map.copyOf(fields);
    language = List.copyOf(language);
  }

  /** A field; empty where it is not there or blank. */
  public Optional<String> field(String name) {
    return fields.getOrDefault(name, List.of()).stream()
        .findFirst()
        .map(String::strip)
        .filter(text -> !text.isEmpty());
  }

  /** A part of the address; empty where it is shorter. */
  public String part(int number) {
    return number < path.size() ? path.get(number) : "";
  }
}
