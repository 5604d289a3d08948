package caryatid.entry;

/**
 * A free note.
 *
 * @param text the words
 */
public record Note(String text) implements EntryContent {

  @Override
  public EntryKind kind() {
    return EntryKind.NOTE;
  }
}
