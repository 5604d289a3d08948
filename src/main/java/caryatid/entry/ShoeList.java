package caryatid.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The shoes that were checked.
 *
 * @param shoes in their order
 * @param note further remarks
 */
public record ShoeList(List<Shoe> shoes, Optional<String> note) implements EntryContent {

  /**
   * One shoe.
   *
   * @param shoe which
   * @param heelHeightMm effective heel height, mm
   * @param stand number of the entry of the stand in it
   * @param wearerSetsAnkleAlone whether the wearer sets the ankle to it alone
   * @param note further remarks
   */
  public record Shoe(
      String shoe,
      BigDecimal heelHeightMm,
      OptionalInt stand,
      Optional<Boolean> wearerSetsAnkleAlone,
      Optional<String> note) {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Shoe {
      Range.EFFECTIVE_HEEL_MM.require(heelHeightMm);
      Range.ENTRY.require(stand);
    }
  }

  public ShoeList {
    shoes = List.copyOf(shoes);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.FOOTWEAR;
  }
}
