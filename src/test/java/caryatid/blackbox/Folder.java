package caryatid.blackbox;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A folder with one sample stand (a plate that exports time, vertical force and centre of
 * pressure), thinned to every tenth row, in which things can be spoilt.
 */
final class Folder {
  private static final Path SAMPLES = Path.of("sample-recordings/k7");

  private final Path path;
  private final List<String> lines;

  Folder(Path path) throws IOException {
    this.path = path;
    List<String> all = Files.readAllLines(SAMPLES.resolve("shoe.csv"));
    this.lines =
        IntStream.range(0, all.size())
            .filter(i -> i < 2 || i % 10 == 2)
            .mapToObj(all::get)
            .toList();
    recording(UnaryOperator.identity());
    sheet("", "");
    description("", "");
  }

  /** Writes the recording with its lines changed, and gives its path. */
  Folder recording(UnaryOperator<List<String>> change) throws IOException {
    Files.write(path.resolve("stand.csv"), change.apply(lines));
    return this;
  }

  /** Writes the trial sheet with one text replaced by another. */
  Folder sheet(String from, String to) throws IOException {
    return copy("shoe.yaml", "sheet.yaml", from, to);
  }

  /** Writes the plate description with one text replaced by another. */
  Folder description(String from, String to) throws IOException {
    return copy("plate-pressure.yaml", "plate.yaml", from, to);
  }

  private Folder copy(String sample, String name, String from, String to) throws IOException {
    String text = Files.readString(SAMPLES.resolve(sample));
    if (!text.contains(from)) {
      throw new IllegalArgumentException(sample + " has no " + from);
    }
    Files.writeString(path.resolve(name), from.isEmpty() ? text : text.replace(from, to));
    return this;
  }

  String file(String name) {
    return path.resolve(name).toString();
  }

  /** Checks the stand; further arguments follow. */
  Run check(String... more) {
    String[] usual = {
      "check",
      file("stand.csv"),
      "--trial",
      file("sheet.yaml"),
      "--plate",
      file("plate.yaml"),
      "--out",
      file("out")
    };
    String[] all = Arrays.copyOf(usual, usual.length + more.length);
    System.arraycopy(more, 0, all, usual.length, more.length);
    return Run.caryatid(all);
  }

  /** What was complained about, with the folder's own name left out and blanks that may break. */
  String complaint(Run run) {
    return run.err().replace(path + "/", "").replace('\u00a0', ' ').strip();
  }
}
