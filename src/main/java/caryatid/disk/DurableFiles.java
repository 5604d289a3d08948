package caryatid.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;

/** Atomic writes that have reached the disk when they return. */
public final class DurableFiles {
  private static final long FIRST_PAUSE_MS = 10;
  private static final long LAST_PAUSE_MS = 640;

  private DurableFiles() {}

  /** Something that is done to a file or folder. */
  interface FileStep {
    void on(Path found) throws IOException;
  }

  /** What goes into a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes all of it, and leaves the stream open. */
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes a file that a user names, by way of another one in its folder.
   *
   * @param replace whether it may take the place of one that is there
   * @throws FileAlreadyExistsException if it may not and there is one
   */
  public static void write(Path file, Content content, boolean replace) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    String name = "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part";
    Path part = folder.resolve(name);
    Files.deleteIfExists(part);
    CopyOption[] how =
        replace
            ? new CopyOption[] {StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING}
            : new CopyOption[0];
    place(part, file, content, made -> FilePermissions.copyGroupRightsOfFormer(made, file), how);
    syncUsersFolder(folder);
  }

  /** Moves a folder of files that were written here to the name by which a user knows it. */
  public static void rename(Path from, Path to) throws IOException {
    syncFolder(from);
    move(from, to);
    syncUsersFolder(to.toAbsolutePath().getParent());
  }

  /** A user may write into folders that cannot be opened for this. */
  private static void syncUsersFolder(Path folder) throws IOException {
    if (Files.isReadable(folder)) {
      syncFolder(folder);
    }
  }

  /** Puts bytes in a file's place by way of another one in the folder {@code replacing}. */
  public static void replace(Path file, byte[] bytes, Path replacing) throws IOException {
    FilePermissions.createStoreFolder(replacing);
    place(
        replacing.resolve(mark(file.getParent()) + UUID.randomUUID()),
        file,
        out -> out.write(bytes),
        made -> {
          FilePermissions.copyGroupRightsOfFolder(made, replacing);
          FilePermissions.copyGroupRightsOfFolder(made, file.getParent());
        },
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
    syncFolder(file.getParent());
  }

  /** How the names of files in the making begin that are to lie in a folder. */
  public static String mark(Path folder) {
    return folder.getFileName() + "~";
  }

  /** Writes a file that is not there yet. */
  public static void create(Path file, byte[] bytes) throws IOException {
    create(
        file,
        out -> out.write(bytes),
        made -> FilePermissions.copyGroupRightsOfFolder(made, file.getParent()));
  }

  private static void create(Path file, Content content, FileStep rights) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW),
            FilePermissions.file(file))) {
      rights.on(file);
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
      content.to(out);
      out.flush();
      channel.force(true);
    }
  }

  private static void place(
      Path part, Path file, Content content, FileStep rights, CopyOption... how)
      throws IOException {
    try {
      create(part, content, rights);
      move(part, file, how);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Moves a folder, with all that is in it on the disk before it appears in its new place. */
  public static void moveFolder(Path from, Path to) throws IOException {
    FilePermissions.copyGroupRightsToTree(from, to.getParent());
    syncTree(from);
    move(from, to, StandardCopyOption.ATOMIC_MOVE);
    syncFolder(to.getParent());
    syncFolder(from.getParent());
  }

  /**
   * Moves a file or folder, trying again for a second: on Windows a scanner that reads it keeps it
   * from being moved for a moment.
   */
  public static void move(Path from, Path to, CopyOption... how) throws IOException {
    for (long pauseMs = FIRST_PAUSE_MS; ; pauseMs *= 2) {
      try {
        Files.move(from, to, how);
        return;
      } catch (AccessDeniedException e) {
        if (pauseMs > LAST_PAUSE_MS) {
          throw e;
        }
        LockSupport.parkNanos(pauseMs * 1_000_000);
      }
    }
  }

  public static void syncTree(Path folder) throws IOException {
    walk(folder, DurableFiles::syncFile, DurableFiles::syncFolder);
  }

  private static void syncFile(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Does something to each file of a folder, and something to each folder after its files. */
  static void walk(Path folder, FileStep file, FileStep after) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path found, BasicFileAttributes attributes)
              throws IOException {
            file.on(found);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path found, IOException failure)
              throws IOException {
            after.on(found);
            return super.postVisitDirectory(found, failure);
          }
        });
  }

  /**
   * Puts a folder's names on the disk. On Windows a folder cannot be opened for that; it keeps a
   * journal of names itself, and this does nothing.
   */
  public static void syncFolder(Path folder) throws IOException {
    if (!folder.getFileSystem().getSeparator().equals("\\")) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }

  /** Deletes a folder and all that is in it; links are deleted, not followed. */
  public static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      walk(folder, Files::delete, Files::delete);
    }
  }
}
