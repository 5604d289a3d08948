package caryatid.sheet;

import caryatid.recording.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A group of keys with their values in a YAML file, read strictly: what is asked for must be there
 * in its form, and what is not asked for must not be there. A problem is noted and reading goes on,
 * so that all of a file's problems are found at once.
 */
public final class Section {
  private final Nodes nodes;
  private final Map<String, Nodes.Value> values;
  private final Place place;
  private final int troublesBefore;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();

  Section(Nodes nodes, Place place, int troublesBefore, Map<String, Nodes.Value> values) {
    this.nodes = nodes;
    this.place = place;
    this.troublesBefore = troublesBefore;
    this.values = new LinkedHashMap<>(values);
  }

  /**
   * Reads a file.
   *
   * @param yaml the file
   * @param kind the key that says what kind of file it is, with its version 1 as value
   * @param reader reads the outermost section, ending with {@link #build}
   * @throws BadInput with every problem found
   */
  public static <T> T read(NamedBytes yaml, String kind, Function<Section, Optional<T>> reader)
      throws BadInput {
    Nodes nodes = new Nodes(yaml.name());
    Section root = nodes.root(YamlTree.of(yaml));
    Optional<T> value = root.isA(kind) ? reader.apply(root) : Optional.empty();
    nodes.troubles().raise();
    return value.orElseThrow();
  }

  private boolean isA(String kind) {
    if (!has(kind)) {
      refuse(place, Writing.OTHER_KIND, Argument.text(kind));
      return false;
    }
    Form<String> one = w -> w.text().equals("1") ? Optional.of("1") : w.refuse(Writing.OTHER_VERSION);
    return required(kind, one).isPresent();
  }

  /** Whether a key is there; it counts as known from then on. */
  public boolean has(String key) {
    asked.add(key);
    return values.containsKey(key);
  }

  /** The value of a key that must be there. */
  public <T> Optional<T> required(String key, Form<T> form) {
    need(key);
    return optional(key, form);
  }

  /** The value of a key that may be left out. */
  public <T> Optional<T> optional(String key, Form<T> form) {
    return value(key).flatMap(value -> nodes.single(key, value.node(), form));
  }

  /** The section under a key that must be there. */
  public Optional<Section> requiredSection(String key) {
    need(key);
    return optionalSection(key);
  }

  /** The section under a key that may be left out. */
  public Optional<Section> optionalSection(String key) {
    return value(key).flatMap(value -> nodes.section(key, value.node()));
  }

  /** The list of sections under a key; empty when the key is left out. */
  public List<Section> sections(String key) {
    return items(key).stream().flatMap(n -> nodes.section(key, n).stream()).toList();
  }

  /** The list of values under a key; empty when the key is left out. */
  public <T> List<T> list(String key, Form<T> form) {
    return items(key).stream().flatMap(n -> nodes.single(key, n, form).stream()).toList();
  }

  /** Where a key's value stands; where the section begins when the key is not there. */
  public Place place(String key) {
    return value(key).map(value -> nodes.place(value.node())).orElse(place);
  }

  /** Where the section begins; the whole file for the outermost one. */
  public Place place() {
    return place;
  }

  /** Notes a problem. */
  public void refuse(Place where, Topic topic, Argument... arguments) {
    nodes.troubles().add(Problem.at(where, topic, arguments));
  }

  /** Notes the problems of another file that this one needs. */
  public void refuse(BadInput other) {
    nodes.troubles().addAll(other);
  }

  /** Refuses a key that makes no sense beside the others, if it is there. */
  public void without(String key, Topic topic, Argument... arguments) {
    if (has(key)) {
      refuse(place(key), topic, arguments);
    }
  }

  /** Whether no problem was noted since the section was opened, in it or in what it holds. */
  public boolean sound() {
    return nodes.troubles().count() == troublesBefore;
  }

  /**
   * Closes the section, refusing keys nobody asked for, and makes its value.
   *
   * @param value called only when the section is sound, so that all it required is there
   */
  public <T> Optional<T> build(Supplier<T> value) {
    close();
    return sound() ? Optional.of(value.get()) : Optional.empty();
  }

  private void close() {
    List<String> unknown = new ArrayList<>(values.keySet());
    unknown.removeAll(asked);
    for (String key : unknown) {
      Optional<String> meant = meant(key);
      meant.ifPresent(missing::remove);
      Place at = values.get(key).keyPlace();
      meant.ifPresentOrElse(
          m -> refuse(at, Writing.UNKNOWN_KEY_MEANT, Argument.text(key), Argument.text(m)),
          () -> refuse(at, Writing.UNKNOWN_KEY, Argument.text(key), Argument.text(allowed())));
    }
    missing.forEach(key -> refuse(place, Writing.MISSING_KEY, Argument.text(key)));
  }

  private Optional<String> meant(String key) {
    Set<String> absent = new LinkedHashSet<>(asked);
    absent.removeAll(values.keySet());
    return Meant.by(key, missing).or(() -> Meant.by(key, absent));
  }

  private String allowed() {
    return String.join(", ", asked);
  }

  private void need(String key) {
    if (!has(key)) {
      missing.add(key);
    }
  }

  private Optional<Nodes.Value> value(String key) {
    asked.add(key);
    return Optional.ofNullable(values.get(key));
  }

  private List<Node> items(String key) {
    return value(key).map(value -> nodes.items(key, value.node())).orElse(List.of());
  }
}
