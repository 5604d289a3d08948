package caryatid.exchange;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;

/**
 * A record that is to be told to a clinic's system.
 *
 * @param record the record, without entries about sending at its end
 * @param states what was found in its stands, by the number of their entry
 * @param opening SHA-512 of its first entry, lower-case hexadecimal
 * @param patient the {@code fullUrl} of whose record it is
 * @param wording the language of its words
 */
record ToldRecord(
    FittingRecord record,
    Map<Integer, AlignmentState> states,
    String opening,
    String patient,
    Wording wording) {
  private static final int DIGITS = 16;

  ToldRecord {
    states = Map.copyOf(states);
  }

  /**
   * What names a part of the record in every system: two records may have one code, but not one
   * first entry.
   */
  String identity(String part) {
    return record.code().text() + "." + opening.substring(0, DIGITS) + "." + part;
  }

  /** The entries of a kind that are told, also those that were corrected. */
  List<Entry> entries(EntryKind kind) {
    return record.entries().stream().filter(entry -> entry.kind() == kind).toList();
  }

  /** The entries that hold and tell of work at the prosthesis. */
  List<Entry> work() {
    return record.valid().stream()
        .filter(e -> e.kind() != EntryKind.OPENING && e.kind() != EntryKind.SENDING)
        .toList();
  }

  boolean isCorrected(Entry entry) {
    return record.correctionOf(entry).isPresent();
  }

  String language() {
    return wording.locale().getLanguage();
  }
}
