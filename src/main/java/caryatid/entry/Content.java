package caryatid.entry;

/**
 * What an entry says, one record for each kind of entry; numbers have the digits they were given.
 */
public sealed interface Content
    permits Opening,
        Assessment,
        BenchAlignment,
        Components,
        Length,
        Stood,
        Walking,
        Footwear,
        Accepted,
        OwnSetting,
        Note,
        Erasure {

  /** The kind of entry that says it. */
  EntryKind kind();
}
