package caryatid.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.CopyOption;
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
final class DurableFiles {
  private static final long FIRST_PAUSE_MS = 10;
  private static final long LAST_PAUSE_MS = 640;

  private DurableFiles() {}

  /** Puts bytes in a file's place by way of another one in the folder {@code replacing}. */
  static void replace(Path file, byte[] bytes, Path replacing) throws IOException {
    FilePermissions.makeLike(replacing);
    Path part = replacing.resolve(mark(file.getParent()) + UUID.randomUUID());
    try {
      create(part, bytes);
      FilePermissions.likeFolder(part, file.getParent());
      move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
    syncFolder(file.getParent());
  }

  /** How the names of files in the making begin that are to lie in a folder. */
  static String mark(Path folder) {
    return folder.getFileName() + "~";
  }

  /** Writes a file that is not there yet. */
  static void create(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW),
            FilePermissions.file(file))) {
      FilePermissions.likeFolder(file, file.getParent());
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  /** Moves a folder, with all that is in it on the disk before it appears in its new place. */
  static void moveFolder(Path from, Path to) throws IOException {
    FilePermissions.treeLike(from, to.getParent());
    syncTree(from);
    move(from, to, StandardCopyOption.ATOMIC_MOVE);
    syncFolder(to.getParent());
    syncFolder(from.getParent());
  }

  /**
   * Moves a file or folder, trying again for a second: on Windows a scanner that reads it keeps it
   * from being moved for a moment.
   */
  static void move(Path from, Path to, CopyOption... how) throws IOException {
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

  static void syncTree(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
              channel.force(true);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path done, IOException failure)
              throws IOException {
            syncFolder(done);
            return super.postVisitDirectory(done, failure);
          }
        });
  }

  /** Puts a folder's names on the disk, on systems where a folder can be opened for that. */
  static void syncFolder(Path folder) throws IOException {
    if (!System.getProperty("os.name").startsWith("Windows")) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }

  /** Deletes a folder and all that is in it; links are deleted, not followed. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path done, IOException failure)
              throws IOException {
            Files.delete(done);
            return super.postVisitDirectory(done, failure);
          }
        });
  }
}
