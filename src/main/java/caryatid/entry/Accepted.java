package caryatid.entry;

import java.util.OptionalInt;

/**
 * Something accepted as it is.
 *
 * @param what what
 * @param why why
 * @param stand number of the entry of the stand it is about
 */
public record Accepted(String what, String why, OptionalInt stand) implements Content {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Accepted {
    Range.ENTRY.require(stand);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.ACCEPTED;
  }
}
