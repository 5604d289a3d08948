package caryatid.calibration;

import static caryatid.calibration.Table.number;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.remark.BadInput;
import caryatid.samples.Measures;
import caryatid.sheet.DescriptionReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Stated uncertainties against differences of means in real stands: files of the open data set of
 * Santos and Duarte 2016, PeerJ 4:e2648, in runs of twelve by their names. The data are not part of
 * the project.
 */
public final class RealStands {
  /** The tables whose numbers are kept beside the page. */
  static final String PARTS = "parts of one stand";

  static final String RUNS = "stands among each other";

  private static final int RUN = 12;
  private static final String DESCRIPTION =
      """
      plate-description: 1
      name: plate of the data set
      export: {delimiter: semicolon, decimal-mark: point}
      time: {column: f_time, unit: s}
      axes: {right: -y, anterior: +x, up: +z}
      plates:
        - name: plate 1
          columns: {cop-x: copX, cop-y: copY}
          units: {cop: cm}
          export-origin-mm: {right: 0, anterior: 0}
      """;

  private RealStands() {}

  /**
   * Keeps the numbers and writes the tables.
   *
   * @param arguments the folder of recordings, and the page, next to which numbers are kept in a
   *     file of that name that ends in {@code .csv}
   */
  public static void main(String[] arguments) throws IOException, BadInput {
    List<Recording> stands = read(Path.of(arguments[0]));
    Path page = Path.of(arguments[1]);
    Path file = page.resolveSibling(page.getFileName().toString().replace(".md", ".csv"));
    Figures.put(file, PARTS, "all", parts(stands));
    Figures.put(file, RUNS, "all", runs(stands));
    Figures.put(file, "steps from stand to stand", "all", steps(stands));
    Figures.put(file, "two directions", "all", directions(stands));
    Figures.put(file, "drift and shift", "all", RealLimits.of(stands));
    for (Map.Entry<String, Table> summary : Summaries.ofReal(Figures.read(file)).entrySet()) {
      Page.put(page, summary.getKey(), summary.getValue());
    }
  }

  private static List<Recording> read(Path folder) throws IOException, BadInput {
    NamedBytes yaml = NamedBytes.of("description", DESCRIPTION.getBytes(StandardCharsets.UTF_8));
    Optional<PlateDescription> description = Optional.of(DescriptionReader.read(yaml));
    List<Path> files;
    try (Stream<Path> found = Files.list(folder)) {
      files = found.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
    List<Recording> stands = new ArrayList<>();
    for (Path file : files) {
      NamedBytes bytes = NamedBytes.of(file.getFileName().toString(), Files.readAllBytes(file));
      stands.add(Importer.read(bytes, description));
    }
    return stands;
  }

  /** How far sway sideways and fore and aft differ from stand to stand, first 20 s of each. */
  private static Table directions(List<Recording> stands) {
    double[] logs =
        stands.stream()
            .mapToDouble(
                s ->
                    Math.log(
                        sd(s, track -> track.copRightMm().orElseThrow())
                            / sd(s, PlateTrack::copAnteriorMm)))
            .sorted()
            .toArray();
    double median = (logs[(logs.length - 1) / 2] + logs[logs.length / 2]) / 2;
    Table table =
        new Table(
            "stands", "of", "how many", "median ratio", "standard deviation of its logarithm");
    table.row(
        "real",
        "first 20 s",
        number(logs.length, 0),
        number(Math.exp(median), 2),
        number(Measures.sd(logs), 2));
    return table;
  }

  private static double sd(Recording stand, Function<PlateTrack, Samples> direction) {
    double[] all = direction.apply(stand.plates().get(0)).shared();
    return Measures.sd(Arrays.copyOf(all, (int) (20 * stand.rateHz())));
  }

  /** Neighbouring parts of each stand: both are means of the same stand. */
  private static Table parts(List<Recording> stands) {
    Table table =
        new Table(
            "stands",
            "parts",
            "pairs",
            "fore and aft, within their 95 %, %",
            "fore and aft, rms of difference over its u",
            "sideways, within their 95 %, %",
            "sideways, rms of difference over its u");
    parts(table, "real", stands);
    for (Family family : Families.CHOSEN_ON) {
      parts(table, "simulated: " + family.title(), Simulated.stands(family, 300));
    }
    return table;
  }

  private static void parts(Table table, String title, List<Recording> stands) {
    for (int count : new int[] {2, 3, 6}) {
      row(
          table,
          title,
          count + " of " + 60 / count + " s",
          Pairing.parts(stands.stream().map(stand -> RealMean.parts(stand, count)).toList()));
    }
  }

  /** The first 20 s of the stands of each run among each other. */
  private static Table runs(List<Recording> stands) {
    Table table =
        new Table(
            "run",
            "compared",
            "pairs",
            "fore and aft, within their 95 %, %",
            "fore and aft, rms of difference over its u",
            "sideways, within their 95 %, %",
            "sideways, rms of difference over its u");
    for (int run = 0; run * RUN < stands.size(); run++) {
      List<RealMean> means =
          stands.subList(run * RUN, Math.min(stands.size(), (run + 1) * RUN)).stream()
              .map(stand -> RealMean.parts(stand, 3).get(0))
              .toList();
      String title = number(run + 1, 0);
      row(table, title, "a stand and the next", Pairing.neighbours(means));
      row(table, title, "any two stands", Pairing.all(means));
      row(table, title, "three stands and the next three", Pairing.threes(means));
    }
    return table;
  }

  /** What one stand's mean differs from the next one's, over root 2: the default between stands. */
  private static Table steps(List<Recording> stands) {
    Table table = new Table("run", "of", "fore and aft, mm", "sideways, mm");
    for (int run = 0; run * RUN < stands.size(); run++) {
      List<Recording> own = stands.subList(run * RUN, Math.min(stands.size(), (run + 1) * RUN));
      table.row(
          "run " + number(run + 1, 0),
          "first 20 s",
          number(step(own, PlateTrack::copAnteriorMm), 1),
          number(step(own, track -> track.copRightMm().orElseThrow()), 1));
    }
    return table;
  }

  private static double step(List<Recording> stands, Function<PlateTrack, Samples> direction) {
    double squares = 0;
    for (int i = 1; i < stands.size(); i++) {
      squares += Math.pow(mean(stands.get(i), direction) - mean(stands.get(i - 1), direction), 2);
    }
    return Math.sqrt(squares / (stands.size() - 1) / 2);
  }

  private static double mean(Recording stand, Function<PlateTrack, Samples> direction) {
    double[] all = direction.apply(stand.plates().get(0)).shared();
    return Arrays.stream(all, 0, (int) (20 * stand.rateHz())).average().orElseThrow();
  }

  private static void row(Table table, String stands, String compared, Pairing pairing) {
    Differences fore = pairing.fore();
    Differences side = pairing.side();
    table.row(
        stands,
        compared,
        number(fore.count(), 0),
        number(fore.withinPercent(), 1),
        number(fore.rms(), 2),
        number(side.withinPercent(), 1),
        number(side.rms(), 2));
  }
}
