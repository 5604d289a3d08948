package caryatid.fitting;

import java.util.List;
import java.util.Optional;

/**
 * What an entry, or a row in it, is asked for.
 *
 * @param fields in the order in which they are asked and written
 */
public record Form(List<Field> fields) {
  public Form {
    fields = List.copyOf(fields);
  }

  static Form of(Field... fields) {
    return new Form(List.of(fields));
  }

  /** The field of a key. */
  public Optional<Field> field(String key) {
    return fields.stream().filter(f -> f.key().equals(key)).findFirst();
  }

  /** The keys, in order. */
  public List<String> keys() {
    return fields.stream().map(Field::key).toList();
  }
}
