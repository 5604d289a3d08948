package caryatid.store;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The OCFL storage root within a store's folder, which users easily confuse with the folder itself.
 */
public final class StorageRoot {
  private static final String DECLARATION = "0=ocfl_1.1";

  private StorageRoot() {}

  /** Whether a folder is a storage root, by the file that declares it. */
  public static boolean is(Path folder) {
    return Files.exists(folder.resolve(DECLARATION));
  }
}
