package caryatid.store;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import io.ocfl.api.OcflRepository;
import io.ocfl.api.exception.OcflJavaException;
import io.ocfl.core.OcflRepositoryBuilder;
import io.ocfl.core.cache.Cache;
import io.ocfl.core.extension.storage.layout.config.FlatLayoutConfig;
import io.ocfl.core.model.Inventory;
import io.ocfl.core.storage.OcflStorageBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Opens the library's repository on a store's folder, and makes the folder. */
final class Repositories {
  private static final String README = "README.txt";

  private Repositories() {}

  /**
   * The repository.
   *
   * @param work an empty folder of its own for versions in the making
   * @throws IOException if a folder cannot be read or written
   */
  static OcflRepository open(Path root, Path work, Path replacing) throws IOException {
    FilePermissions.createStoreFolder(work);
    try {
      return build(root, work, replacing);
    } catch (OcflJavaException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private static OcflRepository build(Path root, Path work, Path replacing) {
    return new OcflRepositoryBuilder()
        .defaultLayoutConfig(new FlatLayoutConfig())
        .storage(OcflStorageBuilder.builder().storage(new DurableStorage(root, replacing)).build())
        // For as long as the record's lock is held, during which no other process adds to it.
        .inventoryCache(new InventoryCache())
        .workDir(work)
        .build();
  }

  /**
   * Makes the storage root in the work folder and moves it into place; does nothing if there is
   * one.
   */
  static void make(StoreFolder folder) throws IOException {
    if (Files.exists(folder.records())) {
      return;
    }
    Path making = folder.work().resolve("new-records");
    DurableFiles.delete(making);
    open(making, folder.adding(), folder.replacing()).close();
    try (InputStream readme = Repositories.class.getResourceAsStream(README)) {
      DurableFiles.create(making.resolve(README), readme.readAllBytes());
    }
    DurableFiles.moveFolder(making, folder.records());
  }

  /** Holds inventories that the library has read, for as long as one repository is open. */
  private static final class InventoryCache implements Cache<String, Inventory> {
    private final Map<String, Inventory> held = new HashMap<>();

    @Override
    public Inventory get(String key, Function<String, Inventory> loader) {
      Inventory known = held.get(key);
      if (known == null) {
        known = loader.apply(key);
        held.put(key, known);
      }
      return known;
    }

    @Override
    public void put(String key, Inventory value) {
      held.put(key, value);
    }

    @Override
    public void invalidate(String key) {
      held.remove(key);
    }

    @Override
    public void invalidateAll() {
      held.clear();
    }

    @Override
    public boolean contains(String key) {
      return held.containsKey(key);
    }
  }
}
