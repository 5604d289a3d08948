package caryatid.entry;

import java.util.OptionalInt;

/**
 * Something the wearer and the clinician accept as it is, and why.
 *
 * @param what what is accepted, in the clinician's words
 * @param why the reason, in the clinician's words
 * @param stand number of the entry of the stand it is about
 * @param entry number of another entry it is about
 */
public record Acceptance(String what, String why, OptionalInt stand, OptionalInt entry)
    implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Acceptance {
    Range.ENTRY.require(stand);
    Range.ENTRY.require(entry);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.ACCEPTED;
  }
}
