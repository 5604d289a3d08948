package caryatid.samples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sample recordings and the truth about them. Sheets and plate descriptions are written by
 * hand.
 */
public final class SampleRecordings {
  private SampleRecordings() {}

  /** Every generated file by its name under {@code sample-recordings}. */
  static Map<String, byte[]> files() {
    List<Truth> truth = new ArrayList<>();
    Map<String, byte[]> files = new TreeMap<>(K7.recordings(truth));
    files.putAll(M4.recordings(truth));
    files.putAll(Story.recordings(truth));
    files.putAll(Weights.recordings());
    files.put("truth.csv", table(Truth.HEADER, truth.stream().map(Truth::line)));
    files.put("truth-offsets.csv", table(Marked.HEADER, Marked.all().stream().map(Marked::line)));
    return files;
  }

  private static byte[] table(String header, Stream<String> lines) {
    return Stream.concat(Stream.of(header), lines)
        .collect(Collectors.joining("\n", "", "\n"))
        .getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes the files anew.
   *
   * @param folder the folder {@code sample-recordings}
   */
  public static void main(String[] folder) throws IOException {
    for (Map.Entry<String, byte[]> file : files().entrySet()) {
      Path path = Path.of(folder[0]).resolve(file.getKey());
      Files.createDirectories(path.toAbsolutePath().getParent());
      Files.write(path, file.getValue());
    }
  }
}
