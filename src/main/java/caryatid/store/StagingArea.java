package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import io.ocfl.api.DigestAlgorithmRegistry;
import io.ocfl.api.OcflRepository;
import io.ocfl.api.exception.OcflJavaException;
import io.ocfl.api.model.ObjectVersionId;
import io.ocfl.api.model.OcflObjectVersion;
import io.ocfl.api.model.OcflObjectVersionFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A folder in which one record's next version is put together, empty at first and gone afterwards;
 * anything a killed program left in it is deleted. The record's lock must be held.
 */
final class StagingArea implements AutoCloseable {
  private final Path folder;
  private final OcflRepository repository;
  private final RecordCode code;

  StagingArea(StoreFolder store, RecordCode code) throws IOException {
    this.code = code;
    this.folder = store.adding().resolve(code.text());
    DurableFiles.delete(folder);
    this.repository = Repositories.open(store.records(), folder, store.replacing());
  }

  /**
   * The record, read through the library, which then need not read its inventory again to add to
   * it.
   *
   * @return empty if the library cannot read it
   */
  Optional<FittingRecord> read(ObjectFiles files) {
    try {
      OcflObjectVersion head = repository.getObject(ObjectVersionId.head(code.text()));
      String sum = ObjectFiles.sum(files.bytes(ObjectFiles.SUM));
      ObjectFiles.Vouched vouched = new ObjectFiles.Vouched(inventory(head), sum);
      return Optional.of(RecordReader.read(files, vouched).record());
    } catch (OcflJavaException | NullPointerException | IOException e) {
      // The library fails so, too, over an inventory whose head is none of its versions.
      return Optional.empty();
    }
  }

  private Inventory inventory(OcflObjectVersion head) {
    int number = (int) head.getVersionNum().getVersionNum();
    Map<String, String> files = new TreeMap<>();
    Map<String, String> contents = new HashMap<>();
    for (OcflObjectVersionFile file : head.getFiles()) {
      String digest = file.getFixity().get(DigestAlgorithmRegistry.sha512);
      files.put(file.getPath(), digest);
      contents.put(digest, file.getStorageRelativePath().substring(code.text().length() + 1));
    }
    return new Inventory(head.getObjectId(), number, number, files, contents);
  }

  VersionWriter writer() {
    return new VersionWriter(repository, code);
  }

  @Override
  public void close() {
    repository.close();
    try {
      DurableFiles.delete(folder);
    } catch (IOException leftForTheNextOne) {
      // The addition itself is done; whoever opens the working folder next sweeps it.
    }
  }
}
