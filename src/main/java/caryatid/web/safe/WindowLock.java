package caryatid.web.safe;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps a folder of records to one window. The lock ends with its program, however that ends; so a
 * start file that a killed program left behind is met and replaced. The start file takes its
 * owner's browser to the window; nobody else can read it.
 */
public final class WindowLock implements AutoCloseable {
  private static final int NAME_DIGITS = 16;
  private static final boolean POSIX =
      Path.of("").getFileSystem().supportedFileAttributeViews().contains("posix");

  private final FileChannel channel;
  private final Path startFile;

  private WindowLock(FileChannel channel, Path startFile) {
    this.channel = channel;
    this.startFile = startFile;
  }

  /**
   * Locks a folder of records.
   *
   * @param home where locks lie
   * @param records the folder
   * @return empty where another window has it
   * @throws IOException if the lock cannot be made
   */
  public static Optional<WindowLock> of(Path home, Path records) throws IOException {
    Files.createDirectories(home, forOwner("rwx------"));
    Path lock = home.resolve(name(records) + ".lock");
    FileChannel channel =
        FileChannel.open(
            lock,
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE),
            forOwner("rw-------"));
    try {
      FileLock held = channel.tryLock();
      if (held != null) {
        return Optional.of(new WindowLock(channel, startFile(home, records)));
      }
    } catch (OverlappingFileLockException byThisProgram) {
      // Another window of this very program has it.
    }
    channel.close();
    return Optional.empty();
  }

  /** Where the start file of a folder's window lies. */
  public static Path startFile(Path home, Path records) {
    return home.resolve(name(records) + ".html");
  }

  private static String name(Path records) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(records.toAbsolutePath().normalize().toString().getBytes(UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, NAME_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static FileAttribute<?>[] forOwner(String permissions) {
    return POSIX
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }

  /**
   * Writes the start file: a page that takes the browser to the window, with the key that no
   * command line shows.
   *
   * @param guard the window's
   * @throws IOException if it cannot be written
   */
  public Path writeStartFile(Guard guard) throws IOException {
    String address = guard.origin() + "/open?key=" + guard.key().reveal();
    String page =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<meta charset=\"utf-8\">\n"
            + "<meta name=\"referrer\" content=\"no-referrer\">\n"
            + "<meta http-equiv=\"refresh\" content=\"0; url=%s\">\n".formatted(address)
            + "<title>Caryatid</title>\n<p><a href=\"%s\">Caryatid</a></p>\n".formatted(address);
    Path part = startFile.resolveSibling(startFile.getFileName() + ".part");
    Files.deleteIfExists(part);
    try (FileChannel file =
        FileChannel.open(
            part,
            Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
            forOwner("rw-------"))) {
      ByteBuffer bytes = ByteBuffer.wrap(page.getBytes(UTF_8));
      while (bytes.hasRemaining()) {
        file.write(bytes);
      }
    }
    Files.move(part, startFile, StandardCopyOption.REPLACE_EXISTING);
    return startFile;
  }

  /** Removes the start file and releases the lock. */
  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(startFile);
    } finally {
      channel.close();
    }
  }
}
