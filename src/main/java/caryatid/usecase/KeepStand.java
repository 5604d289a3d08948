package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile.Role;
import caryatid.entry.StandSummary;
import caryatid.fitting.Addition;
import caryatid.fitting.Addition.Attached;
import caryatid.fitting.CorrectionCheck;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.fitting.StandEntry;
import caryatid.fitting.WritableCheck;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.sheet.TrialSheet;
import caryatid.store.DuplicateStandCheck;
import caryatid.store.StoredRecord;
import caryatid.usecase.Check.Checked;
import caryatid.views.MakersLimits;
import caryatid.views.StandAgainstRecord;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Checks a stand and adds it to a fitting record with its files, in three steps: the record is
 * examined before the check, the stand before anything is written, and then it is added.
 */
public final class KeepStand {
  private final Records records;
  private final RecordCode code;
  private final Optional<String> by;
  private final Optional<Entry.Correction> corrects;
  private final boolean sure;

  private KeepStand(
      Records records,
      RecordCode code,
      Optional<String> by,
      Optional<Entry.Correction> corrects,
      boolean sure) {
    this.records = records;
    this.corrects = corrects;
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
    return in(records, code, by, Optional.empty(), sure);
  }

  /**
   * The same for a stand that takes an earlier one's place; it was so when its sheet says, unless
   * the correction states another time.
   *
   * @throws BadInput as above, or if there is no such stand, or it was corrected before
   */
  public static KeepStand in(
      Records records,
      String code,
      Optional<String> by,
      Optional<Entry.Correction> corrects,
      boolean sure)
      throws BadInput {
    RecordCode record = RecordCode.of(code);
    FittingRecord read = records.store().read(record);
    WritableCheck.require(read);
    if (corrects.isPresent()) {
      CorrectionCheck.check(read, corrects.get(), EntryKind.STAND);
    }
    return new KeepStand(records, record, by, corrects, sure);
  }

  /**
   * The inputs with what the record knows and they do not say: components and whether the ankle has
   * an axis in the sheet that is kept, and the last state in the same footwear as the state before.
   *
   * @throws BadInput if the sheet or the record cannot be read
   */
  public Inputs completed(Inputs inputs) throws BadInput {
    StoredRecord stored = records.store().open(code);
    return new RecordInputs(stored, corrected()).complete(inputs);
  }

  /**
   * Checks a stand, and refuses one that could not be kept, before anything is written.
   *
   * @throws BadInput if an input cannot be used, the stand is of another prosthesis, does not go
   *     with the record or is in it already, a question is open, its time cannot be, or its words
   *     look as if they said who the wearer is
   * @throws StoreFailure if an input can no longer be read
   */
  public Checked check(Inputs inputs) throws BadInput, StoreFailure {
    Checked checked = Check.withOpenQuestions(inputs);
    StoredRecord stored = records.store().open(code);
    FittingRecord record = stored.record();
    Addition stand = stand(inputs, checked, new byte[0]).checked(records.now());
    if (!sure) {
      stand.anonymous();
    }
    StandEntry.requireOwn(record, sheet(checked.result()));
    DuplicateStandCheck.require(record, stand);
    List<Question> all = new ArrayList<>(checked.asked());
    if (stand.content() instanceof StandSummary summary) {
      all.addAll(MakersLimits.questions(record.valid(), summary));
    }
    return checked
        .asking(
            StandAgainstRecord.of(record, checked.result().state(), last(stored), all, corrected()))
        .answered(Place.of(inputs.sheet().name()));
  }

  /**
   * Adds the stand, with its report as a PDF.
   *
   * @throws BadInput if the record no longer takes it, or an input can no longer be read
   * @throws StoreFailure if another program is writing, or it cannot be written
   */
  public AddedEntry keep(Inputs inputs, Checked checked, Wording wording, Paper paper)
      throws BadInput, StoreFailure {
    byte[] pdf = CheckPdf.pdf(inputs, checked, wording, paper);
    Entry added = records.store().add(code, stand(inputs, checked, pdf));
    return AddedEntry.to(records.store().read(code), added);
  }

  private Addition stand(Inputs inputs, Checked checked, byte[] report) throws BadInput {
    List<Attached> files = new ArrayList<>();
    inputs.recordings().forEach(r -> files.add(new Attached(Role.RECORDING, r)));
    inputs.description().ifPresent(d -> files.add(new Attached(Role.DESCRIPTION, d)));
    files.add(new Attached(Role.SHEET, inputs.sheet()));
    checked.earlierSheets().forEach(s -> files.add(new Attached(Role.EARLIER_SHEET, s)));
    inputs.earlier().ifPresent(e -> files.add(new Attached(Role.EARLIER_STATES, e)));
    files.add(
        new Attached(
            Role.RESULT, NamedBytes.of(ResultJson.FILE_NAME, ResultJson.write(checked.result()))));
    files.add(new Attached(Role.REPORT, NamedBytes.of("report.pdf", report)));
    Result result = checked.result();
    Addition stand = StandEntry.addition(result.state(), initials(result), files);
    return corrects.map(correction -> correcting(stand, correction)).orElse(stand);
  }

  private Addition correcting(Addition stand, Entry.Correction correction) {
    Entry.Correction dated =
        new Entry.Correction(
            correction.number(),
            correction.why(),
            correction.asOf().or(() -> Optional.of(stand.at())));
    return new Addition(
        records.now(), stand.by(), Optional.of(dated), stand.content(), stand.files());
  }

  private OptionalInt corrected() {
    return corrects
        .map(correction -> OptionalInt.of(correction.number()))
        .orElse(OptionalInt.empty());
  }

  private Optional<AlignmentState> last(StoredRecord stored) {
    return StandAgainstRecord.last(stored.record(), corrected())
        .flatMap(
            stand ->
                KeptResults.of(stored, List.of(stand), new ArrayList<>(), new ArrayList<>())
                    .values()
                    .stream()
                    .findFirst());
  }

  private String initials(Result result) {
    return by.or(() -> sheet(result).notes().practitioner()).orElse("");
  }

  private static TrialSheet sheet(Result result) {
    return result.state().trial();
  }
}
