package caryatid.exchange;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.store.StoredRecord;
import caryatid.usecase.KeptResults;
import caryatid.usecase.RecordPdf;
import caryatid.usecase.Records;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes a record as a bundle for a clinic's system. */
public final class BundleRecord {
  private static final String OPENING = "0001-opening/" + Entry.FILE;

  private BundleRecord() {}

  /**
   * Writes the bundle completely or not at all.
   *
   * @param output the file
   * @throws BadInput if the file is there already and may not be replaced, the record is not there,
   *     was erased or is damaged, or its report is too large
   * @throws StoreFailure if another program is writing to the record, or the file cannot be written
   */
  public static void write(
      Records records,
      String code,
      PatientIdentifier patient,
      Wording wording,
      Output output,
      FileAccess files)
      throws BadInput, StoreFailure {
    files.requireFree(output);
    files.write(output, made(records, code, patient, wording).bytes());
  }

  /**
   * A bundle.
   *
   * @param upTo number of the last entry in it
   */
  record MadeBundle(byte[] bytes, int upTo) {}

  /** The bundle of a record, without the entries about sending at its end. */
  static MadeBundle made(Records records, String code, PatientIdentifier patient, Wording wording)
      throws BadInput, StoreFailure {
    RecordCode record = RecordCode.of(code);
    List<Problem> damage = new ArrayList<>(records.store().damage(record));
    FittingRecord whole = records.store().read(record);
    damage.addAll(whole.unread().stream().flatMap(u -> u.problems().stream()).toList());
    requireSound(damage);
    if (whole.isErased()) {
      throw refused(record, ExchangeProblem.ERASED);
    }
    StoredRecord stored = records.store().openUpTo(record, last(whole));
    List<Remark> unread = new ArrayList<>();
    Map<Integer, AlignmentState> states =
        KeptResults.of(stored, stored.record().entries(), damage, unread);
    requireSound(damage);
    if (!unread.isEmpty()) {
      throw refused(record, ExchangeProblem.NEWER, unread.get(0).arguments().get(0));
    }
    ToldRecord told =
        new ToldRecord(
            stored.record(),
            states,
            stored.record().digests().get(OPENING),
            RecordBundle.patient(patient).fullUrl(),
            wording);
    byte[] pdf = RecordPdf.pdf(stored, List.of(), wording, Paper.A4);
    int megabytes = ReportDocument.megabytes(pdf.length);
    if (megabytes > ReportDocument.MOST_MB) {
      throw refused(
          record,
          ExchangeProblem.TOO_LARGE,
          Argument.count(megabytes),
          Argument.count(ReportDocument.MOST_MB));
    }
    return new MadeBundle(RecordBundle.bytes(told, patient, pdf), stored.record().size());
  }

  private static int last(FittingRecord record) {
    return record.entries().stream()
        .filter(entry -> entry.kind() != EntryKind.SENDING)
        .mapToInt(Entry::number)
        .max()
        .orElse(1);
  }

  private static void requireSound(List<Problem> damage) throws BadInput {
    if (!damage.isEmpty()) {
      throw new BadInput(damage);
    }
  }

  private static BadInput refused(RecordCode record, ExchangeProblem why, Argument... arguments) {
    return new BadInput(Problem.at(Place.of(record.text()), why, arguments));
  }
}
