package caryatid.entry;

import caryatid.geometry.Side;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The settings of the alignment items.
 *
 * @param items the items, in their order
 * @param note further remarks
 */
public record BenchAlignment(List<Item> items, Optional<String> note) implements EntryContent {

  /**
   * One item.
   *
   * @param item which
   * @param fastener which fastener, where it is one that is secured
   * @param side on which leg; empty in a record of one leg
   * @param recommended what is recommended, in the unit
   * @param set what it is set to, in the unit
   * @param unit the unit of both
   * @param why why it is set otherwise than recommended
   * @param source the document that recommends it
   * @param note further remarks
   * @param travel how far it goes at this prosthesis
   */
  public record Item(
      TermOrText<BenchItem> item,
      Optional<String> fastener,
      Optional<Side> side,
      Optional<BigDecimal> recommended,
      BigDecimal set,
      SettingUnit unit,
      Optional<String> why,
      Optional<String> source,
      Optional<String> note,
      Travel travel) {

    /** An item of which nobody noted how far it goes. */
    public Item(
        TermOrText<BenchItem> item,
        Optional<String> fastener,
        Optional<Side> side,
        Optional<BigDecimal> recommended,
        BigDecimal set,
        SettingUnit unit,
        Optional<String> why,
        Optional<String> source,
        Optional<String> note) {
      this(item, fastener, side, recommended, set, unit, why, source, note, Travel.NOT_NOTED);
    }

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Item {
      Range.SETTING.require(recommended);
      Range.SETTING.require(set);
    }

    /** Whether it says to what torque something is secured. */
    public boolean isTorque() {
      return item.is(BenchItem.FASTENERS) || unit == SettingUnit.NEWTON_METRE;
    }

    /** What distinguishes it from other items. */
    public ItemKey key() {
      Optional<String> which =
          fastener.or(() -> item.is(BenchItem.FASTENERS) ? note : Optional.empty());
      return new ItemKey(item.key(), which.map(TermOrText::fold), side);
    }
  }

  /**
   * How far an item goes at this prosthesis, in the item's unit: by its travel, its thread and its
   * maker's limit, whichever is nearest.
   *
   * @param lowest the smallest setting
   * @param highest the largest setting
   * @param step the smallest amount it is changed by
   * @param degPerTurn how far one turn of a set screw tilts the adapter, deg
   */
  public record Travel(
      Optional<BigDecimal> lowest,
      Optional<BigDecimal> highest,
      Optional<BigDecimal> step,
      Optional<BigDecimal> degPerTurn) {
    /** Nobody noted it. */
    public static final Travel NOT_NOTED =
        new Travel(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Travel {
      Range.SETTING.require(lowest);
      Range.SETTING.require(highest);
      Range.requireOrder(lowest, highest);
      Range.STEP.require(step);
      Range.STEP.require(degPerTurn);
    }

    /** What is noted here, and the rest of what was noted before. */
    public Travel or(Travel before) {
      return new Travel(
          lowest.or(before::lowest),
          highest.or(before::highest),
          step.or(before::step),
          degPerTurn.or(before::degPerTurn));
    }
  }

  /**
   * What is equal for two rows of one item on one leg; each fastener is an item.
   *
   * @param fastener its name, folded; of a fastener without a name, as earlier versions wrote them,
   *     its note
   */
  public record ItemKey(TermOrText.NameKey item, Optional<String> fastener, Optional<Side> side) {}

  public BenchAlignment {
    items = List.copyOf(items);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.BENCH_ALIGNMENT;
  }
}
