package caryatid.usecase;

import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.store.StoredRecord;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Writes the report of a record. */
public final class RecordReport {
  private RecordReport() {}

  /**
   * Writes the report as a PDF.
   *
   * @return what is damaged in the record or cannot be read; the report states it too, which then
   *     is not to be signed
   * @throws BadInput if the file is there already, the record is not, or nothing of it can be read
   * @throws StoreFailure if another program is writing to the record, or the file cannot be written
   */
  public static List<Problem> write(
      Records records, String code, Wording wording, Paper paper, Output output, FileAccess files)
      throws BadInput, StoreFailure {
    files.requireFree(output);
    RecordCode record = RecordCode.of(code);
    List<Problem> damage = records.store().damage(record);
    StoredRecord read = records.store().open(record);
    files.write(output, RecordPdf.pdf(read, damage, wording, paper));
    List<Problem> found = new ArrayList<>(damage);
    read.record().unread().forEach(unread -> found.addAll(unread.problems()));
    return found;
  }
}
