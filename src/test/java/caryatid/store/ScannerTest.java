package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.disk.DurableFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be moved for a moment, as on Windows while a scanner reads them. */
class ScannerTest {
  private final Faults faults = new Faults();

  @TempDir private Path folder;
  private Path part;
  private Path file;

  @BeforeEach
  void twoFiles() throws IOException {
    Path faulty = FaultyFiles.of(folder, faults);
    part = faulty.resolve("part");
    file = faulty.resolve("file");
    Files.write(folder.resolve("part"), "new".getBytes(StandardCharsets.UTF_8));
    Files.write(folder.resolve("file"), "old".getBytes(StandardCharsets.UTF_8));
  }

  private void move() throws IOException {
    DurableFiles.move(
        part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Test
  void aMoveThatIsRefusedForAMomentIsTriedAgain() throws IOException {
    faults.refuseMoves(3);
    move();
    assertThat(folder.resolve("file")).hasContent("new");
    assertThat(folder.resolve("part")).doesNotExist();
  }

  @Test
  void oneThatIsRefusedForLongLeavesBothAsTheyWere() {
    faults.refuseMoves(Integer.MAX_VALUE);
    assertThatThrownBy(this::move).isInstanceOf(AccessDeniedException.class);
    assertThat(folder.resolve("file")).hasContent("old");
    assertThat(folder.resolve("part")).hasContent("new");
  }
}
