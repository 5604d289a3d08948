package caryatid.sheet.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The keys of a section: those that are there, those that were asked for, those that were needed.
 */
final class Keys {
  private final Map<String, Nodes.NodeValue> values;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> needed = new LinkedHashSet<>();

  Keys(Map<String, Nodes.NodeValue> values) {
    this.values = new LinkedHashMap<>(values);
  }

  Optional<Nodes.NodeValue> ask(String key) {
    asked.add(key);
    return Optional.ofNullable(values.get(key));
  }

  void need(String key) {
    needed.add(key);
  }

  /** An unknown key, and the known one that was meant. */
  record Unknown(String key, Nodes.NodeValue value, Optional<String> meant) {}

  List<Unknown> unknown() {
    List<String> names = new ArrayList<>(values.keySet());
    names.removeAll(asked);
    return names.stream().map(key -> new Unknown(key, values.get(key), meant(key))).toList();
  }

  /** What was needed and is neither there nor meant by an unknown key. */
  List<String> missing() {
    List<String> missing = new ArrayList<>(absent(needed));
    unknown().forEach(unknown -> unknown.meant().ifPresent(missing::remove));
    return missing;
  }

  String allowed() {
    return String.join(", ", asked);
  }

  private Optional<String> meant(String key) {
    return NameSuggester.by(key, absent(needed)).or(() -> NameSuggester.by(key, absent(asked)));
  }

  private Set<String> absent(Set<String> keys) {
    Set<String> absent = new LinkedHashSet<>(keys);
    absent.removeAll(values.keySet());
    return absent;
  }
}
