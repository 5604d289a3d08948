package caryatid.usecase.stand;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.store.StoredRecord;
import caryatid.usecase.Records;
import java.util.Optional;

/** The report that was kept with a stand, and any other file that was kept with an entry. */
public final class KeptReport {
  private KeptReport() {}

  /**
   * Its bytes, as they were kept.
   *
   * @param number of the stand's entry
   * @return empty where there is no such entry, or it has no report
   * @throws BadInput if there is no such record, or the report is damaged
   */
  public static Optional<byte[]> of(Records records, String code, int number) throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    for (Entry entry : stored.record().entries()) {
      Optional<KeptFile> report = entry.file(KeptFile.Role.REPORT);
      if (entry.number() == number && report.isPresent()) {
        return Optional.of(stored.bytes(entry, report.get()));
      }
    }
    return Optional.empty();
  }

  /**
   * The bytes of a file, as they were kept.
   *
   * @param number of its entry
   * @param name its name in the entry's folder
   * @return empty where there is no such entry, or it has no such file
   * @throws BadInput if there is no such record, or the file is damaged
   */
  public static Optional<byte[]> file(Records records, String code, int number, String name)
      throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    for (Entry entry : stored.record().entries()) {
      for (KeptFile file : entry.files()) {
        if (entry.number() == number && file.name().equals(name)) {
          return Optional.of(stored.bytes(entry, file));
        }
      }
    }
    return Optional.empty();
  }
}
