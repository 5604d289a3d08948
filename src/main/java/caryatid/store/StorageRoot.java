package caryatid.store;

import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The OCFL storage root within a store's folder, which users easily confuse with the folder itself.
 */
public final class StorageRoot {
  private static final String DECLARATION = "0=ocfl_1.1";
  private static final String DECLARED = "ocfl_1.1\n";
  private static final String LAYOUT = "ocfl_layout.json";

  /** A record lies in a folder of its own code (OCFL extension 0002). */
  private static final String EXTENSION = "\"0002-flat-direct-storage-layout\"";

  private StorageRoot() {}

  /** Whether a folder is a storage root, by the file that declares it. */
  public static boolean is(Path folder) {
    return Files.exists(folder.resolve(DECLARATION));
  }

  /** What is wrong with what a storage root says of itself. */
  static List<Problem> damage(Path root) {
    List<Problem> found = new ArrayList<>();
    if (!text(root.resolve(DECLARATION)).equals(DECLARED)) {
      found.add(problem(DECLARATION));
    }
    if (!text(root.resolve(LAYOUT)).contains(EXTENSION)) {
      found.add(problem(LAYOUT));
    }
    return found;
  }

  private static String text(Path file) {
    try {
      return Files.isSymbolicLink(file)
          ? ""
          : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return "";
    }
  }

  private static Problem problem(String file) {
    return Problem.at(Place.of("records/" + file), Damage.ROOT);
  }
}
