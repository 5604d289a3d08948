package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips that a record must not take in silence. */
class RecordRefusalTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void anErasedRecordIsNotErasedAgainSoThatTheFirstReasonStays() {
    clinic.record("erase", "K7-right", "--by", "CD", "--because", "the wearer asked for it");
    assertThat(clinic.record("erase", "K7-right", "--by", "EF", "--because", "again"))
        .isEqualTo(
            new Run(1, "", "K7-right: this record was erased. Start one under another code.\n"));
    assertThat(clinic.record("list").out()).contains("by CD: the wearer asked for it");
  }

  @Test
  void aKeyThatIsGivenTwiceIsRefusedBecauseOneOfTheTwoWouldBeLost() {
    assertThat(clinic.record("add", "K7-right", "note", "--by", "AB", "text=a", "text=b"))
        .isEqualTo(
            new Run(1, "", "command line: text is given twice. Leave one of the two out.\n"));
    assertThat(
            clinic.record(
                "add",
                "K7-right",
                "walking",
                "--by",
                "AB",
                "observations[1].deviation=drop-off",
                "observations[1].deviation=vaulting"))
        .isEqualTo(
            new Run(
                1,
                "",
                "command line: observations[1].deviation is given twice. Leave one of the two"
                    + " out.\n"));
    assertThat(clinic.record("show", "K7-right").out()).startsWith("Record K7-right: 1 entry.");
  }

  @Test
  void rowsInAFileAreNotReplacedByRowsGivenAsArguments() throws IOException {
    Path file = folder.resolve("walking.yaml");
    Files.writeString(file, "observations:\n  - deviation: vaulting\n  - deviation: foot slap\n");
    String[] rest = {"walking", "--by", "AB", "--from", file.toString(), "comfort=7"};
    String[] row = Arrays.copyOf(rest, rest.length + 1);
    row[rest.length] = "observations[1].deviation=drop-off";
    assertThat(clinic.record("add", "K7-right", row).err())
        .isEqualTo("command line: observations is given twice. Leave one of the two out.\n");
    assertThat(clinic.record("add", "K7-right", rest).code()).isZero();
  }

  @Test
  void onlyAStandOfTheRecordIsAcceptedOrSaidToBeStoodInAShoe() {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=x");
    String[] accepted = {"accepted", "--by", "AB", "what=x", "why=y", "stand=2"};
    assertThat(clinic.record("add", "K7-right", accepted))
        .isEqualTo(
            new Run(
                1,
                "",
                "K7-right: entry 2 is not a stand of this record. Show the record to see its"
                    + " stands.\n"));
    String[] footwear = {
      "footwear",
      "--by",
      "AB",
      "shoes[1].shoe=sandal",
      "shoes[1].heel-height-mm=5",
      "shoes[1].stand=9"
    };
    assertThat(clinic.record("add", "K7-right", footwear).err())
        .isEqualTo(
            "K7-right: entry 9 is not a stand of this record. Show the record to see its"
                + " stands.\n");
    clinic.record("add", "K7-right", "stand", "--by", "AB", "footwear=barefoot");
    accepted[5] = "stand=3";
    assertThat(clinic.record("add", "K7-right", accepted).code()).isZero();
  }

  @Test
  void verifyingWhereThereAreNoRecordsIsNoGoodOrder() {
    Path nowhere = folder.resolve("recrods");
    assertThat(Run.caryatid("record", "verify", "--records", nowhere.toString()))
        .isEqualTo(new Run(1, "There are no records in " + nowhere + " yet.\n", ""));
  }

  @Test
  void whatIsShownIsKeptFromActingOnTheTerminalAndFromLookingLikeAnotherEntry() {
    String text = "red \u001b[31m\n   9  2026-03-04 10:00 +01:00  CD  stand";
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=" + text);
    assertThat(clinic.record("show", "K7-right").out())
        .contains("      text: red \ufffd[31m\n         9  2026-03-04 10:00 +01:00  CD  stand\n");
  }

  @Test
  void aReasonOfBlanksErasesNothingAndLeavesTheRecordUsable() {
    assertThat(clinic.record("erase", "K7-right", "--by", "CD", "--because", " ").err())
        .isEqualTo("erasure: why: expected words. Write some, or leave the key out.\n");
    assertThat(clinic.record("add", "K7-right", "note", "--by", "AB", "text=x").code()).isZero();
    assertThat(clinic.record("verify").out())
        .startsWith("K7-right: in good order, 2 entries. Head digest ");
  }

  @Test
  void theStorageRootItselfIsNotTakenForTheFolderThatItLiesIn() {
    Path root = folder.resolve("records");
    assertThat(Run.caryatid("record", "list", "--records", root.toString()))
        .isEqualTo(
            new Run(
                1,
                "",
                root
                    + ": is the folder that holds the records themselves. Give the folder above it;"
                    + " if this one is not called records, rename it first.\n"));
  }

  @Test
  void aFileToKeepWithoutAKnownPurposeIsToldThePurposes() {
    assertThat(
            clinic
                .record("add", "K7-right", "note", "--by", "AB", "text=x", "--keep", "photo=a.jpg")
                .err())
        .startsWith(
            "--keep: expected IS=FILE, where IS is one of recording, description, sheet,"
                + " earlier-sheet, earlier-states, result, report, photograph, other, found"
                + " \"photo=a.jpg\".\n");
  }
}
