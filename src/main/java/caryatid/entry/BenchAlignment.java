package caryatid.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * To what the items of the alignment are set.
 *
 * @param items the items, in their order
 * @param note what else is to be said
 */
public record BenchAlignment(List<Item> items, Optional<String> note) implements EntryContent {

  /**
   * One item.
   *
   * @param item which
   * @param recommended what is recommended, in the unit
   * @param set what it is set to, in the unit
   * @param unit the unit of both
   * @param source the document that recommends it
   * @param note what else is to be said
   */
  public record Item(
      TermOrText<BenchItem> item,
      Optional<BigDecimal> recommended,
      BigDecimal set,
      SettingUnit unit,
      Optional<String> source,
      Optional<String> note) {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Item {
      Range.SETTING.require(recommended);
      Range.SETTING.require(set);
    }
  }

  public BenchAlignment {
    items = List.copyOf(items);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.BENCH_ALIGNMENT;
  }
}
