package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.LegLength;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.InputValue;
import caryatid.usecase.Assignments;
import caryatid.usecase.Check;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.ExtendRecord;
import caryatid.usecase.Inputs;
import caryatid.usecase.Records;
import caryatid.usecase.SessionCheck;
import caryatid.usecase.StartRecord;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.Wording;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** At a terminal what is open is asked; the answers are typed by a script. */
class TerminalQuestionsTest {
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

  private final StringWriter asked = new StringWriter();

  @TempDir private Path folder;
  private Records records;

  @BeforeEach
  void start() throws BadInput, StoreFailure {
    records = Records.in(folder.resolve("records"), CLOCK);
    StartRecord.run(
        records,
        "K7-right",
        draft(EntryKind.OPENING, "wearer=K7", "side=right", "level=transtibial"),
        false);
  }

  private TerminalQuestions typing(String typed) {
    TerminalPrompt prompt =
        new TerminalPrompt(
            new BufferedReader(new StringReader(typed)), new PrintWriter(asked), WORDING);
    return new TerminalQuestions(Optional.of(prompt), WORDING);
  }

  private String asked() {
    return asked.toString().replace(System.lineSeparator(), "\n").replace('\u00a0', ' ');
  }

  private static EntryDraft draft(EntryKind kind, String... values) throws BadInput {
    InputValue.Group given =
        Assignments.read(Optional.empty(), List.of(values), Place.of("command line"));
    return new EntryDraft(
        kind,
        given,
        SuggestedRows.none(WORDING),
        List.of(),
        "AB",
        Optional.empty(),
        Optional.empty(),
        false);
  }

  private Entry added(String typed, EntryDraft draft) throws BadInput, StoreFailure {
    return typing(typed)
        .added(draft, each -> ExtendRecord.run(records, "K7-right", each))
        .entry()
        .entry();
  }

  private static EntryDraft bench(String item, String set) throws BadInput {
    return draft(
        EntryKind.BENCH_ALIGNMENT,
        "items[1].item=" + item,
        "items[1].set=" + set,
        "items[1].unit=deg");
  }

  private static BenchAlignment.Item item(Entry entry) {
    return entry.content(BenchAlignment.class).orElseThrow().items().get(0);
  }

  @Test
  void aNearlyKnownWordIsTakenForTheKnownOneAfterYes() throws Exception {
    Entry entry = added("yes\n", bench("ankle plantar flexion", "4"));
    assertThat(item(entry).item().code()).isPresent();
    assertThat(asked())
        .isEqualTo(
            "bench-alignment: items[1].item: \"ankle plantar flexion\" is not known; did you mean"
                + " \"ankle plantarflexion\"? Correct it; if it is something else, add:"
                + " items[1].item.text=ankle plantar flexion\n"
                + "Take the known word (yes), or keep what was typed (no): ");
  }

  @Test
  void aNearlyKnownWordIsKeptAsTypedAfterNo() throws Exception {
    Entry entry = added("no\n", bench("ankle plantar flexion", "4"));
    assertThat(item(entry).item().code()).isEmpty();
    assertThat(item(entry).item().text()).isEqualTo("ankle plantar flexion");
  }

  @Test
  void whatIsAskedOneAfterTheOtherIsAllAsked() throws Exception {
    Entry entry = added("yes\nshort foot\n", bench("ankle plantar flexion", "12"));
    assertThat(item(entry).item().code()).isPresent();
    assertThat(item(entry).why()).contains("short foot");
  }

  @Test
  void aReasonAnswersASettingThatCanHardlyBe() throws Exception {
    Entry entry = added("contracture\n", bench("ankle plantarflexion", "12"));
    assertThat(item(entry).why()).contains("contracture");
    assertThat(asked())
        .contains("items[1].set is 12.0\u00b0, outside \u221210.0\u00b0 to 10.0\u00b0: ")
        .endsWith("Why it is right; leave empty if it is not: ");
  }

