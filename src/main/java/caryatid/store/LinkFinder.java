package caryatid.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds links where there should be files and folders alone. */
final class LinkFinder {
  private LinkFinder() {}

  /** The first link among a folder and all that is in it; links are not followed. */
  static Optional<Path> first(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isSymbolicLink).findFirst();
    }
  }
}
