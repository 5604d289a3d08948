package caryatid.entry;

import java.util.OptionalInt;

/**
 * What is left of a record that was erased.
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
