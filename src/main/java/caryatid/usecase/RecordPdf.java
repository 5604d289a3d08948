package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.entry.KeptFile;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.report.FittingReport;
import caryatid.report.pages.Paper;
import caryatid.report.pages.RecordReportData;
import caryatid.store.StoredRecord;
import caryatid.views.RecordAdvice;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The report of a fitting record, made from the results that are kept in it. */
public final class RecordPdf {
  private RecordPdf() {}

  /**
   * The report as a PDF. A damaged result is reported with the record's other damage.
   *
   * @param found what verifying the record's files found; nothing is signed where it found anything
   * @throws BadInput if the record has no undamaged entry
   */
  public static byte[] pdf(StoredRecord record, List<Problem> found, Wording wording, Paper paper)
      throws BadInput {
    RecordView view = RecordView.of(record.record());
    if (view.timeline().isEmpty()) {
      throw new BadInput(record.record().notShown());
    }
    Set<Problem> damage = new LinkedHashSet<>(found);
    damage.addAll(view.damage());
    List<Remark> unread = new ArrayList<>();
    Map<Integer, AlignmentState> states =
        KeptResults.of(record, record.record().entries(), damage, unread);
    List<RecordReportData.Photographed> photographs = photographs(record, view, damage);
    RecordView told = view.withResults(states).withDamage(List.copyOf(damage)).withRemarks(unread);
    RecordReportData data =
        new RecordReportData(told, states, photographs, advice(record, states, damage, unread));
    return FittingReport.pdf(data, Program.NAME, wording, paper);
  }

  /** Nothing is advised where what was found or set may be otherwise. */
  private static List<RecordAdvice> advice(
      StoredRecord record,
      Map<Integer, AlignmentState> states,
      Set<Problem> damage,
      List<Remark> unread) {
    boolean all = damage.isEmpty() && unread.isEmpty() && record.record().notShown().isEmpty();
    return all ? RecordAdvice.of(record.record(), states) : List.of();
  }

  /** Those of entries that nothing takes the place of; damaged ones are reported as damage. */
  private static List<RecordReportData.Photographed> photographs(
      StoredRecord record, RecordView view, Set<Problem> damage) {
    List<RecordReportData.Photographed> photographs = new ArrayList<>();
    for (RecordView.TimelineRow row : view.timeline()) {
      for (KeptFile file : row.entry().files()) {
        if (file.is() == KeptFile.Role.PHOTOGRAPH && row.correctedBy().isEmpty()) {
          try {
            photographs.add(
                new RecordReportData.Photographed(
                    row.entry(), file.original(), record.bytes(row.entry(), file)));
          } catch (BadInput e) {
            damage.addAll(e.problems());
          }
        }
      }
    }
    return photographs;
  }
}
