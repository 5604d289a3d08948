package caryatid.entry;

/** Where a body mass in a stand's entry comes from. */
public enum MassFrom {
  /** The force plates, where they carried the whole body. */
  PLATE,
  /** The trial sheet. */
  SHEET
}
