package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;

/** Adds an entry to a record, or one that takes an earlier one's place. */
public final class ExtendRecord {
  private ExtendRecord() {}

  /**
   * Adds an entry.
   *
   * @param draft the entry
   * @throws BadInput if there is no such record, it takes no entries, or the entry does not fit
   * @throws StoreFailure if another program is writing, or it cannot be written
   */
  public static AddedEntry run(Records records, String code, EntryDraft draft)
      throws BadInput, StoreFailure {
    RecordCode record = RecordCode.of(code);
    Addition addition = draft.addition(records.now(), RememberedLimits.of(records));
    if (addition.content() instanceof RecordOpening opening && !draft.sure()) {
      RecordCode.requireAnonymous(opening.wearer());
    }
    Entry added = records.store().add(record, addition);
    return AddedEntry.to(records.store().read(record), added);
  }
}
