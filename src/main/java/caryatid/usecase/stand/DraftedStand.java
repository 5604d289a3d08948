package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.ClinicFile;
import caryatid.entry.RecordOpening;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Samples;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.report.Pictures;
import caryatid.report.pages.Paper;
import caryatid.standing.QuietStretch;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.Check;
import caryatid.usecase.Check.Checked;
import caryatid.usecase.Inputs;
import caryatid.usecase.KeepStand;
import caryatid.usecase.Records;
import caryatid.usecase.SessionCheck;
import caryatid.usecase.SessionCheck.Answered;
import caryatid.usecase.prove.ClinicInputs;
import caryatid.usecase.prove.MeasuredHands;
import caryatid.usecase.stand.StandDraft.Arrived;
import caryatid.wording.Wording;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A state of alignment as it is drafted: its sheet, its result so far, and how it is kept. */
public final class DraftedStand {
  /** What of a draft goes into the drawing of a recording, beside plate and stretch. */
  private static final Set<String> DRAWN =
      Set.of(
          StandFields.STANCE,
          StandFields.PLATE,
          StandFields.PLATE_LEFT,
          StandFields.PLATE_RIGHT,
          StandFields.OTHER_FOOT,
          StandFields.BODY_MASS,
          StandFields.KNEE_LOCKED);

  private final Records records;
  private final String code;
  private final StandDraft draft;
  private final String by;
  private final String head;
  private final RecordOpening opening;
  private final Set<Side> noAnkleAxis;

  private DraftedStand(
      Records records, StandDraft draft, String by, FittingRecord record, RecordOpening opening) {
    this.records = records;
    this.code = record.code().text();
    this.draft = draft;
    this.by = by;
    this.head = record.headDigest();
    this.opening = opening;
    this.noAnkleAxis = AnkleMarks.without(record, opening);
  }

  /**
   * The drafted state of a record.
   *
   * @param by initials of who measures
   * @return empty where the record's opening cannot be read
   * @throws BadInput if there is no such record
   */
  public static Optional<DraftedStand> of(Records records, String code, StandDraft draft, String by)
      throws BadInput {
    FittingRecord record = records.store().read(RecordCode.of(code));
    return record.opening().map(opening -> new DraftedStand(records, draft, by, record, opening));
  }

  /**
   * What was found so far.
   *
   * @param sheet the sheet it was found with
   * @param inputs what it was found in; empty where no recording is counted yet
   * @param checked what was found; empty where something is wrong or asked
   * @param before what was answered before in this session and is not asked again
   * @param problems why nothing was found
   * @param questions what is asked, in the order of its problems; empty where something is wrong
   */
  public record SoFar(
      SheetText sheet,
      Optional<Inputs> inputs,
      Optional<Checked> checked,
      List<String> before,
      List<Problem> problems,
      List<Question> questions) {
    public SoFar {
      before = List.copyOf(before);
      problems = List.copyOf(problems);
      questions = List.copyOf(questions);
    }
  }

  /** What was typed for the stand before, whoever wrote it. */
  public Map<String, String> earlier() throws BadInput {
    return EarlierFields.of(records, code);
  }

  /** Whether both legs have a prosthesis, so that each row says its side. */
  public boolean isOfBothSides() {
    return opening.side().sides().size() > 1;
  }

  /** The fields that call a point an ankle axis though the ankle has none. */
  public List<String> withoutAnkleAxis(Map<String, String> typed) {
    return AnkleMarks.fields(typed, noAnkleAxis, isOfBothSides());
  }

  /** Whether a prosthetic knee's lock is asked for. */
  public boolean hasProstheticKnee() {
    return opening.level().prostheticKnee();
  }

  /** The body mass that the record states, kg. */
  public Optional<String> bodyMassKg() {
    return opening.bodyMassKg().map(kg -> kg.toPlainString());
  }

