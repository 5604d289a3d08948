package caryatid.entry.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fields of an entry, or of a row in it.
 *
 * @param fields in the order in which they are asked and written
 * @param orders pairs of numbers of which one is never above the other
 */
public record Form(List<Field> fields, List<NumberOrder> orders) {

  /**
   * Requires that a number is at most another one, if both are given.
   *
   * @param lower key of the one
   * @param upper key of the other
   */
  public record NumberOrder(String lower, String upper) {}

  public Form {
    fields = List.copyOf(fields);
    orders = List.copyOf(orders);
  }

  public static Form of(Field... fields) {
    return new Form(List.of(fields), List.of());
  }

  /** The same form, in which a number is at most another one. */
  public Form ordered(String lower, String upper) {
    List<NumberOrder> all = new ArrayList<>(orders);
    all.add(new NumberOrder(lower, upper));
    return new Form(fields, all);
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
