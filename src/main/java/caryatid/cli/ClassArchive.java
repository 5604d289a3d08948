package caryatid.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The archive of classes with which the launcher starts Java. */
final class ClassArchive {
  private ClassArchive() {}

  /**
   * Leaves a mark for the launcher when Java refused the archive, which it does without a word: the
   * next start makes it again. The launcher names the mark; started otherwise, there is none.
   */
  static void reportRefused() {
    Optional.ofNullable(System.getProperty("caryatid.refused"))
        .filter(mark -> !System.getProperty("java.vm.info", "").contains("sharing"))
        .ifPresent(mark -> leave(Path.of(mark)));
  }

  private static void leave(Path mark) {
    try {
      Files.createFile(mark);
    } catch (FileAlreadyExistsException left) {
      // By another start.
    } catch (IOException notOurs) {
      // A folder that we may not write to: all works without the archive, only more slowly.
    }
  }
}
