package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.file.FileProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A file of names and texts, a line each; what is written is on the disk when writing returns. */
final class DraftFile {
  private final Path file;
  private Optional<Map<String, String>> known = Optional.empty();

  DraftFile(Path file) {
    this.file = file;
  }

  /** What it holds; nothing where it is not there. */
  synchronized Map<String, String> read() throws StoreFailure {
    if (known.isEmpty()) {
      try {
        known = Optional.of(onDisk());
      } catch (IOException e) {
        throw failure(file, e);
      }
    }
    return known.get();
  }

  private Map<String, String> onDisk() throws IOException {
    Map<String, String> all = new TreeMap<>();
    if (Files.isRegularFile(file)) {
      for (String line : Files.readAllLines(file, UTF_8)) {
        int equals = line.indexOf('=');
        if (equals > 0) {
          all.put(line.substring(0, equals), line.substring(equals + 1));
        }
      }
    }
    return all;
  }

  /** Replaces what it holds; nothing is written where nothing changed. */
  synchronized void write(Map<String, String> all) throws StoreFailure {
    if (read().equals(all)) {
      return;
    }
    StringBuilder text = new StringBuilder();
    new TreeMap<>(all)
        .forEach((name, value) -> text.append(name).append('=').append(line(value)).append('\n'));
    try {
      FilePermissions.createPrivateFolder(file.getParent());
      DurableFiles.replace(file, text.toString().getBytes(UTF_8), file.getParent());
      known = Optional.of(new TreeMap<>(all));
    } catch (IOException e) {
      throw failure(file, e);
    }
  }

  /** No field holds several lines. */
  private static String line(String text) {
    return text.replaceAll("\\R", " ");
  }

  synchronized void remove() throws StoreFailure {
    try {
      Files.deleteIfExists(file);
      known = Optional.empty();
    } catch (IOException e) {
      throw failure(file, e);
    }
  }

  /** A name without the folders before it. */
  static String bare(String name, String unnamed) {
    String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    return last.isBlank() ? unnamed : last;
  }

  /** Files of a day are often called alike; of two, the later one is numbered. */
  static String unique(String name, List<String> there) {
    int dot = name.lastIndexOf('.') > 0 ? name.lastIndexOf('.') : name.length();
    String unique = name;
    for (int i = 2; there.contains(unique); i++) {
      unique = name.substring(0, dot) + "-" + i + name.substring(dot);
    }
    return unique;
  }

  /** A file of a draft under the name that its owner knows. */
  static NamedBytes onDisk(String name, Path file) {
    return new NamedBytes() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public InputStream open() throws IOException {
        return Files.newInputStream(file);
      }
    };
  }

  static StoreFailure failure(Path file, IOException e) {
    return new StoreFailure(
        Problem.at(Place.of(file.toString()), FileProblem.CANNOT_WRITE, Argument.why(e)));
  }
}
