package caryatid.usecase;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.EarlierState;
import caryatid.alignment.Foresight;
import caryatid.alignment.OffsetChange;
import caryatid.alignment.Result;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.format.EarlierStatesJson;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.Component;
import caryatid.store.StoredRecord;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The state before is a kept input of a check: named, attached, and marked in the drawings. */
class EarlierStatesTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Path STORY = Path.of("sample-recordings/story");
  private static final String CODE = "K7-right";

  private final MemoryFiles files = new MemoryFiles();

  @TempDir private Path folder;

  private Inputs inputs(String sheet, String... recordings) throws BadInput {
    NamedBytes[] read = new NamedBytes[recordings.length];
    for (int i = 0; i < recordings.length; i++) {
      read[i] = files.read(STORY.resolve(recordings[i]));
    }
    return new Inputs(
        List.of(read),
        files.read(STORY.resolve(sheet)),
        Optional.of(files.read(Path.of("sample-recordings/k7/plate.yaml"))),
        name -> files.find(STORY.resolve(name)));
  }

  private Inputs first() throws BadInput {
    return inputs("stand-1.yaml", "stand-1.csv");
  }

  private Inputs second() throws BadInput {
    return inputs("stand-2.yaml", "stand-2a.csv", "stand-2b.csv", "stand-2c.csv");
  }

  private NamedBytes firstResult() throws BadInput {
    return NamedBytes.of("first.json", ResultJson.write(Check.withOpenQuestions(first()).result()));
  }

  private static byte[] pdf(Inputs inputs) throws BadInput {
    return CheckPdf.pdf(inputs, Check.withOpenQuestions(inputs), ENGLISH, Paper.A4);
  }

  @Test
  void aReportOrItsResultBecomesOneNamedInputThatTheResultKeeps() throws BadInput {
    NamedBytes ofResult = EarlierInput.of(firstResult());
    NamedBytes ofReport = EarlierInput.of(NamedBytes.of("first.pdf", pdf(first())));
    assertThat(ofReport.readAll()).isEqualTo(ofResult.readAll());
    Result result = Check.withOpenQuestions(second().withEarlier(Optional.of(ofReport))).result();
    assertThat(result.earlier().orElseThrow().file()).isEqualTo(Provenance.of(ofReport));
    EarlierState before = result.before().orElseThrow();
    assertThat(before.resultSha512()).isEqualTo(Provenance.of(firstResult()).sha512());
    assertThat(before.stands()).isEqualTo(1);
    assertThat(before.offsets()).allMatch(offset -> offset.spreadMm().isEmpty());
    assertThat(ResultJson.read(ResultJson.write(result))).isEqualTo(result);
  }

  @Test
  void aStateOfOneStandChangesNoFinding() throws BadInput {
    Inputs with = second().withEarlier(Optional.of(EarlierInput.of(firstResult())));
    assertThat(Check.withOpenQuestions(with).result().state())
        .isEqualTo(Check.withOpenQuestions(second()).result().state());
  }

  /** Three stands' spread counts in a later stand: 5 degrees of what is usual, and 2. */
  @Test
  void howFarTheStandsOfAnEarlierStateScatterCounts() throws BadInput {
    Result before = Check.withOpenQuestions(second()).result();
    EarlierState three = EarlierState.of(before.state(), "0");
    double spread = three.offsets().get(0).spreadMm().orElseThrow();
    Inputs later =
        inputs("stand-3.yaml", "stand-3.csv")
            .withEarlier(Optional.of(EarlierInput.input(List.of(three))));
    Estimate mm = Check.withOpenQuestions(later).result().state().offsets().get(0).offset().mm();
    Contribution repeats =
        mm.contributions().stream()
            .filter(c -> c.source().cause() == Cause.REPEATABILITY)
            .findFirst()
            .orElseThrow();
    assertThat(repeats.degreesOfFreedom()).isEqualTo(7);
    assertThat(repeats.standardUncertainty())
        .isCloseTo(Math.sqrt((5 * 5.5 * 5.5 + 2 * spread * spread) / 7), within(1e-9));
  }

  /** The spread by hand: sample standard deviation of the stands' offsets. */
  @Test
  void severalStandsTellTheirSpread() throws BadInput {
    Result result = Check.withOpenQuestions(second()).result();
    EarlierState state = EarlierState.of(result.state(), "0");
    EarlierState.EarlierOffset first = state.offsets().get(0);
    List<Double> each =
        result.state().stands().stream()
            .flatMap(stand -> stand.offsets().stream())
            .filter(o -> o.at().equals(first.at()) && o.of() == first.of())
            .filter(o -> o.kind() == result.state().offsets().get(0).offset().kind())
            .map(o -> o.mm().value())
            .toList();
    assertThat(each).hasSize(3);
    double mean = (each.get(0) + each.get(1) + each.get(2)) / 3;
    double squares = each.stream().mapToDouble(mm -> Math.pow(mm - mean, 2)).sum();
    assertThat(first.spreadMm().orElseThrow()).isCloseTo(Math.sqrt(squares / 2), within(1e-9));
    assertThat(state.stands()).isEqualTo(3);
  }

  @Test
  void theReportMarksItAttachesItAndIsReproduced() throws BadInput {
    Inputs with = second().withEarlier(Optional.of(EarlierInput.of(firstResult())));
    Check.Checked checked = Check.withOpenQuestions(with);
    String html = new String(Report.html(checked.result(), checked.recordings(), ENGLISH), UTF_8);
    assertThat(html).contains("previous state: 2026-03-04 10:15, barefoot");
    assertThat(html).contains("In the previous state: ");
    byte[] report = pdf(with);
    assertThat(pdf(with)).isEqualTo(report);
    assertThat(Recheck.run("second.pdf", report))
        .isEqualTo(new RecheckResult.Reproduced(checked.result(), checked.result().program()));
    assertThat(attached(report).name()).isEqualTo(EarlierStatesJson.FILE_NAME);
  }

  private static AttachedFile attached(byte[] report) throws BadInput {
    return ReportReader.read("second.pdf", report).files().stream()
        .filter(file -> file.role() == AttachmentRole.EARLIER_STATES)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aReportWithAnotherStateBeforeInsideIsAltered() throws BadInput {
    Inputs with = second().withEarlier(Optional.of(EarlierInput.of(firstResult())));
    Check.Checked checked = Check.withOpenQuestions(with);
    List<AttachedFile> inside =
        CheckPdf.attachments(with, checked).files().stream()
            .map(
                file ->
                    file.role() == AttachmentRole.EARLIER_STATES
                        ? new AttachedFile(file.role(), file.name(), moved(file.bytes()))
                        : file)
            .toList();
    byte[] altered =
        Report.pdf(
            checked.result(), checked.recordings(), new Attachments(inside), ENGLISH, Paper.A4);
    assertThat(Recheck.run("second.pdf", altered))
        .isInstanceOfSatisfying(
            RecheckResult.Altered.class,
            found -> assertThat(found.differences().get(0).path()).isEqualTo("earlier[0].sha512"));
  }

  private static byte[] moved(byte[] states) {
    return new String(states, UTF_8).replace("\"stands\" : 1", "\"stands\" : 2").getBytes(UTF_8);
  }

  @Test
  void aStateThatIsNotBeforeOrOfAnotherWearerIsRefused() throws BadInput {
    NamedBytes same = EarlierInput.of(firstResult());
    refused(
        first().withEarlier(Optional.of(same)),
        "earlier-states.json: the previous state is of 2026-03-04T10:15+01:00, which is not before"
            + " the sheet's `at`, 2026-03-04T10:15+01:00. Take an earlier report, or correct"
            + " `at`.");
    byte[] other = new String(same.readAll(), UTF_8).replace("\"K7\"", "\"K8\"").getBytes(UTF_8);
    refused(
        second().withEarlier(Optional.of(NamedBytes.of("earlier-states.json", other))),
        "earlier-states.json: the previous state is of wearer K8, the sheet of K7. Take an earlier"
            + " report of this wearer.");
  }

  private static void refused(Inputs inputs, String words) {
    assertThatThrownBy(() -> Check.withOpenQuestions(inputs))
        .isInstanceOfSatisfying(
            BadInput.class, e -> assertThat(ENGLISH.say(e.problems().get(0))).isEqualTo(words));
  }

  @Test
  void aRecordGivesItsLastStateItsComponentsAndItsAnkle() throws Exception {
    Clock clock = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
    Records records = Records.in(folder.resolve("clinic"), clock);
    StartRecord.run(
        records, CODE, draft(EntryKind.OPENING, "wearer=K7", "side=right", "level=transtibial"));
    ExtendRecord.run(
        records,
        CODE,
        draft(
            EntryKind.COMPONENTS,
            "components[1].what=foot",
            "components[1].name=demo foot",
            "components[2].what=ankle",
            "components[2].name=demo ankle",
            "components[2].ankle-axis=yes"));
    Inputs one = keep(records, first());
    assertThat(one.earlier()).isEmpty();
    assertThat(Check.withOpenQuestions(one).result().state().stands().get(0).trial().components())
        .contains(new Component("ankle", "demo ankle", Optional.empty()));
    Inputs two = keep(records, second());
    Result result = Check.withOpenQuestions(two).result();
    assertThat(result.state().stands().get(0).trial().ankleAxis()).contains(AnkleAxis.RIGHT);
    StoredRecord stored = records.store().open(caryatid.fitting.RecordCode.of(CODE));
    List<Entry> stands =
        stored.record().valid().stream().filter(e -> e.kind() == EntryKind.STAND).toList();
    KeptFile firstResult = stands.get(0).file(KeptFile.Role.RESULT).orElseThrow();
    assertThat(result.before().orElseThrow().resultSha512())
        .isEqualTo(stored.record().digest(stands.get(0), firstResult).orElseThrow());
    assertThat(stands.get(1).file(KeptFile.Role.EARLIER_STATES)).isPresent();
    byte[] report =
        stored.bytes(stands.get(1), stands.get(1).file(KeptFile.Role.REPORT).orElseThrow());
    assertThat(Recheck.run("report.pdf", report)).isInstanceOf(RecheckResult.Reproduced.class);
    changesAndWhatIsAhead(records, stands);
    laterStands(records);
  }

  /** One stand, then three: the same plate, so each vertical line has a change. */
  private static void changesAndWhatIsAhead(Records records, List<Entry> stands) throws BadInput {
    int one = stands.get(0).number();
    int two = stands.get(1).number();
    List<OffsetChange> changes = CompareStates.run(records, CODE, one, two).changes();
    assertThat(changes).isNotEmpty();
    assertThat(changes)
        .allMatch(c -> Math.abs(c.afterMm() - c.beforeMm() - c.stayed().value()) < 1e-9)
        .allMatch(c -> c.stayed().expanded(0.95) < c.anew().expanded(0.95));
    assertThat(CompareStates.run(records, CODE, two, two).changes()).isEmpty();
    assertThat(CompareStates.run(records, CODE, 1, two).changes()).isEmpty();
    assertThat(CompareStates.back(records, CODE, one, two, two).changes()).isEmpty();
    List<Foresight> ahead = NextStand.of(records, CODE).ahead();
    assertThat(ahead).isNotEmpty();
    assertThat(ahead.get(0).decidesWithinMm(5).orElse(0))
        .isGreaterThanOrEqualTo(ahead.get(0).decidesWithinMm(3).orElse(0));
  }

  /** The state of three stands tells the scatter whatever the shoe; one of them is marked. */
  private void laterStands(Records records) throws Exception {
    KeepStand keep = KeepStand.in(records, CODE, Optional.of("AB"), false);
    Inputs sports = keep.completed(inputs("sports-shoe.yaml", "sports-shoe.csv"));
    List<EarlierState> before = EarlierStatesJson.read(sports.earlier().orElseThrow()).states();
    assertThat(before).extracting(EarlierState::stands).containsExactly(3);
    assertThat(before).extracting(EarlierState::marked).containsExactly(false);
    assertThat(Check.withOpenQuestions(sports).result().before()).isEmpty();
    Inputs third = keep.completed(inputs("stand-3.yaml", "stand-3.csv"));
    assertThat(EarlierStatesJson.read(third.earlier().orElseThrow()).states())
        .extracting(EarlierState::marked)
        .containsExactly(true);
  }

  private static Inputs keep(Records records, Inputs inputs) throws Exception {
    KeepStand keep = KeepStand.in(records, CODE, Optional.of("AB"), false);
    Inputs completed = keep.completed(inputs);
    keep.keep(completed, keep.check(completed), ENGLISH, Paper.A4);
    return completed;
  }

  private static EntryDraft draft(EntryKind kind, String... values) throws BadInput {
    return new EntryDraft(
        kind,
        Assignments.read(Optional.empty(), List.of(values), Place.of("test")),
        SuggestedRows.none(ENGLISH),
        List.of(),
        "AB",
        Optional.empty(),
        Optional.empty(),
        false);
  }
}
