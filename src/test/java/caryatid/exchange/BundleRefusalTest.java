package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No bundle is written where it would be wrong, and none over another file. */
class BundleRefusalTest {
  @TempDir private Path folder;

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    ToldFitting fitting = ToldFitting.in(folder);
    Files.writeString(folder.resolve("bundle.json"), "mine");
    Run run = fitting.bundle("bundle.json");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("bundle.json").contains("already exists");
    assertThat(Files.readString(folder.resolve("bundle.json"))).isEqualTo("mine");
  }

  @Test
  void aDamagedRecordIsNotTold() throws IOException {
    ToldFitting fitting = ToldFitting.in(folder);
    Path result = fitting.kept("result.json").get(0);
    Files.writeString(
        result, Files.readString(result).replaceFirst("\"value\" : ", "\"value\" : 1"));
    Run run = fitting.bundle("bundle.json");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("result.json: is not what was added: its bytes have changed.");
    assertThat(folder.resolve("bundle.json")).doesNotExist();
  }

  @Test
  void anErasedRecordIsNotTold() {
    ToldFitting fitting = ToldFitting.in(folder);
    Run.caryatid(
        "record",
        "erase",
        ToldFitting.CODE,
        "--records",
        fitting.records(),
        "--by",
        "AB",
        "--because",
        "requested");
    Run run = fitting.bundle("bundle.json");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo("K7-right: this record was erased; there is nothing to send.\n");
  }

  /** What was typed may be a patient's number: it is not repeated. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "12345",
        "|12345",
        "clinic|12345",
        "urn:oid:1.2|",
        "urn:oid:1.2|12345 ",
        "urn:oid:1.2|123|45",
        "urn: oid|12345"
      })
  void anIdentifierIsTypedWithItsSystem(String typed) {
    Run run =
        Run.caryatid(
            "record",
            "bundle",
            "K7-right",
            folder.resolve("b.json").toString(),
            "--records",
            folder.resolve("records").toString(),
            "--patient-identifier",
            typed);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo(
            "--patient-identifier: expected the system's URI, a bar and the clinic's number, such"
                + " as \"urn:oid:1.2.3.4|12345\". Write it like that.\n");
  }
}
