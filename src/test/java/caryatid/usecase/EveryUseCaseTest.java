package caryatid.usecase;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.report.pages.Paper;
import caryatid.usecase.ListRecords.Listed;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import caryatid.usecase.inspect.Inspect;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a face without a terminal needs: values in, outcomes out, files in memory. */
class EveryUseCaseTest {
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T08:00:00.5Z"), ZoneOffset.UTC);
  private static final String CODE = "K7-right";

  private final MemoryFiles files = new MemoryFiles();

  @TempDir private Path folder;

  private Records records;

  @BeforeEach
  void startARecord() throws Exception {
    records = Records.in(folder.resolve("clinic"), CLOCK);
    StartRecord.run(
        records, CODE, draft(EntryKind.OPENING, "wearer=K7", "side=right", "level=transtibial"));
  }

  private static EntryDraft draft(EntryKind kind, String... values) throws BadInput {
    return draft(kind, Optional.empty(), values);
  }

  private static EntryDraft draft(
      EntryKind kind, Optional<Entry.Correction> corrects, String... values) throws BadInput {
    return new EntryDraft(
        kind,
        Assignments.read(Optional.empty(), List.of(values), Place.of("test")),
        SuggestedRows.none(WORDING),
        List.of(),
        "AB",
        Optional.empty(),
        corrects,
        false);
  }

  private Inputs inputs() throws BadInput {
    Path k7 = Path.of("sample-recordings/k7");
    return new Inputs(
        List.of(files.read(k7.resolve("barefoot-1.csv"))),
        files.read(k7.resolve("barefoot.yaml")),
        Optional.of(files.read(k7.resolve("plate.yaml"))),
        name -> files.find(k7.resolve(name)));
  }

  private AddedEntry keepAStand() throws Exception {
    KeepStand keep = KeepStand.in(records, CODE, Optional.of("CD"), false);
    Inputs inputs = inputs();
    return keep.keep(inputs, keep.check(inputs), WORDING, Paper.A4);
  }

  @Test
  void aStandIsCheckedAndReportedInEveryFormWithoutADisk() throws Exception {
    Inputs inputs = inputs();
    Check.Checked checked = Check.run(inputs, OffsetDateTime.MAX);
    StandReport.Order order =
        new StandReport.Order(
            Path.of("out"),
            "barefoot-1.csv",
            List.of(StandReport.FileFormat.PDF, StandReport.FileFormat.JSON),
            Paper.A4,
            false);
    List<Path> written = new ArrayList<>();
    StandReport.requireFree(order, files);
    StandReport.write(order, inputs, checked, WORDING, files, written::add);
    Path pdf = Path.of("out/barefoot-1-report.pdf");
    Path json = Path.of("out/barefoot-1-report.json");
    assertThat(written).containsExactly(pdf, json);
    assertThat(files.made(json)).isEqualTo(StandReport.json(checked.result()));
    assertThatThrownBy(() -> StandReport.requireFree(order, files)).isInstanceOf(BadInput.class);
    assertThat(Recheck.run("report", files.made(pdf)))
        .isEqualTo(new RecheckResult.Reproduced(checked.result(), checked.result().program()));
  }

  @Test
  void anExportIsInspectedAndAFirstDescriptionWritten() throws Exception {
    NamedBytes export = files.read(Path.of("sample-recordings/k7/barefoot-1.csv"));
    String draft =
        new String(Inspect.draft(export, Inspect.run(export, Optional.empty()), WORDING), UTF_8);
    assertThat(draft)
        .contains(
            "\nplate-description: 1\n", "# 4  Fz  [356,13 355,78 355,44]  force-z, by its name");
    NamedBytes plate = files.read(Path.of("sample-recordings/k7/plate.yaml"));
    assertThat(Inspect.run(export, Optional.of(plate)).problems()).isEmpty();
  }

