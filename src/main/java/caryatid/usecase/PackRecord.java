package caryatid.usecase;

import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.store.Backup;
import caryatid.store.BesideRecord;
import caryatid.store.StoredRecord;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.views.RecordView;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Packs a record as a zip file that another store can import. */
public final class PackRecord {
  private PackRecord() {}

  /**
   * Packs a record (BagIt, RFC 8493), with its report and a read-me.
   *
   * @param zip the file to write; nothing is overwritten
   * @param wording language of the read-me and the report in it
   * @throws BadInput if the file is there already, or the record is not, or is damaged
   * @throws StoreFailure if another program is writing to the record, or the file cannot be written
   */
  public static void run(Records records, String code, Path zip, Wording wording, FileAccess files)
      throws BadInput, StoreFailure {
    files.requireFree(new Output(zip, false));
    RecordCode record = RecordCode.of(code);
    StoredRecord read = records.store().open(record);
    RecordView view = KeptResults.view(read);
    byte[] report = RecordPdf.pdf(read, List.of(), wording, Paper.A4);
    BesideRecord beside =
        new BesideRecord(
            RecordText.readMe(view, wording), Optional.of(NamedBytes.of("report.pdf", report)));
    records.store().pack(record, zip, beside);
  }

  /**
   * Backs all records up into a new folder, each as a zip, and checks what was written.
   *
   * @param wording language of what each zip leads with
   * @throws BadInput if the folder is there already, or there is no record
   * @throws StoreFailure if another program is writing to a record, or the backup cannot be written
   */
  public static Backup.Made all(Records records, Path folder, Wording wording)
      throws BadInput, StoreFailure {
    return new Backup(records.store(), folder.toAbsolutePath())
        .make(List.of(wording.word("ResultText.caution")));
  }
}
