package caryatid.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Files that a page sent, in a folder that only its owner can read. Their names on the disk are the
 * window's; the names that the page gave them are only shown. The oldest goes when there are too
 * many, and all when the window ends.
 */
final class Uploads implements AutoCloseable {
  private static final int MOST = 4;
  private static final int HANDLE_BYTES = 8;
  private static final int LONGEST_NAME = 120;
  private static final Pattern FOLDERS = Pattern.compile(".*[/\\\\]");

  private final Path home;
  private final SecureRandom random = new SecureRandom();
  private final Deque<Upload> kept = new ArrayDeque<>();
  private Optional<Path> folder = Optional.empty();

  /**
   * A file.
   *
   * @param handle what addresses name it by
   * @param name what its owner calls it
   * @param path where it lies
   */
  record Upload(String handle, String name, Path path) {}

  /**
   * @param home the folder of windows
   */
  Uploads(Path home) {
    this.home = home;
  }

  /** A path that nothing has yet, for what is made to be sent. */
  synchronized Path free() throws IOException {
    if (folder.isEmpty()) {
      folder = Optional.of(Files.createTempDirectory(home, "files-"));
    }
    return folder.get().resolve(handle());
  }

  private String handle() {
    byte[] bytes = new byte[HANDLE_BYTES];
    random.nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  /** Takes a file. */
  Upload take(InputStream body, String name) throws IOException {
    Path path = free();
    try {
      Files.copy(body, path);
    } catch (IOException e) {
      Files.deleteIfExists(path);
      throw e;
    }
    String shown = FOLDERS.matcher(name).replaceFirst("");
    String cut = shown.substring(0, Math.min(LONGEST_NAME, shown.length()));
    return keep(new Upload(path.getFileName().toString(), cut, path));
  }

  private synchronized Upload keep(Upload upload) throws IOException {
    kept.addLast(upload);
    if (kept.size() > MOST) {
      Files.deleteIfExists(kept.removeFirst().path());
    }
    return upload;
  }

  synchronized Optional<Upload> find(String handle) {
    return kept.stream().filter(upload -> upload.handle().equals(handle)).findFirst();
  }

  /** Removes a file that is not needed any more. */
  synchronized void remove(Upload upload) throws IOException {
    kept.remove(upload);
    Files.deleteIfExists(upload.path());
  }

  @Override
  public synchronized void close() throws IOException {
    for (Upload upload : kept) {
      Files.deleteIfExists(upload.path());
    }
    kept.clear();
    if (folder.isPresent()) {
      Files.deleteIfExists(folder.get());
    }
  }
}
