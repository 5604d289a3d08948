package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Parts of a record that may lie outside its folder when it is erased: behind links, and among the
 * temporary files of a killed program. The locks of the store and of the record must be held.
 */
final class Leftovers {
  /** How the names of folders in which a packed record is tried out begin; the process follows. */
  static final String TRIED_OUT = "caryatid-";

  private final StoreFolder store;
  private final RecordCode code;

  Leftovers(StoreFolder store, RecordCode code) {
    this.store = store;
    this.code = code;
  }

  /**
   * Requires that no file or folder of the record is a link.
   *
   * @throws BadInput if one is; what it leads to would stay
   */
  void requireNoLink() throws BadInput, IOException {
    Optional<Path> link = firstLink(store.record(code));
    if (link.isPresent()) {
      Argument named = Argument.text(store.records().relativize(link.get()).toString());
      throw new BadInput(Problem.at(Place.of(code.text()), StoreProblem.LINKED, named));
    }
  }

  /**
   * Deletes what a killed program left behind: files of this record, and files that belong to no
   * known record.
   */
  void sweep() throws IOException {
    DurableFiles.delete(store.importing());
    DurableFiles.delete(store.adding().resolve(code.text()));
    // Names of one word are those of version 0.1.0; whoever wrote them is long done.
    String mark = DurableFiles.mark(store.record(code));
    sweep(store.replacing(), name -> name.startsWith(mark) || !name.contains("~"));
    sweep(Path.of(System.getProperty("java.io.tmpdir")), Leftovers::isTriedOutAndLeft);
  }

  private static void sweep(Path folder, Predicate<String> left) throws IOException {
    for (Path found : children(folder)) {
      if (left.test(found.getFileName().toString())) {
        deleteIfOurs(found);
      }
    }
  }

  private static void deleteIfOurs(Path found) throws IOException {
    if (Files.isSymbolicLink(found) || !Files.isWritable(found)) {
      return;
    }
    DurableFiles.delete(found);
  }

  private static List<Path> children(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> found = Files.list(folder)) {
      return found.toList();
    }
  }

  /** Whether a name is that of a trial whose program has ended. */
  static boolean isTriedOutAndLeft(String name) {
    if (!name.matches(TRIED_OUT + "\\d{1,10}-\\d+")) {
      return false;
    }
    long process = Long.parseLong(name.substring(TRIED_OUT.length(), name.lastIndexOf('-')));
    return ProcessHandle.of(process).isEmpty();
  }

  /** The first link among a folder and all that is in it; links are not followed. */
  static Optional<Path> firstLink(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isSymbolicLink).findFirst();
    }
  }
}
