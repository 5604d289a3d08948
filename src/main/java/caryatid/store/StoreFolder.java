package caryatid.store;

import caryatid.fitting.RecordCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder of a clinic's records: the OCFL storage root in {@code records}, and next to it the
 * temporary folders, on the same file system so that a rename is enough.
 *
 * @param folder the folder that holds both
 */
record StoreFolder(Path folder) {

  /** The OCFL storage root; the records' folders lie directly in it. */
  Path records() {
    return folder.resolve("records");
  }

  /** A record's folder: an OCFL object. */
  Path record(RecordCode code) {
    return records().resolve(code.text());
  }

  /** What is in the making; can be deleted when no program is running. */
  Path work() {
    return folder.resolve("work");
  }

  /** Versions that are being put together. */
  Path adding() {
    return work().resolve("adding");
  }

  /** Files on their way to replace another. */
  Path replacing() {
    return work().resolve("replacing");
  }

  /** What is left to do for a record that is being erased. */
  Path erasing(RecordCode code) {
    return erasing().resolve(code.text());
  }

  /** Records that are being erased. */
  Path erasing() {
    return work().resolve("erasing");
  }

  /** The names of the folders in a folder; none where there is no such folder. */
  List<String> names(Path parent) throws IOException {
    if (Files.notExists(parent)) {
      return List.of();
    }
    try (Stream<Path> found = Files.list(parent)) {
      return found.filter(Files::isDirectory).map(f -> f.getFileName().toString()).toList();
    }
  }

  /** A record that is being taken in. */
  Path importing() {
    return work().resolve("importing");
  }

  /** The lock of a record. */
  Path lock(RecordCode code) {
    return work()
        .resolve("locks")
        .resolve(code.text().toLowerCase(java.util.Locale.ROOT) + ".lock");
  }

  /** The lock of the store, held while it is made and while a code is taken. */
  Path lock() {
    return work().resolve("store.lock");
  }
}