  @Test
  void withoutAReasonNothingIsAdded() {
    BadInput refused =
        catchThrowableOfType(
            BadInput.class, () -> added("\n", bench("ankle plantarflexion", "12")));
    assertThat(refused.problems()).hasSize(1);
    assertThat(folder.resolve("records").toFile().list()).isNotEmpty();
    assertThat(records()).isEqualTo(1);
  }

  private int records() {
    try {
      return caryatid.usecase.ShowRecord.run(records, "K7-right").timeline().size();
    } catch (BadInput e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aNoteAnswersLengthsThatCanHardlyBe() throws Exception {
    Entry entry =
        added(
            "child\n",
            draft(
                EntryKind.LEG_LENGTH,
                "landmarks[1].landmark=knee",
                "landmarks[1].left-mm=180",
                "landmarks[1].right-mm=182"));
    assertThat(entry.content(LegLength.class).orElseThrow().note()).contains("child");
  }

  @Test
  void withoutATerminalTheEntryIsRefused() {
    TerminalQuestions script = new TerminalQuestions(Optional.empty(), WORDING);
    BadInput refused =
        catchThrowableOfType(
            BadInput.class,
            () ->
                script.added(
                    bench("ankle plantarflexion", "12"),
                    each -> ExtendRecord.run(records, "K7-right", each)));
    assertThat(refused.questions()).hasSize(1);
  }

  private Inputs heelOne(String more) throws IOException {
    String sheet =
        Files.readString(K7.resolve("barefoot.yaml"))
                .replace("barefoot, heel-height-mm: 0", "sandal, heel-height-mm: 1")
                .replace("stance-width-mm: 245", "stance-width-mm: 310")
            + more;
    return new Inputs(
        List.of(file(K7.resolve("barefoot-1.csv"))),
        NamedBytes.of("sheet.yaml", sheet.getBytes(StandardCharsets.UTF_8)),
        Optional.of(file(K7.resolve("plate.yaml"))),
        name -> Optional.empty());
  }

  private static NamedBytes file(Path path) throws IOException {
    return NamedBytes.of(path.getFileName().toString(), Files.readAllBytes(path));
  }

  private SessionCheck check() {
    return new SessionCheck(records, each -> Check.run(each, OffsetDateTime.now(CLOCK)));
  }

  @Test
  void whatACheckAsksIsAskedAndTheAnswersGoIntoTheSheet() throws Exception {
    SessionCheck.Answered answered = typing("yes\ny\n").answered(heelOne(""), check());
    assertThat(asked())
        .startsWith("sheet.yaml: `heel-height-mm` is 1.0 mm, outside 3.0 mm to 50.0 mm: ")
        .contains(
            "Is that right (yes, no): Noted in the sheet that is kept with the report: as-meant:"
                + " ['heel-height-mm 1']\n")
        .endsWith("as-meant: ['stance-width-mm 310']\n");
    assertThat(new String(answered.inputs().sheet().readAll(), StandardCharsets.UTF_8))
        .endsWith("as-meant: ['heel-height-mm 1', 'stance-width-mm 310']\n");
    assertThat(answered.checked().result().state().stands().get(0).trial().asMeant())
        .containsExactly("heel-height-mm 1", "stance-width-mm 310");
  }

  @Test
  void afterNoThereIsNoResult() throws IOException {
    Inputs inputs = heelOne("");
    BadInput refused =
        catchThrowableOfType(BadInput.class, () -> typing("yes\nno\n").answered(inputs, check()));
    assertThat(WORDING.say(refused.problems().get(0)).replace('\u00a0', ' '))
        .startsWith("sheet.yaml: `stance-width-mm` is 310.0 mm, outside 60.0 mm to 300.0 mm: ");
  }

  @Test
  void whatWasAnsweredInTheSessionIsNotAskedAgain() throws Exception {
    typing("yes\nyes\n").answered(heelOne(""), check());
    asked.getBuffer().setLength(0);
    SessionCheck.Answered again = typing("").answered(heelOne("# again\n"), check());
    assertThat(asked()).isEmpty();
    assertThat(again.before()).containsExactly("heel-height-mm 1", "stance-width-mm 310");
  }
}
