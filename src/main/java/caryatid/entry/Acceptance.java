package caryatid.entry;

import java.util.OptionalInt;

/**
 * Something accepted as it is.
 *
 * @param what what
 * @param why why
 * @param stand number of the entry of the stand it is about
 */
public record Acceptance(String what, String why, OptionalInt stand) implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Acceptance {
    Range.ENTRY.require(stand);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.ACCEPTED;
  }
}
