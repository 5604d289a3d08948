package caryatid.store;

import caryatid.disk.FilePermissions;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Set;

/**
 * The right to write, held by one at a time across processes. The system gives it back when the
 * holder ends, however it ends; the file stays and says who held it last and since when.
 */
final class RecordLock {
  // A byte far behind the text, so that the text can be read while the lock is held, on Windows
  // too.
  private static final long LOCKED_BYTE = 1L << 40;
  private static final long PAUSE_MS = 20;

  private final FileChannel channel;

  private RecordLock(FileChannel channel) {
    this.channel = channel;
  }

  /** What is done while the lock is held. */
  interface Work<T> {
    T run() throws IOException, BadInput, StoreFailure;
  }

  /**
   * Does something while holding the lock; waits if another program holds it.
   *
   * @param file the lock's file; made where there is none
   * @param who who takes it, for others to see
   * @param patience how long to wait
   * @throws BadInput if the work refuses
   * @throws StoreFailure if another program still holds it then; says which and since when
   * @throws IOException if the file cannot be written, or the work fails
   */
  static <T> T holding(Path file, String who, Duration patience, Work<T> work)
      throws BadInput, StoreFailure, IOException {
    RecordLock lock = take(file, who, patience);
    try {
      return work.run();
    } finally {
      lock.channel.close();
    }
  }

  private static RecordLock take(Path file, String who, Duration patience)
      throws StoreFailure, IOException {
    FilePermissions.createStoreFolder(file.getParent());
    long end = System.nanoTime() + patience.toNanos();
    while (true) {
      FileChannel channel =
          FileChannel.open(
              file,
              Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE),
              FilePermissions.file(file));
      if (tryLock(channel)) {
        return new RecordLock(channel).signed(file, who);
      }
      channel.close();
      if (System.nanoTime() > end) {
        throw new StoreFailure(
            Problem.at(
                Place.of(file.toString()),
                StoreProblem.IN_USE,
                Argument.text(Files.readString(file).strip())));
      }
      pause();
    }
  }

  private static boolean tryLock(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException heldInThisProcess) {
      return false;
    }
  }

  private RecordLock signed(Path file, String who) throws IOException {
    String text =
        who
            + ", "
            + OffsetDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS)
            + ", PID "
            + ProcessHandle.current().pid()
            + "\n";
    try {
      channel.truncate(0);
      letGroup(file);
      channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
    } catch (IOException e) {
      channel.close();
      throw e;
    }
    return this;
  }

  /** For a group that may write to the store; only its owner can see to it. */
  private static void letGroup(Path file) throws IOException {
    try {
      FilePermissions.copyGroupRightsOfFolder(file, file.getParent());
    } catch (FileSystemException anothers) {
      // It was made by another of the group, who saw to it.
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while waiting", e);
    }
  }
}
