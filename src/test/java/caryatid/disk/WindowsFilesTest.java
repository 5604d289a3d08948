package caryatid.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclFileAttributeView;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Files on a file system in memory that behaves as Windows' does: drives and backslashes, lists of
 * rights, folders that cannot be opened. Nothing was tried on Windows itself.
 */
class WindowsFilesTest {
  private FileSystem system;
  private Path folder;

  @BeforeEach
  void aDrive() throws IOException {
    system =
        Jimfs.newFileSystem(
            Configuration.windows().toBuilder()
                .setAttributeViews("basic", "owner", "dos", "acl", "user")
                .build());
    folder = system.getPath("C:\\Users\\AB\\caryatid-records");
  }

  @AfterEach
  void close() throws IOException {
    system.close();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aFolderCannotBeOpenedAndSynchronizingItDoesNothing() throws IOException {
    FilePermissions.createPrivateFolder(folder);
    assertThatCode(() -> FileChannel.open(folder, StandardOpenOption.READ).close())
        .isInstanceOf(IOException.class);
    DurableFiles.syncFolder(folder);
    DurableFiles.syncTree(folder);
  }

  @Test
  void aFileTakesThePlaceOfAnotherInOneStep() throws IOException {
    FilePermissions.createPrivateFolder(folder);
    Path file = folder.resolve("inventory.json");
    DurableFiles.create(file, bytes("old"));
    DurableFiles.replace(file, bytes("new"), folder.resolve("work").resolve("replacing"));
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes("new"));
    assertThat(names(folder.resolve("work").resolve("replacing"))).isEmpty();
  }

  @Test
  void aFolderIsMovedAndDeleted() throws IOException {
    Path made = folder.resolve("work").resolve("K7");
    FilePermissions.createStoreFolder(made);
    DurableFiles.create(made.resolve("entry.json"), bytes("{}"));
    DurableFiles.moveFolder(made, folder.resolve("K7"));
    assertThat(names(folder)).containsExactlyInAnyOrder("K7", "work");
    DurableFiles.delete(folder.resolve("K7"));
    assertThat(names(folder)).containsExactly("work");
  }

  @Test
  void theListOfRightsNamesTheOwnerAlone() throws IOException {
    FilePermissions.createPrivateFolder(folder);
    AclFileAttributeView view = Files.getFileAttributeView(folder, AclFileAttributeView.class);
    assertThat(view.getAcl()).extracting(AclEntry::principal).containsExactly(view.getOwner());
  }

  private static List<String> names(Path folder) throws IOException {
    try (java.util.stream.Stream<Path> found = Files.list(folder)) {
      return found.map(f -> f.getFileName().toString()).toList();
    }
  }
}
