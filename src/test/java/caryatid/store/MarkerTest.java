package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the proofs with kills seek is found where it is. */
@DisabledOnOs(OS.WINDOWS)
class MarkerTest {
  @TempDir private Path folder;

  @Test
  void aMarkerIsFoundInAnyFile() throws IOException {
    Path file = Files.createDirectories(folder.resolve("a/b")).resolve("c.json");
    Files.writeString(file, "{\"text\": \"" + Marker.of(Invented.CODE) + "\"}");
    assertThat(Marker.in(folder, Invented.CODE)).containsExactly(file);
    Files.writeString(file, "{}");
    assertThat(Marker.in(folder, Invented.CODE)).isEmpty();
  }

  @Test
  void aFileIsOpenToOthersWhereTheyCanReachIt() throws IOException {
    Path top = Files.createDirectory(folder.resolve("top"));
    Path file = Files.writeString(top.resolve("c.json"), "{}");
    rights(file, "rw-r--r--");
    rights(top, "rwxr-xr-x");
    assertThat(Marker.openToOthers(top)).containsExactly(file);
    rights(top, "rwxr-x---");
    assertThat(Marker.openToOthers(top)).isEmpty();
    rights(top, "rwxr-xr-x");
    rights(file, "rw-r-----");
    assertThat(Marker.openToOthers(top)).isEmpty();
  }

  private static void rights(Path path, String rights) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
  }
}
