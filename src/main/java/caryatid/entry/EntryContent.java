package caryatid.entry;

/**
 * What an entry says, one record for each kind of entry; numbers have the digits they were given.
 */
public sealed interface EntryContent
    permits RecordOpening,
        Assessment,
        BenchAlignment,
        Components,
        LegLength,
        StandSummary,
        Walking,
        ShoeList,
        Acceptance,
        OwnSetting,
        Closing,
        Note,
        Sending,
        Erasure {

  /** The kind of entry that says it. */
  EntryKind kind();
}
