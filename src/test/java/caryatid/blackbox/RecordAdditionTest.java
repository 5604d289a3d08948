package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is added to a record by commands, and what is refused. */
class RecordAdditionTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void aCodeThatLooksLikeANameOrADateOfBirthIsQuestioned() {
    String[] rest = {"--by", "AB", "wearer=K8", "side=left", "level=transtibial"};
    assertThat(clinic.record("start", "Anna-B", rest).err())
        .isEqualTo(
            "Anna-B: looks like a name, which a record must not contain. Choose a code such as"
                + " K7-right; if this is a code, add --sure.\n");
    assertThat(clinic.record("start", "17031960", rest).err())
        .isEqualTo(
            "17031960: looks like a date of birth, which a record must not contain. Choose a code"
                + " such as K7-right; if this is a code, add --sure.\n");
    assertThat(
            clinic
                .record(
                    "start", "K8", "--by", "AB", "wearer=Anna", "side=left", "level=transtibial")
                .err())
        .startsWith("Anna: looks like a name");
    assertThat(clinic.record("list").out()).isEqualTo("K7-right\n");
    assertThat(
            clinic
                .record(
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
  void valuesInRowsAreGivenAsArguments() {
    Run run =
        clinic.record(
            "add",
            "K7-right",
            "bench-alignment",
            "--by",
            "AB",
            "items[1].item=socket flexion",
            "items[1].set=5",
            "items[1].unit=deg",
            "items[2].item=foot rotation outward",
            "items[2].set=7",
            "items[2].unit=deg");
    assertThat(run)
        .isEqualTo(
            new Run(
                0,
                "Added entry 2 to record K7-right: bench alignment\n"
                    + "Take care: Entry 2 sets the alignment but does not say that fasteners were"
                    + " secured to torque. Check them before the wearer stands or walks.\n",
                ""));
    assertThat(clinic.record("show", "K7-right").out())
        .contains("      socket flexion; set 5 deg\n      foot rotation outward; set 7 deg\n");
    assertThat(
            clinic
                .record("add", "K7-right", "bench-alignment", "--by", "AB", "items[2].set=7")
                .err())
        .isEqualTo(
            "command line: expected KEY=VALUE or ROWS[1].KEY=VALUE with rows counted from 1 without"
                + " a gap, found \"items[2].set=7\".\n");
  }

  @Test
  void theOpeningCanBeCorrectedAndNotAddedAgain() {
    String[] said = {"opening", "--by", "AB", "wearer=K7", "side=left", "level=transtibial"};
    assertThat(clinic.record("add", "K7-right", said).err())
        .isEqualTo(
            "K7-right: this record was already started; its opening can only be corrected. Say"
                + " which entry with --corrects, and why with --because.\n");
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
    assertThat(clinic.record("add", "K7-right", corrected).out())
        .isEqualTo("Added entry 2 to record K7-right: opening\n");
    assertThat(clinic.record("show", "K7-right").out())
        .contains("AB  opening, corrected by entry 2\n");
    corrected[3] = "wearer=Anna";
    assertThat(clinic.record("add", "K7-right", corrected).err()).startsWith("Anna: looks like");
  }

  @Test
  void whatIsLeftOutOfAUsualRowIsFilledIn() {
    clinic.record("add", "K7-right", "walking", "--by", "AB", "observations[1].deviation=drop-off");
    assertThat(clinic.record("show", "K7-right").out())
        .contains(
            "      drop-off; plane sagittal; phase late stance; usually points to foot dorsiflexed,"
                + " too short or too far back; forefoot too soft; source Murphy,");
    assertThat(clinic.record("form", "bench-alignment", "--level", "transtibial").out())
        .startsWith(
            "items:\n"
                + "  - item: \"socket flexion\"\n"
                + "    side:  # side: left, right\n"
                + "    recommended:  # recommended\n")
        .contains("  - item: \"fasteners secured to torque\"\n    fastener:  # fastener\n")
        .doesNotContain("knee axis");
  }

  @Test
  void aCorrectionWantsItsEntryAndItsReasonAndTakesTheEntrysTime() {
    bench("2026-03-04T09:00+01:00", "4");
    bench("2026-03-04T10:00+01:00", "5");
    Run half = bench("2026-03-04T11:00+01:00", "6", "--corrects", "2");
    assertThat(half.code()).isEqualTo(2);
    assertThat(half.err())
        .startsWith(
            "A correction needs both --corrects ENTRY (the entry to replace) and --because WHY (the"
                + " reason).\n");
    assertThat(bench("2026-03-04T11:00+01:00", "6", "--corrects", "2", "--because", "x").out())
        .startsWith(
            "Added entry 4 to record K7-right: bench alignment\n"
                + "Remark: Entry 4 takes effect at 2026-03-04 09:00 +01:00, the time of entry 2,"
                + " which it corrects; --as-of states another.\n"
                + "Remark: Entry 4 (2026-03-04 09:00 +01:00) is dated before entry 3 (2026-03-04"
                + " 10:00 +01:00), so it is inserted there; the later entry still applies.\n");
    assertThat(
            bench(
                    "2026-03-04T11:10+01:00",
                    "7",
                    "--corrects",
                    "4",
                    "--because",
                    "x",
                    "--as-of",
                    "2026-03-04T10:30+01:00")
                .out())
        .doesNotContain("older", "counts from");
  }

  private Run bench(String at, String degrees, String... rest) {
    List<String> all =
        new ArrayList<>(
            List.of("bench-alignment", "--by", "AB", "--at", at, "items[1].item=socket flexion"));
    all.addAll(List.of("items[1].unit=deg", "items[1].set=" + degrees));
    all.addAll(List.of(rest));
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  @Test
  void aTimeThatCannotBeIsRefusedInPlainWords() {
    assertThat(note("2031-03-04T10:15+01:00"))
        .isEqualTo(
            new Run(
                1,
                "",
                "note: expected a time in the past, found 2031-03-04T10:15+01:00; it is now"
                    + " 2026-12-01T08:00Z. Check the date, and this computer's clock.\n"));
    assertThat(note("2026-12-02T07:59Z").code()).isZero();
    assertThat(note("1949-12-31T10:15Z"))
        .isEqualTo(
            new Run(
                1,
                "",
                "note: expected a time since 1950, found 1949-12-31T10:15Z. Check the year.\n"));
    assertThat(note("1950-01-01T10:15Z").code()).isZero();
    Run malformed = note("yesterday");
    assertThat(malformed.code()).isEqualTo(2);
    assertThat(malformed.err())
        .startsWith(
            "Invalid value for option '--at': expected a date, a time and its offset from UTC, such"
                + " as 2026-03-04T10:15+01:00, found \"yesterday\". Write it like that.\n");
    assertThat(
            clinic
                .record(
                    "erase",
                    "K7-right",
                    "--by",
                    "CD",
                    "--because",
                    "x",
                    "--at",
                    "2031-01-01T10:00Z")
                .err())
        .startsWith("erasure: expected a time in the past");
  }

  private Run note(String at) {
    return clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady", "--at", at);
  }

  @Test
  void wordsThatLookLikeANameAreQuestionedInEveryCommandThatKeepsThem() {
    String[] note = {"note", "--by", "AB", "text=Mr X walks well"};
    assertThat(clinic.record("add", "K7-right", note).err())
        .isEqualTo(
            "note: text: \"Mr X\" looks like a name, which a record must not contain. Leave it out;"
                + " if it says nothing about who the wearer is, add --sure.\n");
    assertThat(
            clinic
                .record("add", "K7-right", "note", "--by", "AB", "text=Mr X walks well", "--sure")
                .code())
        .isZero();
    String[] erase = {"--by", "CD", "--because", "Mrs Y, born 1961, asked for it"};
    assertThat(clinic.record("erase", "K7-right", erase).err())
        .startsWith("erasure: why: \"Mrs Y\" looks like a name");
    assertThat(clinic.record("show", "K7-right").out()).startsWith("Record K7-right: 2 entries.");
  }

  @Test
  void initialsOfWhoErasesAreAskedForInPlainWords() {
    assertThat(clinic.record("erase", "K7-right", "--by", "C D", "--because", "x").err())
        .startsWith("erasure: expected the initials");
  }

  @Test
  void choicesThatAreMissingAreNamedAndAWindowsDeviceIsNoCode() {
    assertThat(clinic.record("start", "K8", "--by", "AB", "wearer=K8", "side=left").err())
        .isEqualTo(
            "command line: level is missing. Add it: one of partial foot, ankle disarticulation,"
                + " transtibial, knee disarticulation, transfemoral, hip disarticulation,"
                + " rotationplasty.\n");
    assertThat(clinic.record("start", "CON", "--by", "AB", "wearer=K8").err())
        .isEqualTo(
            "CON: is a name that Windows reserves for devices, so a folder cannot have it there."
                + " Choose a code such as K7-right.\n");
  }
}
