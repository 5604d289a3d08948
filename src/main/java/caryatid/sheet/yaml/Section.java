package caryatid.sheet.yaml;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final Keys keys;
  private final Place place;
  private final int troublesBefore;

  Section(Nodes nodes, Place place, int troublesBefore, Map<String, Nodes.NodeValue> values) {
    this.nodes = nodes;
    this.place = place;
    this.troublesBefore = troublesBefore;
    this.keys = new Keys(values);
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
      refuse(place, YamlProblem.OTHER_KIND, Argument.text(kind));
      return false;
    }
    ValueParser<String> one =
        w -> w.text().equals("1") ? Optional.of("1") : w.refuse(YamlProblem.OTHER_VERSION);
    return required(kind, one).isPresent();
  }

  /** Whether a key is there; it counts as known from then on. */
  public boolean has(String key) {
    return keys.ask(key).isPresent();
  }

  /** The value of a key that must be there. */
  public <T> Optional<T> required(String key, ValueParser<T> form) {
    keys.need(key);
    return optional(key, form);
  }

  /** The value of a key that may be left out. */
  public <T> Optional<T> optional(String key, ValueParser<T> form) {
    return keys.ask(key).flatMap(value -> nodes.single(key, value.node(), form));
  }

  /** The section under a key that must be there. */
  public Optional<Section> requiredSection(String key) {
    keys.need(key);
    return optionalSection(key);
  }

  /** The section under a key that may be left out. */
  public Optional<Section> optionalSection(String key) {
    return keys.ask(key).flatMap(value -> nodes.section(key, value.node()));
  }

  /**
   * Reads the list of sections under a key, one after the other; no entries when the key is left
   * out.
   *
   * @param reader reads one section, ending with {@link #build}
   * @return what each entry gave; empty for one with a problem
   */
  public <T> List<Optional<T>> sections(String key, Function<Section, Optional<T>> reader) {
    return items(key).stream().map(node -> nodes.section(key, node).flatMap(reader)).toList();
  }

  /** Reads the list of sections under a key that must be there, as {@link #sections} does. */
  public <T> List<Optional<T>> requiredSections(String key, Function<Section, Optional<T>> reader) {
    keys.need(key);
    return sections(key, reader);
  }

  /** The list of values under a key; empty when the key is left out. */
  public <T> List<T> list(String key, ValueParser<T> form) {
    return items(key).stream().flatMap(n -> nodes.single(key, n, form).stream()).toList();
  }

  /** The values of a key with one value or a list of them; none when the key is not there. */
  public <T> List<T> oneOrSeveral(String key, ValueParser<T> form) {
    return keys.ask(key).map(v -> nodes.oneOrSeveral(key, v.node())).orElse(List.of()).stream()
        .flatMap(n -> nodes.single(key, n, form).stream())
        .toList();
  }

  /** Where a key's value stands; where the section begins when the key is not there. */
  public Place place(String key) {
    return keys.ask(key).map(value -> nodes.place(value.node())).orElse(place);
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

  /** Refuses a key that makes no sense together with the others, if it is present. */
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
   * Closes the section, refuses keys that were never asked for, and builds its value.
   *
   * @param value called only when the section is sound, so that all it required is there
   */
  public <T> Optional<T> build(Supplier<T> value) {
    close();
    return sound() ? Optional.of(value.get()) : Optional.empty();
  }

  private void close() {
    for (Keys.Unknown unknown : keys.unknown()) {
      YamlProblem topic =
          unknown.meant().isPresent() ? YamlProblem.UNKNOWN_KEY_MEANT : YamlProblem.UNKNOWN_KEY;
      refuse(
          unknown.value().keyPlace(),
          topic,
          Argument.text(unknown.key()),
          Argument.text(unknown.meant().orElseGet(keys::allowed)));
    }
    keys.missing().forEach(key -> refuse(place, YamlProblem.MISSING_KEY, Argument.text(key)));
  }

  private List<Node> items(String key) {
    return keys.ask(key).map(value -> nodes.items(key, value.node())).orElse(List.of());
  }
}
