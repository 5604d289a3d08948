package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
}
