package caryatid.exchange;

import caryatid.sheet.yaml.InputValue;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Compares a resource that was sent with what the system stored. */
final class StoredDifference {
  private static final Pattern LOCAL = Pattern.compile("(?:.*/)?([A-Za-z]+/[A-Za-z0-9.-]{1,64})");
  private static final Pattern VERSION = Pattern.compile("/_history/[^/]*$");

  /** What systems write anew for themselves. */
  private static final Set<String> OF_THE_SYSTEM = Set.of("id", "meta", "text");

  /** Words, which are another language's where the system had the resource before. */
  private static final Set<String> WORDS =
      Set.of("text", "display", "language", "title", "description");

  private final Map<String, String> places;
  private final boolean wordsToo;

  /**
   * @param places where each resource of the bundle is stored, such as {@code Device/12}, by its
   *     {@code fullUrl}
   * @param wordsToo whether words are compared as well
   */
  StoredDifference(Map<String, String> places, boolean wordsToo) {
    this.places = Map.copyOf(places);
    this.wordsToo = wordsToo;
  }

  /** Type and id at the end of an address, its version left out; empty if there are none. */
  static Optional<String> place(String address) {
    Matcher found = LOCAL.matcher(VERSION.matcher(address).replaceFirst(""));
    return found.matches() ? Optional.of(found.group(1)) : Optional.empty();
  }

  /**
   * The first member that is stored otherwise, or is not there; more may be stored than was sent.
   */
  Optional<String> of(InputValue sent, InputValue stored) {
    if (!(sent instanceof InputValue.Group group)) {
      return Optional.of("");
    }
    return group.members().keySet().stream()
        .filter(key -> !OF_THE_SYSTEM.contains(key))
        .flatMap(key -> member(key, key, sent, stored).stream())
        .findFirst();
  }

  private Optional<String> member(String key, String path, InputValue sent, InputValue stored) {
    if (!wordsToo && WORDS.contains(key)) {
      return Optional.empty();
    }
    Optional<InputValue> there = FhirTree.at(stored, key);
    return there.isEmpty()
        ? Optional.of(path)
        : value(key, path, FhirTree.at(sent, key).orElseThrow(), there.get());
  }

  private Optional<String> value(String key, String path, InputValue sent, InputValue stored) {
    if (sent instanceof InputValue.Group group && stored instanceof InputValue.Group) {
      return group.members().keySet().stream()
          .flatMap(each -> member(each, path + "." + each, sent, stored).stream())
          .findFirst();
    }
    if (sent instanceof InputValue.Several several && stored instanceof InputValue.Several other) {
      return items(path, several.items(), other.items());
    }
    boolean same =
        sent instanceof InputValue.Single one
            && stored instanceof InputValue.Single other
            && same(key, one.text(), other.text());
    return same ? Optional.empty() : Optional.of(path);
  }

  private Optional<String> items(String path, List<InputValue> sent, List<InputValue> stored) {
    if (sent.size() != stored.size()) {
      return Optional.of(path);
    }
    for (int i = 0; i < sent.size(); i++) {
      Optional<String> found = value("", path, sent.get(i), stored.get(i));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private boolean same(String key, String sent, String stored) {
    if (key.equals("reference")) {
      return place(stored).equals(Optional.ofNullable(places.get(sent)));
    }
    return sent.equals(stored) || sameNumber(sent, stored) || sameTime(sent, stored);
  }

  private static boolean sameNumber(String sent, String stored) {
    try {
      return new BigDecimal(sent).compareTo(new BigDecimal(stored)) == 0;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static boolean sameTime(String sent, String stored) {
    try {
      return OffsetDateTime.parse(sent).isEqual(OffsetDateTime.parse(stored));
    } catch (DateTimeException e) {
      return false;
    }
  }
}
