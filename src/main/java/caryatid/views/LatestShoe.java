package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.ShoeList;
import caryatid.entry.TermOrText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The latest entry about a shoe.
 *
 * @param entry the number of the entry that says it
 * @param said the shoe as that entry describes it
 */
record LatestShoe(int entry, ShoeList.Shoe said) {

  /** Every shoe of a record once; an entry that adds one leaves the others as they are. */
  static List<LatestShoe> all(List<Entry> valid) {
    Map<String, LatestShoe> latest = new LinkedHashMap<>();
    for (Entry entry : valid) {
      entry.content(ShoeList.class).stream()
          .flatMap(footwear -> footwear.shoes().stream())
          .forEach(
              shoe ->
                  latest.put(TermOrText.fold(shoe.shoe()), new LatestShoe(entry.number(), shoe)));
    }
    return List.copyOf(latest.values());
  }
}
