package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.fitting.RecordCode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bytes are forced to the disk before their file is moved to its place, and the folder after that,
 * before anybody is told that an entry was added.
 */
class ForceOrderTest {
  @TempDir private Path folder;
  private final Faults faults = new Faults();
  private Path records;
  private Store store;
  private RecordCode code;

  @BeforeEach
  void aStoreThatIsWatched() throws Exception {
    code = Invented.CODE;
    records = folder.resolve("records");
    store = new Store(FaultyFiles.of(folder, faults), Duration.ofSeconds(1));
    store.start(code, Invented.opening());
  }

  private void assertForced() {
    assertThat(faults.unforced().early()).isEmpty();
    assertThat(faults.unforced().in(records)).isEmpty();
  }

  @Test
  void aStart() {
    assertForced();
  }

  @Test
  void anAddition() throws Exception {
    store.add(code, Invented.stand(1, 5));
    assertForced();
  }

  @Test
  void anErasure() throws Exception {
    store.add(code, Invented.stand(1, 5));
    store.erase(code, OffsetDateTime.parse("2026-11-30T08:00Z"), "AB", "requested");
    assertForced();
  }

  /** The watch itself notices. */
  @Test
  void aFileThatIsMovedTooEarlyIsNoticed() {
    Unforced unforced = new Unforced();
    unforced.written(Path.of("work/part"));
    unforced.moved(Path.of("work/part"), Path.of("records/file"));
    assertThat(unforced.early()).isEqualTo(List.of("moved before it was forced: work/part"));
    assertThat(unforced.in(Path.of("records"))).containsExactly(Path.of("records"));
  }
}
