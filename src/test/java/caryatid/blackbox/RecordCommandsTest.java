package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record's commands: what they refuse, and what they say. */
class RecordCommandsTest {
  @TempDir private Path folder;

  @BeforeEach
  void startRecord() {
    Run run =
        record("start", "K7-right", "--by", "AB", "wearer=K7", "side=right", "level=transtibial");
    assertThat(run).isEqualTo(new Run(0, "Started record K7-right in " + folder + "\n", ""));
  }

  @Test
  void aCodeThatLooksLikeANameOrADateOfBirthIsQuestioned() {
    String[] rest = {"--by", "AB", "wearer=K8", "side=left", "level=transtibial"};
    assertThat(record("start", "Anna-B", rest).err())
        .isEqualTo(
            "Anna-B: looks like a name, and a record holds none. Choose a code such as K7-right; if"
                + " this is one, add --sure.\n");
    assertThat(record("start", "17031960", rest).err())
        .isEqualTo(
            "17031960: looks like a date of birth, and a record holds none. Choose a code such as"
                + " K7-right; if this is one, add --sure.\n");
    assertThat(
            record("start", "K8", "--by", "AB", "wearer=Anna", "side=left", "level=transtibial")
                .err())
        .startsWith("Anna: looks like a name");
    assertThat(record("list").out()).isEqualTo("K7-right\n");
    assertThat(
            record(
                    "start",
                    "Depot",
                    "--sure",
                    "--by",
                    "AB",
                    "wearer=K8",
                    "side=left",
                    "level=transtibial")
                .code())
        .isZero();
  }

  @Test
  void whatIsMissingIsRefusedWithoutATerminal() {
    assertThat(record("add", "K7-right", "accepted", "--by", "AB", "what=toe-out"))
        .isEqualTo(new Run(1, "", "command line: why is missing. Add it.\n"));
    assertThat(record("add", "K7-right", "note", "text=steady"))
        .isEqualTo(
            new Run(
                1,
                "",
                "note: expected initials of who adds it, one to ten letters and digits, found \"\"."
                    + " Give them with --by.\n"));
    assertThat(record("add", "K7-right", "walking", "--by", "AB"))
        .isEqualTo(
            new Run(
                1,
                "",
                "walking: nothing is said. Give at least one of: observations, comfort, skin,"
                    + " heel-stiffness, walking-aid, note.\n"));
    assertThat(record("show", "K7-right").out()).startsWith("Record K7-right: 1 entries.");
  }

  @Test
  void wrongUsageIsExitTwo() {
    assertThat(record("add", "K7-right", "gait", "--by", "AB").code()).isEqualTo(2);
    assertThat(record("add", "K7-right", "erasure", "--by", "AB").code()).isEqualTo(2);
    assertThat(record("add", "K7-right", "note", "--by", "AB", "--corrects", "1", "text=x").code())
        .isEqualTo(2);
    assertThat(record("add", "K7-right", "note", "--by", "AB", "--keep", "walk.csv").code())
        .isEqualTo(2);
    assertThat(record("start").code()).isEqualTo(2);
  }

  @Test
  void valuesInRowsAreGivenAsArguments() {
    Run run =
        record(
            "add",
            "K7-right",
            "bench-alignment",
            "--by",
            "AB",
            "items[1].item=socket flexion",
            "items[1].set=5",
            "items[1].unit=deg",
            "items[2].item=foot rotation",
            "items[2].set=7",
            "items[2].unit=deg");
    assertThat(run)
        .isEqualTo(
            new Run(
                0,
                "Added entry 2 to record K7-right: bench alignment\nTake care: Entry 2 sets the"
                    + " alignment and says nothing of fasteners secured to torque. Check them before"
                    + " the wearer stands or walks.\n",
                ""));
    assertThat(record("show", "K7-right").out())
        .contains("      socket flexion; set 5 deg\n      foot rotation; set 7 deg\n");
    assertThat(record("add", "K7-right", "bench-alignment", "--by", "AB", "items[2].set=7").err())
        .isEqualTo(
            "command line: expected KEY=VALUE or ROWS[1].KEY=VALUE with rows counted from 1 without a"
                + " gap, found \"items[2].set=7\".\n");
  }

