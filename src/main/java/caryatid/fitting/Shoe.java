package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What was last said of a shoe.
 *
 * @param entry the number of the entry that says it
 * @param said its answers
 */
record Shoe(int entry, Answers said) {

  /** Every shoe of a record once; whoever adds one says nothing of the others. */
  static List<Shoe> all(List<Entry> valid) {
    Map<String, Shoe> latest = new LinkedHashMap<>();
    valid.stream()
        .filter(e -> e.kind() == EntryKind.FOOTWEAR)
        .forEach(
            e ->
                e.content()
                    .rows("shoes")
                    .forEach(shoe -> latest.put(name(shoe), new Shoe(e.number(), shoe))));
    return List.copyOf(latest.values());
  }

  private static String name(Answers shoe) {
    return shoe.words("shoe").orElseThrow().strip().toLowerCase(Locale.ROOT);
  }
}