  /**
   * What {@link #found} gives, from before where nothing has changed since.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public SoFar shown(boolean sure) throws BadInput, StoreFailure {
    Map<String, String> typed = new LinkedHashMap<>(draft.fields());
    typed.put("by", by);
    typed.put("sure", Boolean.toString(sure));
    FoundBefore.FoundIn setting =
        new FoundBefore.FoundIn(
            code,
            head,
            typed,
            draft.arrived().stream().filter(Arrived::counted).map(Arrived::state).toList(),
            new ClinicFile(records.folder()).read(),
            records.now().truncatedTo(ChronoUnit.MINUTES));
    return draft.before().found(setting, () -> found(sure));
  }

  /** Checks the recordings that are counted, as keeping them would. */
  public SoFar found(boolean sure) throws StoreFailure {
    Map<String, String> fields = draft.fields();
    SheetText sheet = SheetOfFields.of(opening, fields, by, MeasuredHands.isMarking(records));
    List<Arrived> counted = draft.arrived().stream().filter(Arrived::counted).toList();
    if (counted.isEmpty()) {
      return new SoFar(sheet, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
    }
    Optional<Inputs> inputs = Optional.empty();
    try {
      inputs = Optional.of(inputs(counted, sheet.sheet(), fields));
      KeepStand keep = KeepStand.in(records, code, initials(), sure);
      Inputs known = keep.completed(inputs.get());
      inputs = Optional.of(known);
      Answered answered = new SessionCheck(records, keep::check).run(known);
      return new SoFar(
          sheet,
          Optional.of(answered.inputs()),
          Optional.of(answered.checked()),
          answered.before(),
          List.of(),
          List.of());
    } catch (BadInput e) {
      return new SoFar(sheet, inputs, Optional.empty(), List.of(), e.problems(), e.questions());
    }
  }

  private Optional<String> initials() {
    return Optional.of(by).filter(b -> !b.isBlank());
  }

  /**
   * Keeps the state as an entry of the record and removes the draft.
   *
   * @param found what was found, with a result
   * @throws BadInput if the record no longer takes it
   * @throws StoreFailure if it cannot be written
   */
  public AddedEntry keep(SoFar found, boolean sure, Wording wording) throws BadInput, StoreFailure {
    KeepStand keep = KeepStand.in(records, code, initials(), sure);
    AddedEntry added =
        keep.keep(found.inputs().orElseThrow(), found.checked().orElseThrow(), wording, Paper.A4);
    draft.clear();
    return added;
  }

  /**
   * A recording over time with its quiet stretch, before it is counted and whatever is still
   * missing in the sheet.
   *
   * @throws BadInput if it is no recording of quiet standing, or its plate is not known
   */
  public List<DrawnOverTime> overTime(Arrived arrived, Wording wording)
      throws BadInput, StoreFailure {
    Map<String, String> fields = draft.fields();
    SheetText sheet =
        SheetOfFields.of(opening, provisional(fields), "", MeasuredHands.isMarking(records));
    Inputs inputs = inputs(List.of(arrived), sheet.sheet(), fields);
    FoundBefore.DrawnStand drawing =
        new FoundBefore.DrawnStand(
            code,
            arrived.state(),
            text(inputs.sheet()),
            inputs.description().isPresent() ? text(inputs.description().get()) : "",
            inputs.byHand().toString(),
            wording.locale().toString());
    return draft.before().drawn(drawing, () -> drawn(inputs, wording));
  }

  private static String text(NamedBytes file) throws BadInput {
    return file.name() + "\n" + new String(file.readAll(), UTF_8);
  }

  private static List<DrawnOverTime> drawn(Inputs inputs, Wording wording)
      throws BadInput, StoreFailure {
    Checked checked = Check.withOpenQuestions(inputs);
    QuietStretch used = checked.result().state().stands().get(0).standing().stretch();
    Samples times = checked.recordings().get(0).timeS();
    return Pictures.overTime(checked.result(), checked.recordings(), 0, wording).stream()
        .map(
            svg ->
                new DrawnOverTime(
                    svg,
                    Pictures.TIME_FROM_PART,
                    Pictures.TIME_TO_PART,
                    times.at(times.size() - 1),
                    used.fromS(),
                    used.toS()))
        .toList();
  }

  /** The strips of what was found. */
  public static List<String> strips(Checked checked, Wording wording) {
    return Pictures.strips(checked.result(), wording);
  }

  /** Enough of a sheet to read a recording: how the wearer stood, and a mark that is not shown. */
  private Map<String, String> provisional(Map<String, String> fields) {
    Map<String, String> some = new LinkedHashMap<>(fields);
    some.keySet().retainAll(DRAWN);
    String row = StandFields.LANDMARK + "[1].";
    some.put(row + "name", "plate");
    some.put(row + "forward", "0");
    some.put(row + "up", "0");
    if (isOfBothSides()) {
      some.put(row + "side", "left");
    }
    some.put(StandFields.AT, records.now().truncatedTo(ChronoUnit.DAYS).toString());
    some.put(StandFields.HANDS, "free");
    some.put(StandFields.WORN, "-");
    some.put(StandFields.HEEL, "0");
    some.putIfAbsent(StandFields.OTHER_FOOT, "plate");
    some.put(StandFields.OTHER_HIGHER, "0");
    some.putIfAbsent(StandFields.KNEE_LOCKED, "no");
    return some;
  }

  private Inputs inputs(List<Arrived> recordings, NamedBytes sheet, Map<String, String> fields)
      throws BadInput {
    Inputs inputs =
        new Inputs(
                recordings.stream().map(Arrived::file).toList(),
                sheet,
                ChosenPlate.description(records, fields),
                name -> Optional.empty())
            .withByHand(TypedStretch.of(fields, recordings));
    return ClinicInputs.complete(records, inputs);
  }
}