  @Test
  void aStandIsKeptUnderTheNextNumberAndOnceOnly() throws Exception {
    AddedEntry added = keepAStand();
    assertThat(added.entry().number()).isEqualTo(2);
    assertThat(added.entry().kind()).isEqualTo(EntryKind.STAND);
    assertThat(added.entry().by()).isEqualTo("CD");
    KeepStand again = KeepStand.in(records, CODE, Optional.empty(), false);
    assertThatThrownBy(() -> again.check(inputs())).isInstanceOf(BadInput.class);
  }

  @Test
  void anEntryIsAddedCorrectedShownAndCompared() throws Exception {
    Entry wrong = ExtendRecord.run(records, CODE, draft(EntryKind.NOTE, "text=liner two")).entry();
    assertThat(wrong.at()).isEqualTo(OffsetDateTime.parse("2026-12-01T08:00Z"));
    Entry.Correction because = new Entry.Correction(2, "miscounted", Optional.empty());
    ExtendRecord.run(
        records, CODE, draft(EntryKind.NOTE, Optional.of(because), "text=liner three"));
    ExtendRecord.run(
        records, CODE, draft(EntryKind.OWN_SETTING, "what=ankle", "attempts=3", "succeeded=3"));
    RecordView view = ShowRecord.run(records, CODE);
    assertThat(view.timeline())
        .extracting(line -> line.entry().number())
        .containsExactly(1, 2, 3, 4);
    assertThat(view.timeline().get(1).correctedBy()).contains(3);
    assertThat(view.damage()).isEmpty();
    assertThat(CompareStates.run(records, CODE, 1, 3).comparison().differences()).isEmpty();
    assertThat(CompareStates.run(records, CODE, 1, 4).comparison().differences()).isNotEmpty();
  }

  @Test
  void theNextSheetComesWithTheOnesItIsBasedOn() throws Exception {
    keepAStand();
    NextStand.of(records, CODE).write(Path.of("next/stand-2.yaml"), files);
    assertThat(new String(files.made(Path.of("next/stand-2.yaml")), UTF_8))
        .startsWith("trial-sheet: 1\nbased-on: barefoot.yaml\n");
    assertThat(files.made(Path.of("next/barefoot.yaml")))
        .isEqualTo(files.read(Path.of("sample-recordings/k7/barefoot.yaml")).readAll());
    NextStand.of(records, CODE).write(Path.of("next/stand-3.yaml"), files);
    assertThatThrownBy(() -> NextStand.of(records, CODE).write(Path.of("next/stand-3.yaml"), files))
        .isInstanceOf(BadInput.class);
  }

  @Test
  void aRecordIsVerifiedReportedPackedTakenInAndErased() throws Exception {
    VerifyRecord.Sound sound = (VerifyRecord.Sound) VerifyRecord.run(records, CODE);
    assertThat(sound.entries()).isEqualTo(1);
    Output pdf = new Output(Path.of("record.pdf"), false);
    assertThat(RecordReport.write(records, CODE, WORDING, Paper.A4, pdf, files)).isEmpty();
    assertThat(new String(files.made(pdf.path()), ISO_8859_1)).startsWith("%PDF-");
    Path zip = folder.resolve("K7-right.zip");
    PackRecord.run(records, CODE, zip, WORDING, new LocalFiles());
    Records colleague = Records.in(folder.resolve("colleague"), CLOCK);
    assertThat(UnpackRecord.run(colleague, zip, "CD", new LocalFiles()))
        .isEqualTo(new UnpackRecord.Unpacked(CODE, sound.headDigest()));
    EraseRecord.run(
        colleague,
        CODE,
        new EraseRecord.ErasureReason(Optional.empty(), "CD", "the wearer asked for it", false));
    assertThat(ListRecords.run(records)).containsExactly(new Listed(CODE, Optional.empty()));
    assertThat(ListRecords.run(colleague)).singleElement().matches(r -> r.erasure().isPresent());
    assertThat(VerifyRecord.run(colleague, CODE)).isInstanceOf(VerifyRecord.Erased.class);
  }
}
