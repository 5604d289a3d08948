package caryatid.views;

import caryatid.entry.BenchAlignment;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The rows of a bench alignment by what they set. */
final class BenchRows {
  private BenchRows() {}

  /**
   * What a row sets.
   *
   * @param key the item
   * @param count of torques that nothing tells apart, which one of its entry, from 1: what secures
   *     two fasteners is never one row
   */
  record Slot(BenchAlignment.ItemKey key, int count) {}

  /**
   * The rows in their order; of other items than torques, the last one that sets it counts.
   *
   * @param oneLeg whether the record is of one leg, so that a side tells no items apart
   */
  static Map<Slot, BenchAlignment.Item> of(BenchAlignment bench, boolean oneLeg) {
    Map<Slot, BenchAlignment.Item> rows = new LinkedHashMap<>();
    Map<BenchAlignment.ItemKey, Integer> torques = new HashMap<>();
    for (BenchAlignment.Item row : bench.items()) {
      BenchAlignment.ItemKey key = key(row, oneLeg);
      int count = row.isTorque() ? torques.merge(key, 1, Integer::sum) : 1;
      rows.put(new Slot(key, count), row);
    }
    return rows;
  }

  private static BenchAlignment.ItemKey key(BenchAlignment.Item row, boolean oneLeg) {
    BenchAlignment.ItemKey key = row.key();
    return oneLeg ? new BenchAlignment.ItemKey(key.item(), key.fastener(), Optional.empty()) : key;
  }
}
