package caryatid.usecase.stand;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder into which the plate's software writes its exports, looked at from time to time: folders
 * on a network tell nobody of changes. A file is new if it was not there when watching began, and
 * done when its size is the same twice and it can be read.
 */
public final class WatchedFolder {
  /** More than any plate's software leaves in a folder in a day. */
  private static final int MOST_FILES = 20_000;

  private final Path folder;
  private final Set<Path> known;
  private final Map<Path, Long> growing = new HashMap<>();

  private WatchedFolder(Path folder, Set<Path> known) {
    this.folder = folder;
    this.known = known;
  }

  /**
   * Begins to watch.
   *
   * @throws IOException if the folder cannot be read
   */
  public static WatchedFolder of(Path folder) throws IOException {
    return new WatchedFolder(folder, new HashSet<>(files(folder)));
  }

  /** Where it looks. */
  public Path folder() {
    return folder;
  }

  /** The new files that are done since the last look; each is given once. */
  public synchronized List<Path> done() {
    List<Path> done = new ArrayList<>();
    for (Path file : newFiles()) {
      long bytes = sizeOf(file);
      Long before = growing.put(file, bytes);
      if (bytes > 0 && before != null && before == bytes && Files.isReadable(file)) {
        growing.remove(file);
        known.add(file);
        done.add(file);
      }
    }
    return done;
  }

  /** A file that could not be taken, such as one that is still locked, is tried again. */
  public synchronized void again(Path file) {
    known.remove(file);
  }

  private List<Path> newFiles() {
    try {
      return files(folder).stream().filter(file -> !known.contains(file)).toList();
    } catch (IOException awayForTheMoment) {
      return List.of();
    }
  }

  private static long sizeOf(Path file) {
    try {
      return Files.size(file);
    } catch (IOException gone) {
      return 0;
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !file.getFileName().toString().startsWith("."))
          .sorted()
          .limit(MOST_FILES)
          .toList();
    }
  }
}