  @Test
  void aFormThatIsPrintedCanBeFilledInAndRead() throws IOException {
    String form = record("form", "length").out();
    assertThat(form).startsWith("landmarks:\n  - landmark:  # landmark\n    left-mm:  # left\n");
    Path file = folder.resolve("length.yaml");
    Files.writeString(
        file,
        form.replace("landmark:  #", "landmark: iliac crest  #")
            .replace("left-mm:  #", "left-mm: 980  #")
            .replace("right-mm:  #", "right-mm: 985  #")
            .replaceAll("(?m)^[a-z-]+:  #.*\n", ""));
    assertThat(record("add", "K7-right", "length", "--by", "AB", "--from", file.toString()).out())
        .isEqualTo("Added entry 2 to record K7-right: length\n");
  }

  @Test
  void theReportOfARecordIsWrittenAndNotOverAnotherUnasked() throws IOException {
    Path pdf = folder.resolve("reports/K7.pdf");
    assertThat(record("report", "K7-right", "--out", pdf.toString()))
        .isEqualTo(new Run(0, "Report: " + pdf + "\n", ""));
    byte[] first = Files.readAllBytes(pdf);
    assertThat(new String(first, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
    assertThat(record("report", "K7-right", "--out", pdf.toString()))
        .isEqualTo(
            new Run(
                1,
                "",
                pdf
                    + ": is there already, and nothing is overwritten without being asked. Choose"
                    + " another name or folder, or add --replace.\n"));
    assertThat(
            record("report", "K7-right", "--out", pdf.toString(), "--replace", "--language", "de")
                .code())
        .isZero();
    assertThat(Files.readAllBytes(pdf)).isNotEqualTo(first);
    assertThat(record("report", "K7-right").code()).isEqualTo(2);
    assertThat(record("report", "K9", "--out", folder.resolve("no.pdf").toString()).err())
        .startsWith("K9: there is no record of that code");
    assertThat(folder.resolve("no.pdf")).doesNotExist();
  }

  @Test
  void theReportOfADamagedRecordSaysSoAndIsWritten() throws IOException {
    record("add", "K7-right", "note", "--by", "AB", "text=steady");
    Path entry = folder.resolve("records/K7-right/v2/content/0002-note/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("steady", "sturdy"));
    Path pdf = folder.resolve("K7.pdf");
    Run run = record("report", "K7-right", "--out", pdf.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("0002-note/entry.json: is not what was added");
    assertThat(pdf).exists();
  }

  @Test
  void aStandOfAnotherProsthesisIsRefusedAndNothingIsWritten() {
    Path out = folder.resolve("reports");
    Run run =
        Run.caryatid(
            "check",
            "sample-recordings/m4/barefoot.txt",
            "--trial",
            "sample-recordings/m4/barefoot.yaml",
            "--plate",
            "sample-recordings/m4/plates.yaml",
            "--out",
            out.toString(),
            "--by",
            "AB",
            "--record",
            "K7-right",
            "--records",
            folder.toString());
    assertThat(run)
        .isEqualTo(
            new Run(
                1,
                "",
                "K7-right: the sheet is of another prosthesis: M4, left, transfemoral; this record is"
                    + " of: K7, right, transtibial. Choose the record it belongs to, or correct the"
                    + " sheet. Nothing was written.\n"));
    assertThat(out).doesNotExist();
    assertThat(record("show", "K7-right").out()).startsWith("Record K7-right: 1 entries.");
  }

  @Test
  void theOpeningCanBeCorrectedAndNotAddedAgain() {
    String[] said = {"opening", "--by", "AB", "wearer=K7", "side=left", "level=transtibial"};
    assertThat(record("add", "K7-right", said).err())
        .isEqualTo(
            "K7-right: this record is started already; its opening can only be corrected. Say which"
                + " entry with --corrects, and why with --because.\n");
    String[] corrected = {
      "opening",
      "--by",
      "AB",
      "wearer=K7",
      "side=left",
      "level=transtibial",
      "--corrects",
      "1",
      "--because",
      "x"
    };
    assertThat(record("add", "K7-right", corrected).out())
        .isEqualTo("Added entry 2 to record K7-right: opening\n");
    assertThat(record("show", "K7-right").out()).contains("AB  opening, corrected by entry 2\n");
    corrected[3] = "wearer=Anna";
    assertThat(record("add", "K7-right", corrected).err()).startsWith("Anna: looks like");
  }

  @Test
  void whatIsLeftOutOfAUsualRowIsFilledIn() {
    record("add", "K7-right", "walking", "--by", "AB", "observations[1].deviation=drop-off");
    assertThat(record("show", "K7-right").out())
        .contains(
            "      drop-off; plane sagittal; phase late stance; usually points to foot dorsiflexed, too"
                + " short or too far back; forefoot too soft; source Murphy,");
    assertThat(record("form", "bench-alignment", "--level", "transtibial").out())
        .startsWith("items:\n  - item: \"socket flexion\"\n    recommended:  # recommended\n")
        .contains("  - item: \"fasteners secured to torque\"\n")
        .doesNotContain("knee axis");
  }

  @Test
  void aRecordIsShownInOtherLanguages() {
    assertThat(record("show", "K7-right", "--language", "de").out())
        .startsWith("Akte K7-right: 1 Einträge. Kopfsumme ")
        .contains("      Amputationshöhe: transtibial\n");
  }

  @Test
  void aDamagedRecordShowsWhatIsWholeAndSaysWhatIsNot() throws IOException {
    record("add", "K7-right", "note", "--by", "AB", "text=steady");
    record("add", "K7-right", "note", "--by", "AB", "text=later");
    Path entry = folder.resolve("records/K7-right/v2/content/0002-note/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("steady", "sturdy"));
    Run run = record("show", "K7-right");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("later").doesNotContain("sturdy");
    assertThat(run.err())
        .isEqualTo(
            "K7-right/v2/content/0002-note/entry.json: is not what was added: its bytes have changed."
                + " Bring it back from a backup.\n");
    assertThat(record("verify").err()).isEqualTo(run.err());
    assertThat(record("add", "K7-right", "note", "--by", "AB", "text=more").err())
        .isEqualTo(run.err());
    Path zip = folder.resolve("out.zip");
    assertThat(record("pack", "K7-right", zip.toString()).err()).isEqualTo(run.err());
    assertThat(zip).doesNotExist();
  }

  @Test
  void aCheckForARecordThatIsNotThereIsRefusedBeforeAnyWork() {
    Run run =
        Run.caryatid(
            "check",
            "sample-recordings/k7/barefoot-1.csv",
            "--trial",
            "sample-recordings/k7/barefoot.yaml",
            "--plate",
            "sample-recordings/k7/plate.yaml",
            "--out",
            folder.resolve("out").toString(),
            "--record",
            "K9",
            "--records",
            folder.toString());
    assertThat(run)
        .isEqualTo(
            new Run(
                1,
                "",
                "K9: there is no record of that code in "
                    + folder
                    + ". Check the code, or start the record first.\n"));
    assertThat(folder.resolve("out")).doesNotExist();
  }

  private Run record(String command, String first, String... rest) {
    List<String> all =
        new ArrayList<>(List.of("record", command, "--records", folder.toString(), first));
    all.addAll(List.of(rest));
    return Run.caryatid(all.toArray(String[]::new));
  }

  private Run record(String command) {
    return Run.caryatid("record", command, "--records", folder.toString());
  }
}
