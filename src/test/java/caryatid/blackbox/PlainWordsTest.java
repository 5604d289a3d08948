package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.format.ResultJson;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong is called by its name. */
class PlainWordsTest {
  @TempDir private Path folder;

  @Test
  void theCodeOfAnErasedRecordStaysTaken() {
    Clinic clinic = new Clinic(folder);
    clinic.start();
    assertThat(clinic.record("erase", "K7-right", "--by", "AB", "--because", "requested").err())
        .isEmpty();
    assertThat(
            clinic
                .record(
                    "start",
                    "K7-right",
                    "--by",
                    "AB",
                    "wearer=K7",
                    "side=right",
                    "level=transtibial")
                .err())
        .isEqualTo(
            "K7-right: a record with this code was erased, so the code cannot be used again. Choose"
                + " another code.\n");
  }

  @Test
  void aKeyThatStandsTwice() {
    BadInput refused =
        Assertions.catchThrowableOfType(
            BadInput.class,
            () ->
                ResultJson.read(
                    "{\"version\": 2, \"version\": 2}".getBytes(StandardCharsets.UTF_8)));
    assertThat(Wording.in(Locale.ENGLISH).say(refused.problems().get(0)))
        .endsWith(
            "expected each key once, found 'version' twice in one group. Use the file as the"
                + " program wrote it.");
  }

  @Test
  void aFileThatCannotBeReachedIsNotCalledMissing() throws IOException {
    Path loop = folder.resolve("loop.csv");
    Files.createSymbolicLink(loop, loop);
    Run run = Run.caryatid("inspect", loop.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .contains("expected a file that can be read, found one without permission");
  }

  @Test
  void aNumberOutOfAFormsRange() {
    Clinic clinic = new Clinic(folder);
    clinic.start();
    assertThat(clinic.record("add", "K7-right", "walking", "--by", "AB", "comfort=40").err())
        .contains("expected a number from 0 to 10, found 40. Give a number in that range.");
  }
}
