package caryatid.entry;

import java.util.OptionalInt;

/**
 * The entry that remains of an erased record.
 *
 * @param why why it was
 * @param entries how many entries it had
 */
public record Erasure(String why, int entries) implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Erasure {
    Range.ENTRIES.require(OptionalInt.of(entries));
  }

  @Override
  public EntryKind kind() {
    return EntryKind.ERASURE;
  }
}
