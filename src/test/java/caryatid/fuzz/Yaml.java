package caryatid.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** What the YAML library alone makes of a file. */
final class Yaml {
  private Yaml() {}

  /**
   * Whether a spoilt file says something else than the sound one, so that results may be others.
   */
  static boolean says(Path sound, Path spoilt) throws IOException {
    return !load(sound).equals(load(spoilt));
  }

  private static Object load(Path file) throws IOException {
    LoadSettings settings = LoadSettings.builder().setAllowDuplicateKeys(true).build();
    return new Load(settings)
        .loadFromString(Files.readString(file, StandardCharsets.UTF_8).replace("\ufeff", ""));
  }
}
