package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import io.ocfl.api.exception.OcflFileAlreadyExistsException;
import io.ocfl.api.exception.OcflIOException;
import io.ocfl.core.storage.filesystem.FileSystemStorage;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The library's storage in a folder, made to survive a kill and a power cut: the library's own
 * copies an inventory over the old one piece by piece and leaves it to the system when anything
 * reaches the disk; this one replaces a file in one step and waits for the disk each time.
 */
final class DurableStorage extends FileSystemStorage {
  private final Path root;
  private final Path replacing;

  /**
   * @param root the storage root
   * @param replacing a folder on the same file system for files in the making
   */
  DurableStorage(Path root, Path replacing) {
    super(root);
    this.root = root;
    this.replacing = replacing;
  }

  private interface Step {
    void run() throws IOException;
  }

  @Override
  public void write(String file, byte[] content, String mediaType) {
    Path path = root.resolve(file);
    step(
        () -> {
          DurableFiles.create(path, content);
          DurableFiles.syncFolder(path.getParent());
        });
  }

  @Override
  public void createDirectories(String folder) {
    Path path = root.resolve(folder);
    step(
        () -> {
          FilePermissions.createStoreFolder(path);
          if (Files.exists(path.getParent())) {
            DurableFiles.syncFolder(path.getParent());
          }
        });
  }

  @Override
  public void copyFileInto(Path from, String to, String mediaType) {
    step(() -> DurableFiles.replace(root.resolve(to), Files.readAllBytes(from), replacing));
  }

  @Override
  public void copyFileInternal(String from, String to) {
    copyFileInto(root.resolve(from), to, "");
  }

  @Override
  public void moveDirectoryInto(Path from, String to) {
    Path target = root.resolve(to);
    step(
        () -> {
          if (Files.exists(target)) {
            throw new FileAlreadyExistsException(to);
          }
          DurableFiles.moveFolder(from, target);
        });
  }

  @Override
  public void moveDirectoryInternal(String from, String to) {
    moveDirectoryInto(root.resolve(from), to);
  }

  private static void step(Step step) {
    try {
      step.run();
    } catch (FileAlreadyExistsException e) {
      throw new OcflFileAlreadyExistsException(e);
    } catch (IOException e) {
      throw OcflIOException.from(e);
    }
  }
}
