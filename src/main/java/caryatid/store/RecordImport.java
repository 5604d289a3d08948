package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Imports a packed record after checking all of it. The store's lock must be held. */
final class RecordImport {
  private final StoreFolder store;
  private final Path zip;

  RecordImport(StoreFolder store, Path zip) {
    this.store = store;
    this.zip = zip;
  }

  /** What decides whether a code can be taken. */
  interface Free {
    void require(RecordCode code) throws BadInput, IOException;
  }

  /** What makes the store's folder where there is none yet. */
  interface Making {
    void make(StoreFolder store) throws IOException;
  }

  /**
   * Checks a zip away from any store, so that one that is refused leaves no trace of a store that
   * was not there.
   *
   * @throws BadInput if anything about the zip is wrong
   * @throws StoreFailure if it cannot be read
   */
  static void tryOut(Path zip) throws BadInput, StoreFailure {
    try {
      Path folder =
          Files.createTempDirectory(Leftovers.TRIED_OUT + ProcessHandle.current().pid() + "-");
      try {
        new RecordImport(new StoreFolder(folder), zip).unpacked();
      } finally {
        DurableFiles.delete(folder);
      }
    } catch (IOException e) {
      throw FailureReason.failure(zip, StoreProblem.CANNOT_READ, e);
    }
  }

  /**
   * Takes the record in.
   *
   * @throws BadInput if anything about the zip is wrong, or the code is taken; nothing is left then
   */
  RecordCode run(Free free, Making making) throws BadInput, IOException {
    try {
      Path object = unpacked();
      RecordCode code = new RecordCode(object.getFileName().toString());
      free.require(code);
      making.make(store);
      DurableFiles.moveFolder(object, store.record(code));
      return code;
    } finally {
      DurableFiles.delete(store.importing());
    }
  }

  /** The record's folder, unpacked and checked. */
  private Path unpacked() throws BadInput, IOException {
    DurableFiles.delete(store.importing());
    FilePermissions.createStoreFolder(store.importing());
    ZipExtractor.unpack(zip, store.importing());
    Path bag = only(store.importing());
    RecordCode code = new BagItCheck(bag, zip.toString()).check();
    Path object = bag.resolve(BagItPackage.PAYLOAD + code.text());
    requireSound(object, code);
    return object;
  }

  private void requireSound(Path object, RecordCode code) throws BadInput {
    DurableStorage storage = new DurableStorage(object.getParent(), store.replacing());
    List<Problem> found = RecordVerifier.verify(object, new ObjectFiles(storage, code));
    if (!found.isEmpty()) {
      Place first = found.get(0).place();
      throw bad(BagItProblem.NOT_SOUND, Argument.text(first.file()));
    }
  }

  /** The one folder in a folder. */
  private Path only(Path folder) throws BadInput, IOException {
    try (Stream<Path> found = Files.list(folder)) {
      List<Path> children = found.toList();
      if (children.size() == 1 && Files.isDirectory(children.get(0))) {
        return children.get(0);
      }
    }
    throw bad(BagItProblem.NOT_A_BAG);
  }

  private BadInput bad(BagItProblem fault, Argument... arguments) {
    return new BadInput(Problem.at(Place.of(zip.toString()), fault, arguments));
  }
}
