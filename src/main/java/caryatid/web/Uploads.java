package caryatid.web;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.web.page.Request;
import caryatid.web.page.UploadMarkup;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Files that a page sent, in a folder that only its owner can read. Their names on the disk are the
 * window's; the names that the page gave them are only shown. The oldest goes when there are too
 * many, and all when the window ends; what a killed window left goes when the next one starts.
 */
final class Uploads implements AutoCloseable {
  private static final int MOST = 4;
  private static final int HANDLE_BYTES = 8;
  private static final int LONGEST_NAME = 120;
  private static final String FOLDER = "files-";
  private static final Pattern OWNED = Pattern.compile(FOLDER + "(\\d{1,18})-\\d+");
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
  record Upload(String handle, String name, Path path) {

    /** Its bytes, under the name that its owner knows. */
    NamedBytes bytes() {
      return new NamedBytes() {
        @Override
        public String name() {
          return name;
        }

        @Override
        public InputStream open() throws IOException {
          return Files.newInputStream(path);
        }
      };
    }
  }

  /**
   * @param home the folder of windows
   */
  Uploads(Path home) {
    this.home = home;
  }

  /** Removes the files of windows whose programs are gone. */
  static void removeLeft(Path home) throws IOException {
    for (Path folder : children(home)) {
      if (isLeft(folder)) {
        for (Path file : children(folder)) {
          Files.deleteIfExists(file);
        }
        Files.deleteIfExists(folder);
      }
    }
  }

  private static List<Path> children(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> found = Files.list(folder)) {
      return found.toList();
    }
  }

  private static boolean isLeft(Path folder) {
    Matcher name = OWNED.matcher(folder.getFileName().toString());
    return name.matches() && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
  }

  /** A path that nothing has yet, for what is made to be sent. */
  synchronized Path free() throws IOException {
    if (folder.isEmpty()) {
      String owner = FOLDER + ProcessHandle.current().pid() + "-";
      folder = Optional.of(Files.createTempDirectory(home, owner));
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

  /**
   * Takes the file that a request brings, or, where the script that sends it does not run, the one
   * on this computer whose path was typed.
   *
   * @throws BadInput if there is no file of that path
   */
  Upload take(Request request, String unnamed) throws IOException, BadInput {
    Optional<String> path = request.field(UploadMarkup.PATH);
    if (path.isEmpty()) {
      return take(request.body(), request.field("name").orElse(unnamed));
    }
    NamedBytes file = PathField.read(path.get());
    try (InputStream bytes = file.open()) {
      return take(bytes, file.name());
    }
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
