package caryatid.fitting;

import io.ocfl.api.OcflRepository;
import java.io.IOException;
import java.nio.file.Path;

/**
 * A folder in which one record's next version is put together, empty at first and gone afterwards;
 * what a kill left in it is swept out. The record's lock must be held.
 */
final class Workplace implements AutoCloseable {
  private final Path folder;
  private final OcflRepository repository;
  private final RecordCode code;

  Workplace(StoreFolder store, RecordCode code) throws IOException {
    this.code = code;
    this.folder = store.adding().resolve(code.text());
    Durable.delete(folder);
    this.repository = Repositories.open(store.records(), folder, store.replacing());
  }

  Adding adding() {
    return new Adding(repository, code);
  }

  @Override
  public void close() {
    repository.close();
    try {
      Durable.delete(folder);
    } catch (IOException leftForTheNextOne) {
      // The addition itself is done; whoever opens the workplace next sweeps it.
    }
  }
}
