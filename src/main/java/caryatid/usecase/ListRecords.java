package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import java.util.List;
import java.util.Optional;

/** Lists a clinic's records. */
public final class ListRecords {
  private ListRecords() {}

  /**
   * A record.
   *
   * @param code its code
   * @param erasure of an erased one, the entry that says when, by whom and why
   */
  public record Listed(String code, Optional<Entry> erasure) {}

  /**
   * All records, by their codes; none where there is no store yet.
   *
   * @throws StoreFailure if the folder cannot be read
   */
  public static List<Listed> run(Records records) throws StoreFailure {
    Store store = records.store();
    return store.codes().stream().map(code -> listed(store, code)).toList();
  }

  /** What is damaged is for {@link VerifyRecord} to say; the code is listed all the same. */
  private static Listed listed(Store store, String code) {
    try {
      return new Listed(code, store.erasure(RecordCode.of(code)));
    } catch (BadInput damaged) {
      return new Listed(code, Optional.empty());
    }
  }
}
