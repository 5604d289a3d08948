package caryatid.entry;

import java.util.OptionalInt;

/**
 * That the record was sent to a clinic's system. Nothing of it says who the wearer is there.
 *
 * @param to the address of the system's interface, without user, query and fragment
 * @param upTo number of the last entry that was sent
 * @param newlyStored how many resources the system did not have yet
 */
public record Sending(String to, int upTo, int newlyStored) implements EntryContent {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Sending {
    Range.ENTRY.require(OptionalInt.of(upTo));
    Range.ENTRIES.require(OptionalInt.of(newlyStored));
  }

  @Override
  public EntryKind kind() {
    return EntryKind.SENDING;
  }
}
