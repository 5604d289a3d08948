package caryatid.usecase;

import caryatid.alignment.Result;
import caryatid.entry.Entry;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.fitting.StandEntry;
import caryatid.fitting.WritableCheck;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.sheet.TrialSheet;
import caryatid.store.DuplicateStandCheck;
import caryatid.usecase.Check.Checked;
import caryatid.wording.Wording;
import java.util.Optional;

/**
 * Checks a stand and adds it to a fitting record with its files, in three steps: the record is
 * looked at before the check, the stand before anything is written, and then it is added.
 */
public final class KeepStand {
  private final Records records;
  private final RecordCode code;
  private final Optional<String> by;
  private final boolean sure;

  private KeepStand(Records records, RecordCode code, Optional<String> by, boolean sure) {
    this.records = records;
    this.code = code;
    this.by = by;
    this.sure = sure;
  }

  /**
   * Refuses early, before any work, a record that cannot be added to.
   *
   * @param by initials of who adds the stand; those of the sheet's practitioner if empty
   * @param sure whether the sheet's words say nothing about who the wearer is, whatever they look
   *     like
   * @throws BadInput if there is no such record, or it is damaged or was erased
   */
  public static KeepStand in(Records records, String code, Optional<String> by, boolean sure)
      throws BadInput {
    RecordCode record = RecordCode.of(code);
    WritableCheck.require(records.store().read(record));
    return new KeepStand(records, record, by, sure);
  }

  /**
   * Checks a stand, and refuses one that could not be kept, before anything is written.
   *
   * @throws BadInput if an input cannot be used, the stand is of another prosthesis or in the
   *     record already, its time cannot be, or its words look as if they said who the wearer is
   * @throws StoreFailure if an input can no longer be read
   */
  public Checked check(Inputs inputs) throws BadInput, StoreFailure {
    Checked checked = Check.run(inputs);
    FittingRecord record = records.store().read(code);
    Addition stand =
        StandEntryBuilder.of(inputs, checked, new byte[0], initials(checked.result()))
            .checked(records.now());
    if (!sure) {
      stand.anonymous();
    }
    StandEntry.requireOwn(record, sheet(checked.result()));
    DuplicateStandCheck.require(record, stand);
    return checked;
  }

  /**
   * Adds the stand, with its report as a PDF.
   *
   * @throws BadInput if the record no longer takes it, or an input can no longer be read
   * @throws StoreFailure if somebody else is writing, or it cannot be written
   */
  public AddedEntry keep(Inputs inputs, Checked checked, Wording wording, Paper paper)
      throws BadInput, StoreFailure {
    byte[] pdf = CheckPdf.pdf(inputs, checked, wording, paper);
    Addition stand = StandEntryBuilder.of(inputs, checked, pdf, initials(checked.result()));
    Entry added = records.store().add(code, stand);
    return AddedEntry.to(records.store().read(code), added);
  }

  private String initials(Result result) {
    return by.or(() -> sheet(result).notes().practitioner()).orElse("");
  }

  private static TrialSheet sheet(Result result) {
    return result.state().stands().get(0).trial();
  }
}
