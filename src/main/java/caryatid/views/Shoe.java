package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.Footwear;
import caryatid.entry.Named;
import caryatid.fitting.Contents;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was last said of a shoe.
 *
 * @param entry the number of the entry that says it
 * @param said what it says
 */
record Shoe(int entry, Footwear.Shoe said) {

  /** Every shoe of a record once; whoever adds one says nothing of the others. */
  static List<Shoe> all(List<Entry> valid) {
    Map<String, Shoe> latest = new LinkedHashMap<>();
    for (Entry entry : valid) {
      Contents.of(entry, Footwear.class).stream()
          .flatMap(footwear -> footwear.shoes().stream())
          .forEach(shoe -> latest.put(Named.fold(shoe.shoe()), new Shoe(entry.number(), shoe)));
    }
    return List.copyOf(latest.values());
  }
}
