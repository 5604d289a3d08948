package caryatid.usecase;

import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.views.RecordView;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.nio.file.Path;

/** Packs a record as a zip that another store takes in. */
public final class PackRecord {
  private PackRecord() {}

  /**
   * Packs a record (BagIt, RFC 8493).
   *
   * @param zip the file to write; nothing is overwritten
   * @param wording language of the read-me in it
   * @throws BadInput if the file is there already, or the record is not, or is damaged
   * @throws StoreFailure if somebody is writing to the record, or the file cannot be written
   */
  public static void run(Records records, String code, Path zip, Wording wording, FileAccess files)
      throws BadInput, StoreFailure {
    files.requireFree(new Output(zip, false));
    RecordCode record = RecordCode.of(code);
    RecordView view = KeptResults.view(records.store().open(record));
    records.store().pack(record, zip, RecordText.readMe(view, wording));
  }
}
