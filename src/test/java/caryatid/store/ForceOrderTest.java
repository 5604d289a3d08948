package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.fitting.RecordCode;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bytes are forced to the disk before their file is moved to its place, and the folder after that,
 * before anybody is told that an entry was added.
 */
class ForceOrderTest {
  private static final BesideRecord BESIDE = new BesideRecord(List.of("read me"), Optional.empty());

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

  private void assertForcedIn(Path place) {
    assertThat(faults.unforced().early()).isEmpty();
    assertThat(faults.unforced().in(place)).isEmpty();
  }

  private Path out() throws IOException {
    return FaultyFiles.of(Files.createDirectories(folder.resolve("out")), faults);
  }

  @Test
  void aPackedRecord() throws Exception {
    store.pack(code, out().resolve("packed.zip"), BESIDE);
    assertForcedIn(folder.resolve("out"));
    assertThat(folder.resolve("out/packed.zip")).isNotEmptyFile();
  }

  @Test
  void aBackup() throws Exception {
    new Backup(store, out().resolve("backup")).make(List.of("read me"));
    assertForcedIn(folder.resolve("out"));
    assertThat(folder.resolve("out/backup").resolve(Backup.LIST)).isNotEmptyFile();
  }

  /** The last step forces the folder, when the file is in its place. */
  @Test
  void aFailureAtAnyStepLeavesAllOfAPackedRecordOrNothing() throws Exception {
    Path zip = folder.resolve("out/packed.zip");
    store.pack(code, out().resolve("packed.zip"), BESIDE);
    byte[] whole = Files.readAllBytes(zip);
    int failures = 0;
    boolean struck = true;
    for (int step = 1; struck; step++) {
      Files.delete(zip);
      faults.arm(step, step);
      try {
        store.pack(code, out().resolve("packed.zip"), BESIDE);
      } catch (StoreFailure e) {
        failures++;
      }
      struck = faults.struck();
      faults.disarm();
      if (Files.exists(zip)) {
        assertThat(zip).hasBinaryContent(whole);
      }
      try (Stream<Path> left = Files.list(folder.resolve("out"))) {
        assertThat(left).allMatch(zip::equals);
      }
      Files.write(zip, whole);
    }
    assertThat(failures).isGreaterThanOrEqualTo(4);
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
